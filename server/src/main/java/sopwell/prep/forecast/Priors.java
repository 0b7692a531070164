package sopwell.prep.forecast;

import java.util.Arrays;

/**
 * What a series is taken to be like until it has shown how it is: the weekdays and the features of
 * what it is a part of. Not thread-safe.
 */
final class Priors {
    static final int WEEK = 7;

    private final double[] weekdays = new double[WEEK];
    private double[] effects = new double[0];

    /** All weekdays alike, and nothing has an effect. */
    Priors() {
        Arrays.fill(weekdays, 1);
    }

    double weekday(int weekday) {
        return weekdays[weekday];
    }

    double effect(int feature) {
        return feature < effects.length ? effects[feature] : 1;
    }

    void setWeekday(int weekday, double factor) {
        weekdays[weekday] = factor;
    }

    void setEffect(int feature, double factor) {
        if (feature >= effects.length) {
            int had = effects.length;
            effects = Arrays.copyOf(effects, feature + 8);
            Arrays.fill(effects, had, effects.length, 1);
        }
        effects[feature] = factor;
    }
}
