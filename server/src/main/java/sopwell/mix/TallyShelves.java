package sopwell.mix;

/**
 * The shelves of a stand: each kind stands apart, so that a year's mix reads no waits. Thread-safe.
 */
public record TallyShelves(
        TallyShelf<DayTally> mixes,
        TallyShelf<WaitTally> waits,
        TallyShelf<ExceptionTally> exceptions) {}
