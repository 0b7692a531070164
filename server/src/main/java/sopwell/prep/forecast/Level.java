package sopwell.prep.forecast;

/**
 * A gamma level that forgets: pieces seen over days seen. Not thread-safe.
 *
 * <p>The steady model with forgetting of Harvey and Fernandes (1989): each open day both sums lose
 * a share, so that after {@code halfLife} days what was seen weighs half.
 */
final class Level {
    private final double keep;
    private double pieces;
    private double days;

    /**
     * A level.
     *
     * @param halfLife in open days
     */
    Level(double halfLife, double pieces, double days) {
        this.keep = Math.pow(2, -1 / halfLife);
        this.pieces = pieces;
        this.days = days;
    }

    /** Pieces on a plain day. */
    double now() {
        return days <= 0 ? 0 : pieces / days;
    }

    /** Pieces that were seen, forgotten ones left out. */
    double pieces() {
        return pieces;
    }

    /** Days that were seen, forgotten ones left out. */
    double days() {
        return days;
    }

    /**
     * Takes in a day.
     *
     * @param count pieces sold
     * @param exposure what the day was of a plain day that is seen whole
     */
    void see(double count, double exposure) {
        pieces = keep * pieces + count;
        days = keep * days + exposure;
    }

    /** Takes in a day of the first few, plainly. */
    void add(double count, double exposure) {
        pieces += count;
        days += exposure;
    }

    /** The level goes up or down by a factor; what is known of it stays. */
    void grow(double factor) {
        pieces *= factor;
    }

    /** Less is known than was: the level stays, and moves faster with the next days. */
    void doubt(double share) {
        pieces *= share;
        days *= share;
    }
}
