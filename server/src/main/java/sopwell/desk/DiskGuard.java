package sopwell.desk;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;
import sopwell.orders.OrderCommand;

/**
 * Says what may still be written, by what is free where the log is and by how often writing failed
 * of late. Thread-safe.
 *
 * <p>What little is free is kept for what was begun: the line works its orders off, guests pay, the
 * day is closed. Only what begins something new is refused. A stand whose writing failed too often
 * refuses everything at once instead of having each request wait for a disk that is not well.
 */
public final class DiskGuard {
    private static final Logger LOGGER = Logger.getLogger(DiskGuard.class.getName());

    /** What begins something new. */
    private static final Set<OrderCommand.Kind> BEGINNINGS =
            EnumSet.of(
                    OrderCommand.Kind.PLACE,
                    OrderCommand.Kind.OPEN_DAY,
                    OrderCommand.Kind.REOPEN_DAY);

    private final Space space;
    private final Terms terms;
    private final LongSupplier nanos;
    private final Deque<Long> failures = new ArrayDeque<>();
    private OptionalLong freeBytes = OptionalLong.empty();
    private volatile boolean readingOnly;
    private boolean unseen;

    /** How much is free where the log is. */
    @FunctionalInterface
    public interface Space {
        long freeBytes() throws IOException;
    }

    /**
     * From when on the stand minds.
     *
     * @param warnBytes with less free it warns
     * @param reserveBytes with less free it takes no new orders
     * @param failuresMax so many failed writes, and it only reads
     * @param failuresNanos within this time
     */
    public record Terms(long warnBytes, long reserveBytes, int failuresMax, long failuresNanos) {}

    /** A guard that has asked for what is free already. */
    public DiskGuard(Space space, Terms terms, LongSupplier nanos) {
        this.space = space;
        this.terms = terms;
        this.nanos = nanos;
        ask();
    }

    /** A guard for a log that is not on a disk: it never minds. */
    public static DiskGuard trusting() {
        Terms never = new Terms(0, 0, Integer.MAX_VALUE, 0);
        return new DiskGuard(() -> Long.MAX_VALUE, never, () -> 0);
    }

    /** How the disk was when it was looked at last. */
    public synchronized DiskState state() {
        return new DiskState(kind(), freeBytes);
    }

    /**
     * Looks at the disk again.
     *
     * @param probe writes something that changes nothing; tried while the stand only reads, which
     *     it stops doing when that went well
     */
    public void look(Runnable probe) {
        ask();
        if (isReadingOnly()) {
            try {
                probe.run();
                wellAgain();
            } catch (LogFault still) {
                LOGGER.log(Level.FINE, "the disk is not well yet", still);
            }
        }
    }

    boolean isReadingOnly() {
        return readingOnly;
    }

    /** Whether this has to wait until there is more room; where it is short, the disk is asked. */
    boolean lacksRoomFor(StandCommand command) {
        if (!begins(command) || state().kind() == DiskState.Kind.WELL) {
            return false;
        }
        ask();
        return state().kind() == DiskState.Kind.NO_ROOM;
    }

    /** Something could not be written. */
    synchronized void failed(LogFault fault) {
        long nowNanos = nanos.getAsLong();
        failures.addLast(nowNanos);
        while (nowNanos - failures.getFirst() > terms.failuresNanos()) {
            failures.removeFirst();
        }
        if (!readingOnly && failures.size() >= terms.failuresMax()) {
            readingOnly = true;
            Told.of(Happening.READING_ONLY).fault(fault).to(LOGGER);
        }
    }

    /** On trial: for as long as failures count, one more is enough. */
    private synchronized void wellAgain() {
        readingOnly = false;
        long nowNanos = nanos.getAsLong();
        failures.clear();
        for (int i = 1; i < terms.failuresMax(); i++) {
            failures.addLast(nowNanos);
        }
        Told.of(Happening.WRITING_AGAIN).to(LOGGER);
    }

    private static boolean begins(StandCommand command) {
        if (command instanceof StandCommand.By by) {
            return begins(by.command());
        }
        return command instanceof StandCommand.ForOrders orders
                && BEGINNINGS.contains(orders.command().kind());
    }

    /** A disk that does not say what is free is taken for one with room: writing will tell. */
    private void ask() {
        OptionalLong now = OptionalLong.empty();
        IOException fault = null;
        try {
            now = OptionalLong.of(space.freeBytes());
        } catch (IOException unknown) {
            fault = unknown;
        }
        synchronized (this) {
            if (fault != null && !unseen) {
                Told.of(Happening.DISK_UNSEEN).fault(fault).to(LOGGER);
            }
            unseen = fault != null;
            DiskState.Kind before = kind();
            freeBytes = now;
            DiskState.Kind after = kind();
            if (after != before) {
                Told.of(Happening.DISK_CHANGED)
                        .with("before", before)
                        .with("now", after)
                        .to(LOGGER);
            }
        }
    }

    private DiskState.Kind kind() {
        if (readingOnly) {
            return DiskState.Kind.READING_ONLY;
        }
        long free = freeBytes.orElse(Long.MAX_VALUE);
        if (free < terms.reserveBytes()) {
            return DiskState.Kind.NO_ROOM;
        }
        return free < terms.warnBytes() ? DiskState.Kind.LOW : DiskState.Kind.WELL;
    }
}
