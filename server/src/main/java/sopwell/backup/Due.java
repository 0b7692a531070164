package sopwell.backup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** When the day's backup is due: at an hour of the stand's own clock. Stateless. */
final class Due {
    private Due() {}

    /** The newest time that it was due, now at the latest. */
    static Instant last(Instant now, int hour, ZoneId zone) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        Instant due = at(today, hour, zone);
        return due.isAfter(now) ? at(today.minusDays(1), hour, zone) : due;
    }

    /** The next time that it is due. */
    static Instant next(Instant now, int hour, ZoneId zone) {
        LocalDate today = LocalDate.ofInstant(now, zone);
        Instant due = at(today, hour, zone);
        return due.isAfter(now) ? due : at(today.plusDays(1), hour, zone);
    }

    private static Instant at(LocalDate date, int hour, ZoneId zone) {
        return date.atTime(LocalTime.of(hour, 0)).atZone(zone).toInstant();
    }
}
