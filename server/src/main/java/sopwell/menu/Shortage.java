package sopwell.menu;

/**
 * How short something is. Immutable.
 *
 * @param left how many may still be sold; 0 for none
 * @param untilMs when it is sold again by itself, milliseconds since 1970-01-01 UTC; 0 for not
 *     before the day closes
 */
public record Shortage(Out out, int left, long untilMs) {
    /** Whether it still holds. */
    public boolean holds(long nowMs) {
        return untilMs == 0 || nowMs < untilMs;
    }

    /** Whether nothing of it may be sold. */
    public boolean isGone() {
        return left <= 0;
    }

    /** The same with so many fewer left. */
    public Shortage less(int pieces) {
        return new Shortage(out, left - pieces, untilMs);
    }
}
