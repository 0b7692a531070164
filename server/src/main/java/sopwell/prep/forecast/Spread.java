package sopwell.prep.forecast;

/**
 * How far counts fall from what was forecast some days ahead, learned from the misses themselves.
 * Not thread-safe.
 */
final class Spread {
    private static final double KEEP = 0.985;
    private static final double START_PHI = 0.015;
    private static final double START_DAYS = 15;
    private static final double START_DAYS_LEFT = 1;
    private static final double LEAST_PHI = 1e-4;

    /** A miss counts as this many variances at most. */
    private static final double VARIANCES_MAX = 16;

    private double startDays = START_DAYS;
    private double misses;
    private double squares;

    /** The width for a day of this mean. */
    double phi(double mean) {
        double prior = startDays * Math.max(mean, 1) * Math.max(mean, 1);
        return Math.max(LEAST_PHI, (misses + START_PHI * prior) / (squares + prior));
    }

    /** Takes in what became of a forecast. */
    void see(double count, double mean, double phi) {
        double miss = (count - mean) * (count - mean);
        double most = VARIANCES_MAX * (mean + phi * mean * mean);
        startDays = Math.max(START_DAYS_LEFT, KEEP * startDays);
        misses = KEEP * misses + Math.min(miss, most) - mean;
        squares = KEEP * squares + mean * mean;
    }
}
