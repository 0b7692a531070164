package sopwell.web.live;

import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import sopwell.Limits;

/**
 * How many frames a screen may send: so many at once, and so many a second after that. Belongs to
 * its connection's I/O thread.
 */
final class FrameBudget {
    private static final long EACH_NANOS =
            TimeUnit.SECONDS.toNanos(1) / Limits.SOCKET_FRAMES_PER_SECOND_MAX;
    private static final long BURST_NANOS = EACH_NANOS * Limits.SOCKET_FRAMES_BURST_MAX;

    private final LongSupplier nanos;
    private long paidUpTo;

    /** A budget that nothing was taken from. */
    FrameBudget(LongSupplier nanos) {
        this.nanos = nanos;
        this.paidUpTo = nanos.getAsLong();
    }

    /** Takes a frame; how long nothing more may come, in milliseconds, mostly 0. */
    long take() {
        long now = nanos.getAsLong();
        long ahead = Math.max(0, paidUpTo - now) + EACH_NANOS;
        paidUpTo = now + ahead;
        return ahead < BURST_NANOS ? 0 : TimeUnit.NANOSECONDS.toMillis(ahead - BURST_NANOS / 2);
    }
}
