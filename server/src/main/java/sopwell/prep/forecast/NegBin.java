package sopwell.prep.forecast;

import sopwell.Check;

/**
 * A negative binomial count: variance = mean + phi mean². With phi 0 it is Poisson's. Immutable.
 *
 * @param mean from 0, in pieces
 * @param phi how much wider than Poisson's, from 0
 */
public record NegBin(double mean, double phi) {
    /** Below it the counts can't be told from Poisson's. */
    private static final double POISSON_PHI = 1e-9;

    public NegBin {
        Check.that(mean >= 0 && phi >= 0 && mean < 1e9, "a count has a mean and a width");
    }

    /** In squared pieces. */
    public double variance() {
        return mean + phi * mean * mean;
    }

    /** ln P(X = k). */
    public double logPmf(int k) {
        return logPmf(k, mean, phi);
    }

    /** P(X ≤ k). */
    public double cdf(int k) {
        return CountMixture.of(this).cdf(k);
    }

    /** The smallest count k with P(X ≤ k) ≥ q. */
    public int quantile(double q) {
        return CountMixture.of(this).quantile(q);
    }

    /**
     * E[X | X ≥ least]: what a day would have sold that sold out at a time nobody wrote down.
     *
     * @param least pieces that were sold, from 0
     */
    public double meanFrom(int least) {
        double beyond = 0;
        double below = 0;
        double p = Math.exp(logPmf(0));
        for (int k = 0; k < least; k++) {
            below += p;
            beyond += k * p;
            p *= ratio(k, mean, phi);
        }
        double left = 1 - below;
        return left < 1e-9 ? least : Math.max(least, (mean - beyond) / left);
    }

    static double logPmf(int k, double mean, double phi) {
        if (mean <= 0) {
            return k == 0 ? 0 : Double.NEGATIVE_INFINITY;
        }
        if (phi < POISSON_PHI) {
            return k * Math.log(mean) - mean - Gammas.logFactorial(k);
        }
        double size = 1 / phi;
        double spread = mean * phi;
        return Gammas.log(k + size)
                - Gammas.log(size)
                - Gammas.logFactorial(k)
                - (size + k) * Math.log1p(spread)
                + k * Math.log(spread);
    }

    /** P(k + 1) / P(k). */
    static double ratio(int k, double mean, double phi) {
        return (phi * k + 1) / (k + 1) * (mean / (1 + phi * mean));
    }
}
