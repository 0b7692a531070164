package sopwell.prep.quantity;

/**
 * A demand that is known: what recipes take. Immutable.
 *
 * @param mean what will be asked for, from 0
 */
public record SureDemand(double mean) implements Demand {
    @Override
    public double variance() {
        return 0;
    }

    @Override
    public double atMost(double amount) {
        return amount >= mean ? 1 : 0;
    }

    @Override
    public double missing(double amount) {
        return Math.max(0, mean - amount);
    }

    @Override
    public double quantile(double probability) {
        return mean;
    }
}
