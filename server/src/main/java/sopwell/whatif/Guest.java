package sopwell.whatif;

import java.util.List;

/**
 * One order of the day. Immutable.
 *
 * @param id names it in every run, so that its work is the same in each of a pair
 * @param atMs when it reached the kitchen, milliseconds since 1970-01-01 UTC
 * @param sinceMs since when its guest waited: earlier, if it was taken while the stand was away
 * @param halfHour the half hour of that, see {@link sopwell.mix.HalfHours}
 * @param windowMs when the half hour began in which it reached the kitchen
 * @param upMs when all of it was really up; 0 when it never was
 */
public record Guest(
        int id, long atMs, long sinceMs, int halfHour, long windowMs, long upMs, List<Task> tasks) {
    public Guest {
        tasks = List.copyOf(tasks);
    }

    /** The same order by somebody else, who comes at another time of the same half hour. */
    Guest comingAt(int otherId, long otherMs) {
        return new Guest(
                otherId, otherMs, otherMs - (atMs - sinceMs), halfHour, windowMs, 0, tasks);
    }
}
