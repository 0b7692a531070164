package sopwell.prep.quantity;

import org.apache.commons.statistics.distribution.GammaDistribution;

/** A gamma distribution with given mean and variance: amounts by weight or volume. Immutable. */
public final class GammaDemand implements Demand {
    private final GammaDistribution gamma;
    private final GammaDistribution longer;
    private final double mean;
    private final double variance;

    private GammaDemand(double mean, double variance) {
        double shape = mean * mean / variance;
        double scale = variance / mean;
        this.gamma = GammaDistribution.of(shape, scale);
        this.longer = GammaDistribution.of(shape + 1, scale);
        this.mean = mean;
        this.variance = variance;
    }

    /** With these moments; a demand without mean or variance is sure, and so is its amount. */
    public static Demand of(double mean, double variance) {
        return mean > 0 && variance > 0 ? new GammaDemand(mean, variance) : new SureDemand(mean);
    }

    @Override
    public double mean() {
        return mean;
    }

    @Override
    public double variance() {
        return variance;
    }

    @Override
    public double atMost(double amount) {
        return gamma.cumulativeProbability(amount);
    }

    @Override
    public double missing(double amount) {
        double at = Math.max(0, amount);
        return mean * longer.survivalProbability(at)
                - at * gamma.survivalProbability(at)
                + (at - amount);
    }

    @Override
    public double quantile(double probability) {
        return gamma.inverseCumulativeProbability(probability);
    }
}
