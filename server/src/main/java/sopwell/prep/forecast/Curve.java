package sopwell.prep.forecast;

/**
 * When in the day things are sold: for each bin the share of a plain day. Learned from the time in
 * which they could be sold alone, so that an evening without beef does not look like one without
 * guests. Not thread-safe.
 */
final class Curve {
    private static final double PRIOR_LINES = 60;

    private final double keep;
    private final double[] sold;
    private final double[] due;

    /**
     * A curve.
     *
     * @param keep what a day leaves of those before
     */
    Curve(int bins, double keep) {
        this.keep = keep;
        this.sold = new double[bins];
        this.due = new double[bins];
    }

    /**
     * Takes in a day.
     *
     * @param counts pieces sold in each bin
     * @param could what part of each bin they could be sold in; empty for all of it
     * @param whole what the whole day would have sold
     */
    void learn(int[] counts, double[] could, double whole) {
        for (int b = 0; b < sold.length; b++) {
            double part = could.length == 0 ? 1 : could[b];
            sold[b] = keep * sold[b] + (part > 0 ? counts[b] : 0);
            due[b] = keep * due[b] + part * whole;
        }
    }

    /** The share of a bin; what is said before anything was seen weighs sixty pieces. */
    double share(int bin, double prior) {
        return (sold[bin] + PRIOR_LINES * prior) / (due[bin] + PRIOR_LINES);
    }
}
