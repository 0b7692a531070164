package sopwell.prep.forecast;

/** A share that forgets: pieces of a kind, and the others. Not thread-safe. */
final class Share {
    private final double keep;
    private double alpha;
    private double beta;

    /**
     * A share.
     *
     * @param halfLife in days on which its whole was sold
     */
    Share(double halfLife, double alpha, double beta) {
        this.keep = Math.pow(2, -1 / halfLife);
        this.alpha = alpha;
        this.beta = beta;
    }

    /** Takes in that some of so many were of the kind. */
    void see(double some, double all) {
        alpha = keep * alpha + some;
        beta = keep * beta + Math.max(0, all - some);
    }

    /** The share now, 0 to 1. */
    double now() {
        double all = alpha + beta;
        return all <= 0 ? 0 : alpha / all;
    }

    double alpha() {
        return alpha;
    }

    double beta() {
        return beta;
    }
}
