package sopwell.prep.quantity;

import java.util.List;

/**
 * The days that an order has to last: lead time and review time, in open days. The days vary each
 * by itself, and all together with the level of the trade. Immutable.
 *
 * @param mean of the sum
 * @param variance of the sum
 */
public record Protection(double mean, double variance) {
    /**
     * The sum of days of counts.
     *
     * @param means of the days
     * @param dayPhi how much wider than Poisson's each day is by itself
     * @param levelPhi the squared coefficient of variation that all days share
     */
    public static Protection ofCounts(List<Double> means, double dayPhi, double levelPhi) {
        double mean = 0;
        double variance = 0;
        for (double day : means) {
            mean += day;
            variance += day + dayPhi * day * day;
        }
        return new Protection(mean, variance + levelPhi * mean * mean);
    }

    /** The phi of a negative binomial with these moments; 0 when it is no wider than Poisson's. */
    public double phi() {
        return mean <= 0 ? 0 : Math.max(0, (variance - mean) / (mean * mean));
    }

    /** The sum as a count. */
    public Demand count() {
        return CountDemand.negativeBinomial(mean, phi());
    }

    /** The sum as an amount. */
    public Demand amount() {
        return GammaDemand.of(mean, variance);
    }

    /**
     * How much is missing up to the level that these stakes ask for: keeping costs the night's
     * share for the expected nights, and waste times the chance that it comes to waste.
     *
     * @param position usable on hand that lasts, and in process
     */
    public static double upTo(Demand sum, Stakes stakes, double position) {
        return Math.max(0, Newsvendor.best(sum, stakes) - position);
    }
}
