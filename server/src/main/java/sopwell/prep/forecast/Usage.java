package sopwell.prep.forecast;

import org.apache.commons.statistics.distribution.GammaDistribution;
import sopwell.Check;

/**
 * How much of an ingredient a day takes. Each piece takes one of several amounts with a chance, so
 * with M and phi of the count, and E of what a piece takes, the mean is M E[u] and the variance is
 * M E[u²] + phi M² E[u]². Immutable.
 *
 * @param each what a piece takes on average, in the ingredient's unit
 * @param mean of a day
 * @param variance of a day
 */
public record Usage(double each, double mean, double variance) {
    /**
     * The usage of a count.
     *
     * @param shares the chances of the amounts, together 1 at most; other pieces take nothing
     * @param amounts in the ingredient's unit
     */
    public static Usage of(CountMixture count, double[] shares, double[] amounts) {
        Check.that(shares.length == amounts.length, "each amount has a chance");
        double each = 0;
        double squared = 0;
        for (int i = 0; i < shares.length; i++) {
            each += shares[i] * amounts[i];
            squared += shares[i] * amounts[i] * amounts[i];
        }
        double pieces = count.mean();
        double variance = pieces * squared + count.phi() * pieces * pieces * each * each;
        return new Usage(each, pieces * each, variance);
    }

    /** The amount that is enough with a probability, of a gamma distribution; 0 for no usage. */
    public double quantile(double q) {
        if (mean <= 0 || variance <= 0) {
            return 0;
        }
        double scale = variance / mean;
        return GammaDistribution.of(mean / scale, scale).inverseCumulativeProbability(q);
    }
}
