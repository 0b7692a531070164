package sopwell.desk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Days of which the log is about to say something else than before, such as fewer names: what was
 * counted of them until then is not kept any more, whoever counted it. Thread-safe.
 */
final class Doubts {
    private final Map<LocalDate, Long> sureFrom = new HashMap<>();
    private long turn;

    /** When somebody begins to read what may be kept later. */
    synchronized long now() {
        return turn;
    }

    /** A day is doubtful until it is settled; nobody keeps anything meanwhile. */
    synchronized void raise(LocalDate date, Runnable throwAway) {
        sureFrom.put(date, Long.MAX_VALUE);
        throwAway.run();
    }

    /** The log says of the day what it will say; what was read before stays doubtful. */
    synchronized void settle(LocalDate date) {
        turn++;
        sureFrom.put(date, turn);
    }

    /**
     * Keeps something, during which no doubt is raised.
     *
     * @param readFrom when it began to be read, by {@link #now}
     * @param keep is told which dates may be kept
     */
    synchronized void keeping(long readFrom, Consumer<Predicate<LocalDate>> keep) {
        keep.accept(date -> sureFrom.getOrDefault(date, 0L) <= readFrom);
    }
}
