package sopwell.prep.forecast;

import java.util.List;

/**
 * Members at several speeds, each believed by what it has foretold, so that the speed need not be
 * chosen. Not thread-safe.
 */
final class Bank {
    /** Fast to slow, and two that grow. */
    static final List<Speed> SPEEDS =
            List.of(
                    new Speed(2, 30, 0),
                    new Speed(4, 10, 0),
                    new Speed(4, 30, 0),
                    new Speed(4, 120, 0),
                    new Speed(10, 10, 0),
                    new Speed(10, 30, 0),
                    new Speed(10, 120, 0),
                    new Speed(24, 10, 0),
                    new Speed(24, 30, 0),
                    new Speed(24, 120, 0),
                    new Speed(60, 10, 0),
                    new Speed(60, 30, 0),
                    new Speed(60, 120, 0),
                    new Speed(10, 30, 0.1),
                    new Speed(24, 30, 0.1));

    /** For series that are many: fewer speeds. */
    static final List<Speed> FEW_SPEEDS =
            List.of(
                    new Speed(4, 30, 0),
                    new Speed(10, 10, 0),
                    new Speed(10, 60, 0),
                    new Speed(24, 10, 0),
                    new Speed(24, 60, 0),
                    new Speed(60, 30, 0),
                    new Speed(60, 120, 0),
                    new Speed(24, 60, 0.1));

    private static final double SCORE_KEEP = 0.99;
    private static final double FREQUENCY_KEEP = 0.98;
    private static final double LEAST_EXPOSURE = 0.1;

    private final List<Speed> speeds;
    private final int[] ahead;
    private final double[] growingDays;
    private final int scoredTo;
    private final Member[] members;
    private final Spread[][] spreads;
    private final Scores scores;
    private final double[] frequency = new double[Priors.WEEK];
    private final double[] dayScores;
    private final double[] often = new double[Priors.WEEK];
    private double lastMixture;
    private int marks;

    /**
     * A bank.
     *
     * @param ahead for which horizons misses are measured, in open days, rising
     * @param scoredTo up to which horizon the members' forecasts decide what they are worth
     */
    Bank(List<Speed> speeds, int[] ahead, int scoredTo, Priors priors, Member.Start start) {
        this.speeds = List.copyOf(speeds);
        this.ahead = ahead.clone();
        this.growingDays = new double[ahead.length];
        this.scoredTo = scoredTo;
        int n = speeds.size();
        this.members = new Member[n];
        this.spreads = new Spread[n][ahead.length];
        this.scores = new Scores(n, SCORE_KEEP);
        this.dayScores = new double[n];
        for (int i = 0; i < n; i++) {
            members[i] = new Member(speeds.get(i), priors, start, ahead[ahead.length - 1]);
            for (int h = 0; h < ahead.length; h++) {
                spreads[i][h] = new Spread();
            }
        }
        for (int h = 0; h < ahead.length; h++) {
            growingDays[h] = Member.dampedDays(ahead[h]);
        }
    }

    /** Takes in a day, and how well it was foretold. */
    void learn(Seen day) {
        if (day.exposure() <= LEAST_EXPOSURE) {
            return;
        }
        if (!day.guessed()) {
            judge(day);
        }
        for (int w = 0; w < Priors.WEEK; w++) {
            frequency[w] *= FREQUENCY_KEEP;
        }
        frequency[day.weekday()] += 1 - FREQUENCY_KEEP;
        double[] often = often();
        for (int i = 0; i < members.length; i++) {
            members[i].learn(day, phi(i, 0, members[i].level()), often);
        }
    }

    /** Sets the mark that later days are forecast from; once for each open day. */
    void mark() {
        for (Member member : members) {
            member.mark();
        }
        marks++;
    }

    /** See {@link Level#doubt}. */
    void doubt(double share) {
        for (Member member : members) {
            member.doubt(share);
        }
    }

    /**
     * What is expected so many open days after the last mark.
     *
     * @param horizon 1 to 14
     */
    CountMixture ahead(int horizon, int weekday, Known known) {
        double[] some = new double[members.length];
        double[] widths = new double[members.length];
        double growing = Member.dampedDays(horizon);
        for (int i = 0; i < members.length; i++) {
            some[i] = members[i].mean(0, growing, weekday, known);
            widths[i] = phiAt(i, horizon, some[i]);
        }
        return CountMixture.of(some, widths, scores.weights());
    }

