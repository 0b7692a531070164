package sopwell.prep.forecast;

import java.util.Arrays;

/**
 * Which of several ways to forecast is believed how much: by the logarithms of the chances that
 * each gave to what came, older ones counting less. Not thread-safe.
 */
final class Scores {
    private final double keep;
    private final double[] sums;
    private final double[] weights;

    Scores(int ways, double keep) {
        this.keep = keep;
        this.sums = new double[ways];
        this.weights = new double[ways];
        Arrays.fill(weights, 1.0 / ways);
    }

    /** Starts from these sums. */
    void start(double... from) {
        System.arraycopy(from, 0, sums, 0, sums.length);
        weigh();
    }

    /** Takes in a day's scores, one of each way. */
    void see(double[] scores) {
        for (int i = 0; i < sums.length; i++) {
            sums[i] = keep * sums[i] + scores[i];
        }
        weigh();
    }

    /** The discounted sum of a way. */
    double sum(int way) {
        return sums[way];
    }

    /** How much a way is believed; all together 1. */
    double weight(int way) {
        return weights[way];
    }

    /** All weights; not to be written to. */
    double[] weights() {
        return weights;
    }

    private void weigh() {
        double best = Arrays.stream(sums).max().orElseThrow();
        double all = 0;
        for (int i = 0; i < sums.length; i++) {
            weights[i] = Math.exp(sums[i] - best);
            all += weights[i];
        }
        for (int i = 0; i < sums.length; i++) {
            weights[i] /= all;
        }
    }
}
