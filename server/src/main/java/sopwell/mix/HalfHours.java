package sopwell.mix;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import sopwell.Check;

/**
 * The half hours of a business day by the stand's own clock: 0 is midnight to half past on the
 * day's date, 21 is half past ten in the morning, 48 is the midnight after. When the clock is put
 * back, two half hours share a number; when it is put forward, one has nothing in it. Stateless.
 */
public final class HalfHours {
    /** The end of the last half hour that any part of a day may reach: the next day's noon. */
    public static final int END_MAX = 72;

    private static final int MINUTES = 30;
    private static final int IN_A_DAY = 48;

    private HalfHours() {}

    /**
     * The half hour that an instant falls into, seen from a business day's date; 0 or more. The
     * date after is the next that there was: at the Pacific's date line one was left out.
     */
    public static int of(LocalDate date, ZoneId zone, long atMs) {
        LocalDateTime at = Instant.ofEpochMilli(atMs).atZone(zone).toLocalDateTime();
        LocalDate next = date.plusDays(1).atStartOfDay(zone).toLocalDate();
        long before = at.toLocalDate().isBefore(next) ? 0 : IN_A_DAY;
        LocalDate from = before == 0 ? date : next;
        long minutes = ChronoUnit.MINUTES.between(from.atStartOfDay(), at);
        long half = before + Math.floorDiv(minutes, MINUTES);
        return (int) Math.max(0, Math.min(END_MAX - 1L, half));
    }

    /**
     * When a half hour begins, by the clock.
     *
     * @param halfHour 0 to {@link #END_MAX}
     */
    public static LocalTime begins(int halfHour) {
        Check.that(halfHour >= 0 && halfHour <= END_MAX, "a half hour of a business day");
        return LocalTime.MIDNIGHT.plusMinutes((long) (halfHour % IN_A_DAY) * MINUTES);
    }
}
