package sopwell.mix;

import java.time.LocalDate;
import sopwell.Check;

/**
 * Days, and the part of each of them, that something is counted over. Immutable.
 *
 * @param to not before {@code from}; itself counted
 * @param beginHalfHour the first half hour of each day, see {@link HalfHours}
 * @param endHalfHour the first that no longer counts, after the beginning
 */
public record Period(LocalDate from, LocalDate to, int beginHalfHour, int endHalfHour) {
    public Period {
        Check.that(!to.isBefore(from), "a period ends when it has begun");
        Check.that(
                beginHalfHour >= 0
                        && beginHalfHour < endHalfHour
                        && endHalfHour <= HalfHours.END_MAX,
                "a part of a day has a half hour");
    }

    /** One whole day. */
    public static Period day(LocalDate date) {
        return new Period(date, date, 0, HalfHours.END_MAX);
    }

    /** Whether it is one date. */
    public boolean isOneDay() {
        return from.equals(to);
    }

    /** Whether its days count from morning to night. */
    public boolean isWholeDays() {
        return beginHalfHour == 0 && endHalfHour == HalfHours.END_MAX;
    }

    /** Whether a half hour of a date counts. */
    public boolean holds(LocalDate date, int halfHour) {
        return !date.isBefore(from)
                && !date.isAfter(to)
                && halfHour >= beginHalfHour
                && halfHour < endHalfHour;
    }

    /** Whether anything of a day counts. */
    public boolean holdsAny(DayTally day) {
        return day.halfHours().stream().anyMatch(half -> holds(day.date(), half.index()));
    }

    /** The same part of another date. */
    public Period on(LocalDate date) {
        return new Period(date, date, beginHalfHour, endHalfHour);
    }
}
