package sopwell;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.desk.DayBook;

/**
 * Counts past days and keeps them while the stand runs, on a thread of its own and with a rest
 * after each, so that nobody who asks for a year waits for it to be counted. Thread-safe.
 */
final class BookKeeping implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(BookKeeping.class.getName());

    private final DayBook book;
    private final ScheduledExecutorService worker =
            Executors.newSingleThreadScheduledExecutor(task -> new Thread(task, "book"));
    private final CountDownLatch closing = new CountDownLatch(1);
    private final Future<?> looks;

    /** Looks for days to count, in a while and then every while. */
    BookKeeping(DayBook book) {
        this.book = book;
        this.looks =
                worker.scheduleWithFixedDelay(
                        this::keep, Limits.BOOK_SECONDS, Limits.BOOK_SECONDS, TimeUnit.SECONDS);
    }

    /** A day that can't be read must not be the last that is tried. */
    private void keep() {
        try {
            while (book.keepNext()
                    && !closing.await(Limits.BOOK_PAUSE_MILLIS, TimeUnit.MILLISECONDS)) {
                LOGGER.fine("a past day is kept");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException fault) {
            LOGGER.log(Level.WARNING, "a past day could not be counted; it is tried again", fault);
        }
    }

    /** Waits for the day that is being counted. */
    @Override
    public void close() {
        closing.countDown();
        looks.cancel(false);
        worker.shutdown();
        try {
            if (!worker.awaitTermination(Limits.BOOK_SECONDS, TimeUnit.SECONDS)) {
                LOGGER.warning("a past day is still being counted; its tally is left out");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
