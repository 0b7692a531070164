package sopwell;

import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import sopwell.desk.DayBook;

/**
 * Counts past days and keeps them while the stand runs, on a thread of its own and with a pause
 * after each, so that nobody who asks for a year waits for it to be counted. Thread-safe.
 */
final class BookKeeping implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(BookKeeping.class.getName());

    private static final long REST_MS = TimeUnit.SECONDS.toMillis(Limits.BOOK_SECONDS);

    private final DayBook book;
    private final ScheduledThreadPoolExecutor worker =
            new ScheduledThreadPoolExecutor(
                    1,
                    task -> {
                        Thread thread = new Thread(task, "book");
                        thread.setPriority(Thread.MIN_PRIORITY);
                        return thread;
                    });

    private BookKeeping(DayBook book) {
        this.book = book;
        worker.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
    }

    /** Looks for days to count, in a while and then every while. */
    static BookKeeping start(DayBook book) {
        BookKeeping keeping = new BookKeeping(book);
        keeping.later(REST_MS);
        return keeping;
    }

    private void later(long ms) {
        try {
            worker.schedule(this::keep, ms, TimeUnit.MILLISECONDS);
        } catch (RejectedExecutionException closing) {
            LOGGER.log(Level.FINE, "the stand closes", closing);
        }
    }

    /** A day that can't be read must not be the last that is tried. */
    private void keep() {
        boolean more = false;
        try {
            more = book.keepNext();
        } catch (RuntimeException fault) {
            LOGGER.log(Level.WARNING, "a past day could not be counted; it is tried again", fault);
        }
        later(more ? Limits.BOOK_PAUSE_MILLIS : REST_MS);
    }

    /** Waits for the day that is being counted. */
    @Override
    public void close() {
        worker.shutdown();
        try {
            worker.awaitTermination(Limits.BOOK_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
        }
    }
}
