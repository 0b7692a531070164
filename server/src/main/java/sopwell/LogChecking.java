package sopwell;

import java.time.InstantSource;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import java.util.logging.Logger;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;
import sopwell.storage.LogCheck;
import sopwell.storage.LogLimits;
import sopwell.web.LogState;

/**
 * Checks the whole log while the stand runs, soon after its start and then every day, with a rest
 * after each piece. Thread-safe.
 */
final class LogChecking implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(LogChecking.class.getName());

    private final LogCheck check;
    private final LongSupplier last;
    private final InstantSource clock;
    private final AtomicReference<LogState> found = new AtomicReference<>(LogState.UNCHECKED);
    private final SpareTime time;

    /** Checks in a while; the last place is asked for each time. */
    LogChecking(LogCheck check, LongSupplier last, InstantSource clock) {
        this.clock = clock;
        this.check = check;
        this.last = last;
        this.time =
                new SpareTime(
                        "check",
                        this::whole,
                        LogLimits.CHECK_FIRST_SECONDS,
                        LogLimits.CHECK_SECONDS);
    }

    /** What the newest check found. */
    LogState found() {
        return found.get();
    }

    /** What can't be read is said too: a check that ends without a word would never come again. */
    private void whole(SpareTime here) throws InterruptedException {
        try {
            long to = last.getAsLong();
            for (long from = 1; from <= to; from += LogLimits.CHECK_EVENTS) {
                check.range(from, Math.min(to, from + LogLimits.CHECK_EVENTS - 1));
                if (!here.rests(LogLimits.CHECK_PAUSE_MILLIS)) {
                    return;
                }
            }
            found.set(state(Optional.empty()));
            Told.of(Happening.LOG_CHECKED).with("events", to).to(LOGGER);
        } catch (LogFault fault) {
            Told.of(Happening.LOG_DAMAGED).own("what", fault.getMessage()).fault(fault).to(LOGGER);
            found.set(state(Optional.of(fault.getMessage())));
        } catch (RuntimeException fault) {
            Told.of(Happening.LOG_UNCHECKED).fault(fault).to(LOGGER);
        }
    }

    private LogState state(Optional<String> damage) {
        return new LogState(OptionalLong.of(clock.millis()), damage);
    }

    @Override
    public void close() {
        time.close();
    }
}
