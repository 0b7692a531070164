package sopwell.mix;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * Where the tallies of one kind of past days are kept, so that a year is not counted anew each
 * time. Everything on it can be made again from the log: losing it costs time and nothing else.
 * Thread-safe.
 *
 * @param <T> what is kept of each day
 */
public interface TallyShelf<T> {
    /**
     * A tally and what it was counted from.
     *
     * @param lastSeq the place of the last event that it counts
     * @param tally empty when what is kept can't be read
     */
    record Shelved<T>(LocalDate date, long lastSeq, Optional<T> tally) {
        /** A tally that was counted just now. */
        public static <T> Shelved<T> of(LocalDate date, long lastSeq, T tally) {
            return new Shelved<>(date, lastSeq, Optional.of(tally));
        }
    }

    /** What is kept of these dates, oldest first. */
    List<Shelved<T>> of(Collection<LocalDate> dates);

    /**
     * Everything that is kept, oldest first.
     *
     * @throws sopwell.log.LogFault when the shelf itself is damaged
     */
    List<Shelved<T>> all();

    /** Keeps tallies, in place of older ones of the same dates. */
    void put(List<Shelved<T>> tallies);

    /**
     * Keeps nothing of a date any more. It is gone for good when this returns, also if the power
     * fails then.
     */
    void forget(LocalDate date);

    /** Keeps nothing any more. */
    void clear();
}
