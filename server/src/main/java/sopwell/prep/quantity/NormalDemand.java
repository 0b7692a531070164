package sopwell.prep.quantity;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** A normal distribution, for textbook cases and sums of many days. Immutable. */
public final class NormalDemand implements Demand {
    private final NormalDistribution normal;
    private final double mean;
    private final double deviation;

    /**
     * With this mean and spread.
     *
     * @param deviation the standard deviation, above 0
     */
    public NormalDemand(double mean, double deviation) {
        this.normal = NormalDistribution.of(mean, deviation);
        this.mean = mean;
        this.deviation = deviation;
    }

    @Override
    public double mean() {
        return mean;
    }

    @Override
    public double variance() {
        return deviation * deviation;
    }

    @Override
    public double atMost(double amount) {
        return normal.cumulativeProbability(amount);
    }

    @Override
    public double missing(double amount) {
        return deviation * deviation * normal.density(amount)
                - (amount - mean) * normal.survivalProbability(amount);
    }

    @Override
    public double quantile(double probability) {
        return normal.inverseCumulativeProbability(probability);
    }
}
