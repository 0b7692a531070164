package sopwell.prep.quantity;

/** How much will be asked for, as a distribution. Amounts are from 0. Immutable. */
public interface Demand {
    /** In the unit of the amounts. */
    double mean();

    /** In that unit squared. */
    double variance();

    /** P(D ≤ amount). */
    double atMost(double amount);

    /** E[max(0, D − amount)]: what would be missing on average. */
    double missing(double amount);

    /** The smallest amount that suffices with at least this probability, 0 to below 1. */
    double quantile(double probability);

    /**
     * The smallest amount that suffices with at least the fractile of these stakes. Distributions
     * that know their probabilities exactly decide ties exactly.
     */
    default double enough(Stakes stakes) {
        return quantile(stakes.fractile());
    }

    /** E[max(0, amount − D)]: what would be left over on average. */
    default double left(double amount) {
        return amount - mean() + missing(amount);
    }
}
