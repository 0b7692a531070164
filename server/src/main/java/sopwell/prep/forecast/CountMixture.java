package sopwell.prep.forecast;

import java.util.Arrays;
import sopwell.Check;

/**
 * A distribution of a count: negative binomials with weights. Immutable; quantiles are the smallest
 * counts that reach their share.
 */
public final class CountMixture {
    /** How far below a component's mean its lower tail is summed from, in standard deviations. */
    private static final double TAIL_SDS = 12;

    /** Components that say next to nothing are left out. */
    private static final double LEAST_WEIGHT = 1e-5;

    private static final double NEARLY_ONE = 1 - 1e-12;

    private final double[] means;
    private final double[] phis;
    private final double[] weights;

    private CountMixture(double[] means, double[] phis, double[] weights) {
        this.means = means;
        this.phis = phis;
        this.weights = weights;
    }

    /** One component alone. */
    public static CountMixture of(NegBin one) {
        return new CountMixture(
                new double[] {one.mean()}, new double[] {one.phi()}, new double[] {1});
    }

    /**
     * Components with weights, which are brought to the sum 1.
     *
     * @param weights from 0, at least one above it
     */
    public static CountMixture of(double[] means, double[] phis, double[] weights) {
        Check.that(
                means.length == phis.length && means.length == weights.length,
                "a mixture's components have a mean, a width and a weight each");
        double sum = Arrays.stream(weights).sum();
        Check.that(sum > 0, "a mixture has a component");
        int[] kept = new int[means.length];
        int count = 0;
        for (int i = 0; i < means.length; i++) {
            if (weights[i] / sum >= LEAST_WEIGHT) {
                kept[count++] = i;
            }
        }
        double[] some = new double[count];
        double[] widths = new double[count];
        double[] shares = new double[count];
        double left = 0;
        for (int i = 0; i < count; i++) {
            some[i] = means[kept[i]];
            widths[i] = phis[kept[i]];
            shares[i] = weights[kept[i]];
            left += shares[i];
        }
        for (int i = 0; i < count; i++) {
            shares[i] /= left;
        }
        return new CountMixture(some, widths, shares);
    }

    /** Both, the second with a share of the whole. */
    static CountMixture of(CountMixture first, CountMixture second, double secondShare) {
        int n = first.means.length;
        int all = n + second.means.length;
        double[] means = Arrays.copyOf(first.means, all);
        double[] phis = Arrays.copyOf(first.phis, all);
        double[] weights = Arrays.copyOf(first.weights, all);
        for (int i = 0; i < n; i++) {
            weights[i] *= 1 - secondShare;
        }
        for (int i = n; i < all; i++) {
            means[i] = second.means[i - n];
            phis[i] = second.phis[i - n];
            weights[i] = second.weights[i - n] * secondShare;
        }
        return of(means, phis, weights);
    }

    /**
     * The distribution of a part of this count: each piece belongs to it with a chance.
     *
     * @param share the chance, 0 to 1
     * @param rho how alike the pieces of one day are, from 0
     */
    CountMixture part(double share, double rho) {
        double[] parts = new double[means.length];
        double[] widths = new double[means.length];
        for (int i = 0; i < means.length; i++) {
            parts[i] = means[i] * share;
            widths[i] = Thinning.phi(phis[i], share, rho);
        }
        return new CountMixture(parts, widths, weights);
    }

    /** The same means, each with a wider spread. */
    CountMixture wider(double phi) {
        return new CountMixture(
                means, Arrays.stream(phis).map(one -> one + phi).toArray(), weights);
    }

    /** In pieces. */
    public double mean() {
        double sum = 0;
        for (int i = 0; i < means.length; i++) {
            sum += weights[i] * means[i];
        }
        return sum;
    }

    /** In squared pieces: within the components and between them. */
    public double variance() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < means.length; i++) {
            double off = means[i] - mean;
            sum += weights[i] * (means[i] + phis[i] * means[i] * means[i] + off * off);
        }
        return sum;
    }

    /** The phi of a negative binomial with this mean and variance; 0 where there is no mean. */
    public double phi() {
        double mean = mean();
        return mean <= 0 ? 0 : Math.max(0, (variance() - mean) / (mean * mean));
    }

    /** P(X ≤ k). */
    public double cdf(int k) {
        Walk walk = new Walk();
        while (walk.at < k && walk.below < NEARLY_ONE) {
            walk.step();
        }
        return walk.at > k ? 0 : Math.min(1, walk.below);
    }

    /** The smallest count k with P(X ≤ k) ≥ q, for q above 0 and below 1. */
    public int quantile(double q) {
        return quantiles(q)[0];
    }

    /** Several quantiles at once; the shares must rise. */
    public int[] quantiles(double... shares) {
        int[] found = new int[shares.length];
        Walk walk = new Walk();
        for (int i = 0; i < shares.length; i++) {
            Check.that(
                    shares[i] > 0 && shares[i] < 1 && (i == 0 || shares[i] >= shares[i - 1]),
                    "shares of a distribution lie between 0 and 1 and rise");
            while (walk.below < shares[i] && walk.below < NEARLY_ONE) {
                walk.step();
            }
            found[i] = walk.at;
        }
        return found;
    }

    /** Goes up the counts and sums the chances. */
    private final class Walk {
        private final double[] chances = new double[means.length];
        private int at;
        private double below;

        Walk() {
            double from = Double.MAX_VALUE;
            for (int i = 0; i < means.length; i++) {
                double sd = Math.sqrt(means[i] + phis[i] * means[i] * means[i]);
                from = Math.min(from, means[i] - TAIL_SDS * sd);
            }
            at = (int) Math.max(0, from);
            for (int i = 0; i < means.length; i++) {
                chances[i] = weights[i] * Math.exp(NegBin.logPmf(at, means[i], phis[i]));
                below += chances[i];
            }
        }

        void step() {
            for (int i = 0; i < means.length; i++) {
                chances[i] *= NegBin.ratio(at, means[i], phis[i]);
                below += chances[i];
            }
            at++;
        }
    }
}
