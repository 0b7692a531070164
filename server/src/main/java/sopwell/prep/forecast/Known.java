package sopwell.prep.forecast;

import java.util.Arrays;

/**
 * What is particular about a day: features by their number, each with how surely it holds, 0 to 1,
 * and the hours against the usual ones. Immutable.
 */
final class Known {
    /** A day like any other. */
    static final Known NOTHING = new Known(new int[0], new double[0], 1);

    private final int[] features;
    private final double[] holds;
    private final double hours;

    private Known(int[] features, double[] holds, double hours) {
        this.features = features;
        this.holds = holds;
        this.hours = hours;
    }

    /** A day with these features and no others. */
    static Known of(int[] features, double[] holds, double hours) {
        return new Known(
                Arrays.copyOf(features, features.length),
                Arrays.copyOf(holds, holds.length),
                hours);
    }

    int count() {
        return features.length;
    }

    int feature(int i) {
        return features[i];
    }

    double holds(int i) {
        return holds[i];
    }

    /** What the planned hours see of a day with the usual hours: 1 for the usual ones. */
    double hours() {
        return hours;
    }
}
