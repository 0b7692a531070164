package sopwell.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** A business day ends at the next cut hour of its own clock, wherever and whenever it begins. */
class OpeningLaws {
    @Property(tries = 5_000)
    void aDayEndsAtTheNextCutHour(
            @ForAll("days") Zones.When when,
            @ForAll @IntRange(max = 3_000) int minutes,
            @ForAll @IntRange(max = 23) int cutHour) {
        Instant now = when.before().plus(Duration.ofMinutes(minutes));
        ZoneId zone = when.zone();

        OrderEvent.DayOpened opened =
                Days.opening(new Orders(), Zones.at(zone, cutHour), now.toEpochMilli());

        assertEquals(LocalDate.ofInstant(now, zone), opened.date());
        Instant cut = Instant.ofEpochMilli(opened.cutAtMs());
        assertTrue(cut.isAfter(now), () -> "it has a length: " + opened);
        LocalDateTime local = LocalDateTime.ofInstant(cut, zone);
        boolean isCutHour = local.getHour() == cutHour && local.getMinute() == 0;
        boolean isPut = zone.getRules().getTransition(localOf(opened, cutHour)) != null;
        assertTrue(isCutHour || isPut, () -> local + " is the cut hour, or that hour was put");
        for (Instant at = now.plusSeconds(60); at.isBefore(cut); at = at.plusSeconds(3_600)) {
            Instant hour = at.truncatedTo(ChronoUnit.MINUTES);
            assertFalse(isBetween(hour, zone, cutHour, now, cut), () -> hour + " is earlier");
        }
    }

    /** Whether the cut hour of that moment's date lies strictly between two others. */
    private static boolean isBetween(
            Instant at, ZoneId zone, int cutHour, Instant from, Instant to) {
        Instant cut = LocalDate.ofInstant(at, zone).atTime(cutHour, 0).atZone(zone).toInstant();
        return cut.isAfter(from) && cut.isBefore(to);
    }

    private static LocalDateTime localOf(OrderEvent.DayOpened opened, int cutHour) {
        LocalDateTime same = opened.date().atTime(cutHour, 0);
        LocalDateTime next = same.plusDays(1);
        Instant cut = Instant.ofEpochMilli(opened.cutAtMs());
        ZoneId zone = ZoneId.of(opened.zone());
        return same.atZone(zone).toInstant().equals(cut) ? same : next;
    }

    @Provide
    Arbitrary<Zones.When> days() {
        return Zones.days();
    }
}
