package sopwell.prep.forecast;

import java.util.Arrays;

/**
 * One level with weekday factors, effects and perhaps a growth, at one speed: Holt and Winters's
 * scheme for counts without anything to fit. Not thread-safe.
 */
final class Member {
    /** The owner's or the parent's word on a weekday, or on a feature, weighs as many days. */
    private static final double WEEKDAY_DAYS = 1.5;

    private static final double EFFECT_DAYS = 2;
    private static final double EFFECT_KEEP = 0.998;
    private static final double DAMPING = 0.98;
    private static final double GROWTH_MAX = 0.03;
    private static final double CLIP_SDS = 4;
    private static final int PLAIN_DAYS = 3;
    private static final double LEAST_EFFECT = 0.02;

    private final Priors priors;
    private final Level level;
    private final double weekdayKeep;
    private final double trend;
    private final double[] sold = new double[Priors.WEEK];
    private final double[] due = new double[Priors.WEEK];
    private final double[] factors = new double[Priors.WEEK];
    private double[] effectSold = new double[0];
    private double[] effectDue = new double[0];
    private double growth;
    private int days;
    private final double[] pastLevels;
    private final double[] pastGrowths;
    private int marks;

    /**
     * A member.
     *
     * @param start pieces on a plain day by the owner's word, and how many days that weighs
     * @param ahead how many days ahead is forecast at most
     */
    Member(Speed speed, Priors priors, Start start, int ahead) {
        this.priors = priors;
        this.level = new Level(speed.levelDays(), start.level() * start.days(), start.days());
        this.weekdayKeep = Math.pow(2, -1 / speed.weekdayWeeks());
        this.trend = speed.trend();
        this.pastLevels = new double[ahead];
        this.pastGrowths = new double[ahead];
        Arrays.fill(factors, 1);
    }

    /** What is said of a level before anything was seen. */
    record Start(double level, double days) {}

    /** How far a damped growth per day has come after so many days. */
    static double dampedDays(int ahead) {
        return DAMPING * (1 - Math.pow(DAMPING, ahead)) / (1 - DAMPING);
    }

    /**
     * The mean that was forecast when the day was marked.
     *
     * @param age how many marks ago: 0 for the last
     * @param growingDays see {@link #dampedDays}
     */
    double mean(int age, double growingDays, int weekday, Known known) {
        int slot = Math.floorMod(marks - 1 - age, pastLevels.length);
        double plain = pastLevels[slot];
        double grown = trend == 0 ? plain : plain * Math.exp(pastGrowths[slot] * growingDays);
        return grown * factors[weekday] * effects(known, plain) * known.hours();
    }

    /** The level now. */
    double level() {
        return level.now();
    }

    double factor(int weekday) {
        return factors[weekday];
    }

    /** What a feature makes of a day, as far as it was seen. */
    double effect(int feature) {
        return effect(feature, level.now());
    }

    /** Sets the mark that later days are forecast from. */
    void mark() {
        int slot = Math.floorMod(marks, pastLevels.length);
        pastLevels[slot] = level.now();
        pastGrowths[slot] = growth;
        marks++;
    }

    /**
     * Takes in a day.
     *
     * @param frequency how often each weekday is open, together 1
     */
    void learn(Seen day, double phi, double[] frequency) {
        if (trend != 0) {
            growth *= DAMPING;
            level.grow(Math.exp(growth));
        }
        double before = level.now();
        double features = effects(day.known(), before);
        double part = factors[day.weekday()] * features * day.exposure();
        double count = day.count();
        double mean = before * part;
        if (days < PLAIN_DAYS) {
            level.add(count, features * day.exposure());
        } else {
            double sd = Math.sqrt(mean + phi * mean * mean);
            count = Math.max(mean - CLIP_SDS * sd, Math.min(mean + CLIP_SDS * sd, count));
            level.see(count, part);
        }
        days++;
        double after = level.now();
        if (trend != 0 && days > 2 * PLAIN_DAYS && before > 0 && after > 0) {
            growth += trend * Math.log(after / before);
            growth = Math.max(-GROWTH_MAX, Math.min(GROWTH_MAX, growth));
        }
        int weekday = day.weekday();
        sold[weekday] = weekdayKeep * sold[weekday] + count;
        due[weekday] = weekdayKeep * due[weekday] + after * features * day.exposure();
        setFactors(after, frequency);
        learnEffects(day, mean);
    }

    /** See {@link Level#doubt}. */
    void doubt(double share) {
        level.doubt(share);
    }

    private void setFactors(double plain, double[] frequency) {
        double sum = 0;
        for (int w = 0; w < Priors.WEEK; w++) {
            double due0 = due[w] + WEEKDAY_DAYS * plain;
            factors[w] =
                    due0 <= 0
                            ? priors.weekday(w)
                            : (sold[w] + WEEKDAY_DAYS * plain * priors.weekday(w)) / due0;
            sum += frequency[w] * factors[w];
        }
        if (sum > 0) {
            for (int w = 0; w < Priors.WEEK; w++) {
                factors[w] /= sum;
            }
        }
    }

    private void learnEffects(Seen day, double mean) {
        Known known = day.known();
        for (int i = 0; i < known.count(); i++) {
            int f = known.feature(i);
            double holds = known.holds(i);
            if (holds > 0) {
                grow(f);
                double own = 1 + holds * (effect(f, level.now()) - 1);
                effectSold[f] = EFFECT_KEEP * effectSold[f] + holds * day.count();
                effectDue[f] = EFFECT_KEEP * effectDue[f] + holds * mean / own;
            }
        }
    }

    private double effects(Known known, double plain) {
        double all = 1;
        for (int i = 0; i < known.count(); i++) {
            all *= 1 + known.holds(i) * (effect(known.feature(i), plain) - 1);
        }
        return all;
    }

    private double effect(int feature, double plain) {
        double prior = priors.effect(feature);
        if (feature >= effectDue.length || plain <= 0) {
            return prior;
        }
        double worth = EFFECT_DAYS * plain;
        double found = (effectSold[feature] + worth * prior) / (effectDue[feature] + worth);
        return Math.max(LEAST_EFFECT, found);
    }

    private void grow(int feature) {
        if (feature >= effectDue.length) {
            effectSold = Arrays.copyOf(effectSold, feature + 4);
            effectDue = Arrays.copyOf(effectDue, feature + 4);
        }
    }
}
