package sopwell.mix;

import java.util.List;
import sopwell.Check;

/**
 * A control chart of a share: whether the newest day's differs from the days before by more than
 * chance and the usual wander from day to day explain. Immutable.
 *
 * <p>The limits are those of a p-chart, three standard deviations of a binomial share about the
 * mean of the days before (NIST/SEMATECH e-Handbook, section 6.3.3.2), made wider where days differ
 * from each other by more than that: by the mean moving range of their standardised shares over
 * 1.128, the constant d2 of two (D. B. Laney, Quality Engineering 14 (2002), 531 to 537). They are
 * never made narrower. Guests of one party order alike, so days do differ by more.
 *
 * @param mean the share of all days before together, 0 to 1
 * @param low below it, the newest day's share has moved; 0 or more
 * @param high above it, the newest day's share has moved; 1 or less
 * @param verdict what the newest day's share says
 */
public record ShareChart(double mean, double low, double high, Verdict verdict) {
    /** Days before the newest that are needed to say anything. */
    public static final int DAYS_MIN = 4;

    /**
     * How many of each kind a day needs for the normal distribution to stand in for the binomial: a
     * common rule of thumb, from memory.
     */
    private static final double EXPECTED_MIN = 5;

    private static final double LIMIT_DEVIATIONS = 3;

    /** The mean range of two, in standard deviations: d2 of the published constants. */
    private static final double D2_OF_TWO = 1.128;

    /** What can be said of a share. */
    public enum Verdict {
        /** Too few days, or too few pieces, to tell. */
        CANT_TELL,
        /** Within what chance explains. */
        STEADY,
        /** More than chance. */
        UP,
        /** Less than chance. */
        DOWN
    }

    /**
     * The chart of a day.
     *
     * @param before the same share on the days before, oldest first; days without any are left out
     * @param newest the share on the day itself
     */
    public static ShareChart of(List<Share> before, Share newest) {
        List<Share> days = before.stream().filter(Share::isKnown).toList();
        Share together = days.stream().reduce(new Share(0, 0), Share::plus);
        double mean = together.value();
        if (days.size() < DAYS_MIN || !tells(mean, newest)) {
            return new ShareChart(mean, 0, 1, Verdict.CANT_TELL);
        }
        return around(mean, wander(days, mean), newest);
    }

    /**
     * Each of several days against all of them together: which of them stand out. In their order;
     * with too few days, or too few pieces on a day, nothing can be told.
     *
     * @param days the same share day by day, oldest first, each of something
     */
    static List<ShareChart> run(List<Share> days) {
        double mean = days.stream().reduce(new Share(0, 0), Share::plus).value();
        boolean enough = days.size() > DAYS_MIN && mean > 0 && mean < 1;
        double wander = enough ? wander(days, mean) : 1;
        return days.stream()
                .map(
                        day ->
                                enough && tells(mean, day)
                                        ? around(mean, wander, day)
                                        : new ShareChart(mean, 0, 1, Verdict.CANT_TELL))
                .toList();
    }

    private static boolean tells(double mean, Share day) {
        return day.all() * mean >= EXPECTED_MIN && day.all() * (1 - mean) >= EXPECTED_MIN;
    }

    private static ShareChart around(double mean, double wander, Share day) {
        double wide = LIMIT_DEVIATIONS * deviation(mean, day.all()) * wander;
        double low = Math.max(0, mean - wide);
        double high = Math.min(1, mean + wide);
        return new ShareChart(mean, low, high, verdict(day.value(), low, high));
    }

    private static Verdict verdict(double share, double low, double high) {
        if (share > high) {
            return Verdict.UP;
        }
        return share < low ? Verdict.DOWN : Verdict.STEADY;
    }

    /** How much more than chance days wander, 1 or more. */
    private static double wander(List<Share> days, double mean) {
        Check.that(days.size() >= 2, "a range needs two days");
        double ranges = 0;
        for (int i = 1; i < days.size(); i++) {
            ranges +=
                    Math.abs(standardised(days.get(i), mean) - standardised(days.get(i - 1), mean));
        }
        return Math.max(1, ranges / (days.size() - 1) / D2_OF_TWO);
    }

    private static double standardised(Share day, double mean) {
        return (day.value() - mean) / deviation(mean, day.all());
    }

    private static double deviation(double mean, long all) {
        return Math.sqrt(mean * (1 - mean) / all);
    }
}
