package sopwell.desk;

import java.util.OptionalLong;

/**
 * How the disk with the log is. Immutable.
 *
 * @param kind what that means for the stand
 * @param freeBytes what can still be written, if the disk says so
 */
public record DiskState(Kind kind, OptionalLong freeBytes) {
    /** What it means; each is worse than the one before. */
    public enum Kind {
        /** There is room, and what is written stays. */
        WELL,
        /** Little is free; everything goes on. */
        LOW,
        /** So little is free that only what was begun goes on: no new orders. */
        NO_ROOM,
        /** Writing failed again and again: nothing is written until a try succeeds. */
        READING_ONLY
    }
}
