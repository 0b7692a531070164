package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;

class HalfHoursTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @Test
    void countsByTheStandsClock() {
        LocalDate day = LocalDate.of(2026, 1, 7);
        assertEquals(21, at(day, "2026-01-07T10:30:00-06:00"));
        assertEquals(20, at(day, "2026-01-07T10:29:59-06:00"));
        assertEquals(49, at(day, "2026-01-08T00:45:00-06:00"), "past midnight");
        assertEquals(LocalTime.of(10, 30), HalfHours.begins(21));
        assertEquals(LocalTime.of(0, 30), HalfHours.begins(49));
    }

    /** The clocks of 8 March and 1 November 2026 there: 23 and 25 hours. */
    @Test
    void dinnerIsAtSixAlsoWhenTheClockWasSet() {
        assertEquals(36, at(LocalDate.of(2026, 3, 8), "2026-03-08T18:00:00-05:00"));
        assertEquals(36, at(LocalDate.of(2026, 11, 1), "2026-11-01T18:00:00-06:00"));
        assertEquals(3, at(LocalDate.of(2026, 11, 1), "2026-11-01T01:30:00-05:00"));
        assertEquals(3, at(LocalDate.of(2026, 11, 1), "2026-11-01T01:30:00-06:00"));
    }

    /** Samoa went from 29 to 31 December 2011 (IANA time zone database). */
    @Test
    void theDateAfterIsTheNextThatThereWas() {
        ZoneId apia = ZoneId.of("Pacific/Apia");
        long night = ZonedDateTime.parse("2011-12-31T01:30:00+14:00").toInstant().toEpochMilli();
        assertEquals(51, HalfHours.of(LocalDate.of(2011, 12, 29), apia, night));
        assertEquals(3, HalfHours.of(LocalDate.of(2011, 12, 31), apia, night));
    }

    @Test
    void aClockGoneWrongStaysWithinTheDay() {
        LocalDate day = LocalDate.of(2026, 1, 7);
        assertEquals(0, at(day, "2026-01-06T23:00:00-06:00"));
        assertEquals(HalfHours.END_MAX - 1, at(day, "2026-01-19T23:00:00-06:00"));
    }

    private static int at(LocalDate day, String when) {
        return HalfHours.of(day, CHICAGO, ZonedDateTime.parse(when).toInstant().toEpochMilli());
    }
}
