package sopwell.desk;

/**
 * How the box's clock stands to the stand's. Immutable.
 *
 * @param trust what is wrong with the box's clock
 * @param boxMs what the box says, milliseconds since 1970-01-01 UTC
 * @param standMs what the stand goes by
 */
public record ClockState(Trust trust, long boxMs, long standMs) {
    /** What is wrong. */
    public enum Trust {
        /** Nothing: the stand goes by the box's clock. */
        RIGHT,
        /** The box says a time before the log's last event or before this Sopwell was made. */
        BEHIND,
        /** It was put back or forward while a day is open, by more than two seconds. */
        STEPPED
    }
}
