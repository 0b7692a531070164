package sopwell.mix;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;

/**
 * Where the tallies of past days are kept, so that a year is not counted anew each time. Everything
 * on it can be made again from the log: losing it costs time and nothing else. Thread-safe.
 */
public interface TallyShelf {
    /**
     * A tally and what it was counted from.
     *
     * @param lastSeq the place of the last event that it counts
     */
    record Shelved(DayTally tally, long lastSeq) {}

    /** What is kept of these dates, oldest first. */
    List<Shelved> of(Collection<LocalDate> dates);

    /** Everything that is kept, oldest first. */
    List<Shelved> all();

    /** Keeps tallies, in place of older ones of the same dates. */
    void put(List<Shelved> tallies);

    /** Keeps nothing any more. */
    void clear();
}
