package sopwell;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.log.LogFault;
import sopwell.storage.LogCheck;
import sopwell.storage.LogLimits;

/**
 * Checks the whole log while the stand runs, soon after its start and then every day, on a thread
 * of its own and with a rest after each piece. Thread-safe.
 */
final class LogChecking implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(LogChecking.class.getName());

    private final LogCheck check;
    private final LongSupplier last;
    private final AtomicReference<Optional<String>> found = new AtomicReference<>(Optional.empty());
    private final ScheduledExecutorService worker =
            Executors.newSingleThreadScheduledExecutor(task -> new Thread(task, "check"));
    private final CountDownLatch closing = new CountDownLatch(1);
    private final Future<?> looks;

    /** Checks in a while; the last place is asked for each time. */
    LogChecking(LogCheck check, LongSupplier last) {
        this.check = check;
        this.last = last;
        this.looks =
                worker.scheduleWithFixedDelay(
                        this::whole,
                        LogLimits.CHECK_FIRST_SECONDS,
                        LogLimits.CHECK_SECONDS,
                        TimeUnit.SECONDS);
    }

    /** What is wrong with the log, if the newest check found anything. */
    Optional<String> found() {
        return found.get();
    }

    private void whole() {
        try {
            long to = last.getAsLong();
            for (long from = 1; from <= to; from += LogLimits.CHECK_EVENTS) {
                check.range(from, Math.min(to, from + LogLimits.CHECK_EVENTS - 1));
                if (closing.await(LogLimits.CHECK_PAUSE_MILLIS, TimeUnit.MILLISECONDS)) {
                    return;
                }
            }
            found.set(Optional.empty());
            LOGGER.info("the log was checked: " + to + " events are as they were written");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (LogFault fault) {
            LOGGER.log(Level.SEVERE, fault.getMessage(), fault);
            found.set(Optional.of(fault.getMessage()));
        }
    }

    /** Waits for the piece that is being checked. */
    @Override
    public void close() {
        closing.countDown();
        looks.cancel(false);
        worker.shutdown();
        try {
            if (!worker.awaitTermination(Limits.BOOK_SECONDS, TimeUnit.SECONDS)) {
                LOGGER.warning("the log is still being checked; the check is left undone");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
