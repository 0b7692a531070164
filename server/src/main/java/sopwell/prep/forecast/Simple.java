package sopwell.prep.forecast;

import java.util.List;

/** What a careful owner reckons with: simple rules to hold a forecast against. Stateless. */
public final class Simple {
    private static final double START_PHI = 0.05;
    private static final double START_DAYS = 10;
    private static final int PAIRS = 10;

    private Simple() {}

    /**
     * The value of the same season before: in a stand the last day of the same weekday.
     *
     * @param values oldest first; the one forecast comes {@code horizon} after the last
     * @param season how many values a season has
     */
    public static double seasonalNaive(List<Double> values, int season, int horizon) {
        int seasons = (horizon - 1) / season;
        return values.get(values.size() + horizon - 1 - season * (seasons + 1));
    }

    /**
     * The mean of the last days of one weekday, as a negative binomial whose width is that of their
     * own spread.
     *
     * @param sameWeekday counts of that weekday, oldest first, at least one
     * @param weeks how many of the last count
     */
    public static NegBin weekdayMean(List<Integer> sameWeekday, int weeks) {
        List<Integer> last =
                sameWeekday.subList(Math.max(0, sameWeekday.size() - weeks), sameWeekday.size());
        double mean = last.stream().mapToInt(Integer::intValue).average().orElseThrow();
        double spread = last.stream().mapToDouble(n -> (n - mean) * (n - mean)).sum();
        double free = Math.max(1, last.size() - 1);
        double found = mean <= 0 ? 0 : (spread / free - mean) / (mean * mean);
        double phi = (found * free + START_PHI * START_DAYS) / (free + START_DAYS);
        double wider = phi * (1 + 1.0 / last.size());
        return new NegBin(Math.max(mean, 0.01), Math.max(0, wider));
    }

    /**
     * The last day of one weekday once more, as a negative binomial whose width is how far such
     * days fell from the one before.
     *
     * @param sameWeekday counts of that weekday, oldest first, at least one
     */
    public static NegBin lastWeek(List<Integer> sameWeekday) {
        int size = sameWeekday.size();
        double mean = Math.max(sameWeekday.get(size - 1), 0.01);
        double squares = 0;
        int pairs = 0;
        for (int i = Math.max(1, size - PAIRS); i < size; i++) {
            double off = sameWeekday.get(i) - sameWeekday.get(i - 1);
            squares += off * off;
            pairs++;
        }
        double found = pairs == 0 ? 0 : (squares / pairs - mean) / (mean * mean);
        double phi = (found * pairs + START_PHI * START_DAYS) / (pairs + START_DAYS);
        return new NegBin(mean, Math.max(0, phi));
    }
}
