package sopwell.access;

/**
 * How often somebody's secret was typed wrongly at one place since it was last typed rightly. A try
 * is counted before it is looked at, so that a burst can't have more than are left. Immutable.
 *
 * @param count tries since the last right one
 * @param untilMs when the next is looked at
 */
public record Tries(int count, long untilMs) {
    /** None yet. */
    static final Tries NONE = new Tries(0, 0);

    boolean isLocked() {
        return count >= AccessLimits.SECRET_TRIES_HARD_MAX;
    }

    /** How long to wait for the next try; 0 when it may be made now. */
    long waitSeconds(long nowMs) {
        return Math.max(0, (untilMs - nowMs + 999) / 1_000);
    }

    /** How many more may be made before a wait. */
    int left() {
        return Math.max(0, AccessLimits.SECRET_TRIES_MAX - count);
    }

    /** With one more: from the fifth on each makes the next wait, twice as long each time. */
    Tries oneMore(long nowMs) {
        return new Tries(count + 1, 0).from(nowMs);
    }

    /** Whether the wait ends later than any could: the clock was set back since it began. */
    boolean isFromLater(long nowMs) {
        return untilMs - nowMs > AccessLimits.SECRET_WAIT_MILLIS_MAX;
    }

    /** The same count, with its wait beginning now. */
    Tries from(long nowMs) {
        int over = count - AccessLimits.SECRET_TRIES_MAX;
        if (over < 0) {
            return new Tries(count, 0);
        }
        long waitMs = AccessLimits.SECRET_WAIT_MILLIS_MIN << Math.min(over, 16);
        return new Tries(count, nowMs + Math.min(waitMs, AccessLimits.SECRET_WAIT_MILLIS_MAX));
    }
}
