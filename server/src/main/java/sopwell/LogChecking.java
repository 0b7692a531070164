package sopwell;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.log.LogFault;
import sopwell.storage.LogCheck;
import sopwell.storage.LogLimits;

/**
 * Checks the whole log while the stand runs, soon after its start and then every day, with a rest
 * after each piece. Thread-safe.
 */
final class LogChecking implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(LogChecking.class.getName());

    private final LogCheck check;
    private final LongSupplier last;
    private final AtomicReference<Optional<String>> found = new AtomicReference<>(Optional.empty());
    private final SpareTime time;

    /** Checks in a while; the last place is asked for each time. */
    LogChecking(LogCheck check, LongSupplier last) {
        this.check = check;
        this.last = last;
        this.time =
                new SpareTime(
                        "check",
                        this::whole,
                        LogLimits.CHECK_FIRST_SECONDS,
                        LogLimits.CHECK_SECONDS);
    }

    /** What is wrong with the log, if the newest check found anything. */
    Optional<String> found() {
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
            found.set(Optional.empty());
            LOGGER.info("the log was checked: " + to + " events are as they were written");
        } catch (LogFault fault) {
            LOGGER.log(Level.SEVERE, fault.getMessage(), fault);
            found.set(Optional.of(fault.getMessage()));
        } catch (RuntimeException fault) {
            LOGGER.log(Level.SEVERE, "the log could not be checked; tomorrow tries again", fault);
        }
    }

    @Override
    public void close() {
        time.close();
    }
}
