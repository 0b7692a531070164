package sopwell.prep.quantity;

/**
 * How much to have of what is sold in one go: the smallest amount that suffices with the
 * probability Cu / (Cu + Co), and in lots the multiple that costs least. Stateless.
 */
public final class Newsvendor {
    /** Costs that differ by less than this share are the same, and the smaller quantity wins. */
    private static final double SAME = 1e-12;

    private Newsvendor() {}

    /** The best amount when any amount can be had. */
    public static double best(Demand demand, Stakes stakes) {
        return demand.enough(stakes);
    }

    /** What having this amount costs on average, in the stakes' money. */
    public static double cost(Demand demand, Stakes stakes, double amount) {
        return stakes.shortage().doubleValue() * demand.missing(amount)
                + stakes.waste().doubleValue() * demand.left(amount);
    }

    /** The share of what is asked for that is there, on average. */
    public static double fillRate(Demand demand, double amount) {
        return demand.mean() <= 0 ? 1 : 1 - demand.missing(amount) / demand.mean();
    }

    /**
     * The best number of lots. The cost is convex in the amount, so it is one of the two multiples
     * beside the best amount.
     *
     * @param onHand what is there already and lasts, from 0
     * @param lot what one lot gives, above 0
     */
    public static LotChoice inLots(Demand demand, Stakes stakes, double onHand, double lot) {
        double missing = Math.max(0, best(demand, stakes) - onHand);
        long below = (long) Math.floor(missing / lot);
        double low = cost(demand, stakes, onHand + below * lot);
        double high = cost(demand, stakes, onHand + (below + 1) * lot);
        boolean up = high < low - SAME * Math.abs(low);
        return up
                ? new LotChoice(below + 1, high, below, low)
                : new LotChoice(below, low, below + 1, high);
    }
}
