package sopwell;

import java.util.logging.Logger;
import sopwell.desk.DayBook;
import sopwell.journal.Happening;
import sopwell.journal.Told;

/**
 * Counts past days and keeps them while the stand runs, with a rest after each, so that nobody who
 * asks for a year waits for it to be counted. Thread-safe.
 */
final class BookKeeping implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(BookKeeping.class.getName());

    private final DayBook book;
    private final SpareTime time;

    /** Looks for days to count, in a while and then every while. */
    BookKeeping(DayBook book) {
        this.book = book;
        this.time = new SpareTime("book", this::keep, Limits.BOOK_SECONDS, Limits.BOOK_SECONDS);
    }

    /** A day that can't be read must not be the last that is tried. */
    private void keep(SpareTime here) throws InterruptedException {
        try {
            while (book.keepNext() && here.rests(Limits.BOOK_PAUSE_MILLIS)) {
                LOGGER.fine("a past day is kept");
            }
        } catch (RuntimeException fault) {
            Told.of(Happening.DAY_UNCOUNTED).fault(fault).to(LOGGER);
        }
    }

    @Override
    public void close() {
        time.close();
    }
}