    /**
     * The mean that was expected of this day when the mark so many days before was set.
     *
     * @param h which of the horizons that are measured
     */
    double expected(int h, int weekday, Known known) {
        double sum = 0;
        for (int i = 0; i < members.length; i++) {
            sum += scores.weight(i) * members[i].mean(ahead[h] - 1, growingDays[h], weekday, known);
        }
        return sum;
    }

    /** The weighted width at a horizon that is measured. */
    double phi(int h, double mean) {
        double sum = 0;
        for (int i = 0; i < members.length; i++) {
            sum += scores.weight(i) * phi(i, h, mean);
        }
        return sum;
    }

    /** Whether there is a forecast from so many days before. */
    boolean hasExpected(int h) {
        return marks >= ahead[h];
    }

    double level() {
        return weighted(Member::level);
    }

    double factor(int weekday) {
        return weighted(member -> member.factor(weekday));
    }

    double effect(int feature) {
        return weighted(member -> member.effect(feature));
    }

    /** The members that are believed most, the first most. */
    List<Why.Voice> voices(int most) {
        List<Why.Voice> voices = new java.util.ArrayList<>();
        for (int i = 0; i < members.length; i++) {
            Speed speed = speeds.get(i);
            voices.add(
                    new Why.Voice(
                            speed.levelDays(),
                            speed.weekdayWeeks(),
                            speed.trend() > 0,
                            scores.weight(i)));
        }
        voices.sort(java.util.Comparator.comparingDouble(Why.Voice::weight).reversed());
        return List.copyOf(voices.subList(0, most));
    }

    /** The logarithm of the chance that the whole bank gave to the last day. */
    double lastScore() {
        return lastMixture;
    }

    private double weighted(java.util.function.ToDoubleFunction<Member> of) {
        double sum = 0;
        for (int i = 0; i < members.length; i++) {
            sum += scores.weight(i) * of.applyAsDouble(members[i]);
        }
        return sum;
    }

    private double phi(int member, int h, double mean) {
        return spreads[member][h].phi(mean);
    }

    /** Between the horizons that are measured in a straight line, and on in it. */
    private double phiAt(int member, int horizon, double mean) {
        int upper = 0;
        while (upper < ahead.length - 1 && ahead[upper] < horizon) {
            upper++;
        }
        double at = phi(member, upper, mean);
        if (ahead[upper] == horizon || upper == 0) {
            return at;
        }
        int lower = ahead[upper] > horizon ? upper - 1 : 0;
        double from = phi(member, lower, mean);
        double slope = (at - from) / (ahead[upper] - ahead[lower]);
        return Math.max(Math.min(at, from), at + slope * (horizon - ahead[upper]));
    }

    private void judge(Seen day) {
        int scored = 0;
        java.util.Arrays.fill(dayScores, 0);
        double mixture = 0;
        int count = (int) Math.round(day.count());
        for (int h = 0; h < ahead.length; h++) {
            if (marks < ahead[h]) {
                continue;
            }
            Known known = day.ahead().get(ahead[h] - 1);
            double chance = 0;
            boolean counts = ahead[h] <= scoredTo;
            for (int i = 0; i < members.length; i++) {
                double mean =
                        members[i].mean(ahead[h] - 1, growingDays[h], day.weekday(), known)
                                * day.exposure()
                                / known.hours();
                double phi = spreads[i][h].phi(mean);
                if (counts) {
                    double score = NegBin.logPmf(count, Math.max(mean, 1e-6), phi);
                    dayScores[i] += score;
                    chance += scores.weight(i) * Math.exp(score);
                }
                spreads[i][h].see(day.count(), mean, phi);
            }
            if (counts) {
                scored++;
                mixture += Math.log(Math.max(chance, 1e-30));
            }
        }
        if (scored > 0) {
            for (int i = 0; i < members.length; i++) {
                dayScores[i] /= scored;
            }
            lastMixture = mixture / scored;
            scores.see(dayScores);
        }
    }

    private double[] often() {
        double sum = 0;
        for (int w = 0; w < Priors.WEEK; w++) {
            sum += frequency[w];
        }
        for (int w = 0; w < Priors.WEEK; w++) {
            often[w] = frequency[w] / sum;
        }
        return often;
    }
}
