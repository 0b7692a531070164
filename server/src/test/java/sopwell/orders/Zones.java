package sopwell.orders;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import sopwell.desk.Script;

/**
 * Places and dates where a day is not 24 hours long, by the IANA time zone database as Java 17 has
 * it, and any others. Stateless.
 */
public final class Zones {
    /** New York loses an hour, and gains one. */
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

    /** The days that are known to be odd. */
    private static final List<When> ODD =
            List.of(
                    new When(NEW_YORK, LocalDate.of(2026, 3, 8)),
                    new When(NEW_YORK, LocalDate.of(2026, 11, 1)),
                    // The day begins at one in the morning.
                    new When(ZoneId.of("America/Santiago"), LocalDate.of(2026, 9, 6)),
                    // Half an hour, put back and forward.
                    new When(ZoneId.of("Australia/Lord_Howe"), LocalDate.of(2026, 4, 5)),
                    new When(ZoneId.of("Australia/Lord_Howe"), LocalDate.of(2026, 10, 4)),
                    // Five hours and three quarters ahead.
                    new When(ZoneId.of("Asia/Kathmandu"), LocalDate.of(2026, 6, 1)),
                    // A date that never was.
                    new When(ZoneId.of("Pacific/Apia"), LocalDate.of(2011, 12, 30)));

    private Zones() {}

    /** A place and a date. */
    public record When(ZoneId zone, LocalDate date) {
        /** Noon of the day before, as far as there is one. */
        public Instant before() {
            return date.minusDays(1).atTime(12, 0).atZone(zone).toInstant();
        }
    }

    /** Odd days more often than others. */
    public static Arbitrary<When> days() {
        long first = LocalDate.of(2005, 1, 1).toEpochDay();
        List<ZoneId> zones =
                ZoneId.getAvailableZoneIds().stream()
                        .filter(id -> id.contains("/") && !id.startsWith("Etc/"))
                        .sorted()
                        .map(ZoneId::of)
                        .toList();
        Arbitrary<When> any =
                Combinators.combine(
                                Arbitraries.of(zones),
                                Arbitraries.longs().between(first, first + 12_000))
                        .as((zone, day) -> new When(zone, LocalDate.ofEpochDay(day)));
        // Days on which some place puts its clock.
        Arbitrary<When> changing =
                any.map(
                        when -> {
                            Instant from = when.date().atStartOfDay().toInstant(ZoneOffset.UTC);
                            var change = when.zone().getRules().nextTransition(from);
                            return change == null
                                    ? when
                                    : new When(
                                            when.zone(),
                                            LocalDate.ofInstant(change.getInstant(), when.zone()));
                        });
        return Arbitraries.oneOf(Arbitraries.of(ODD), Arbitraries.of(ODD), changing, any);
    }

    /** The demo's settings, elsewhere. */
    public static StandSettings at(ZoneId zone, int cutHour) {
        StandSettings s = Script.SETTINGS;
        return new StandSettings(
                s.stand(),
                s.name(),
                zone,
                cutHour,
                s.tax(),
                s.targetSeconds(),
                s.numberMax(),
                s.cash(),
                s.safety());
    }
}
