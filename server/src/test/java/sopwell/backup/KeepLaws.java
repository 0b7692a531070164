package sopwell.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;
import sopwell.storage.BackupRule;

/** What is kept of whatever backups there are, and when the next is due, in zones that jump. */
class KeepLaws {
    private static final Instant FROM = Instant.parse("2025-12-20T00:00:00Z");
    private static final int DAYS = 14;
    private static final int WEEKS = 8;
    private static final BackupRule RULE = new BackupRule("", 4, DAYS, WEEKS);

    @Property(tries = 400)
    void theNewestIsAlwaysKeptAndNothingThatWasNotThere(
            @ForAll("made") List<Instant> all, @ForAll("zones") ZoneId zone) {
        Set<Instant> kept = KeepRule.kept(all, RULE, zone);
        assertTrue(all.containsAll(kept));
        assertTrue(kept.contains(newest(all)));
        assertTrue(kept.size() <= DAYS + WEEKS, () -> kept.size() + " are kept");
    }

    @Property(tries = 400)
    void theLastOfEachOfTheNewestDaysAndWeeksIsKeptAndNoOther(
            @ForAll("made") List<Instant> all, @ForAll("zones") ZoneId zone) {
        Set<Instant> wanted = new HashSet<>();
        wanted.addAll(lasts(all, at -> LocalDate.ofInstant(at, zone), DAYS));
        wanted.addAll(lasts(all, at -> monday(at, zone), WEEKS));
        assertEquals(wanted, KeepRule.kept(all, RULE, zone));
    }

    @Property(tries = 200)
    void whatIsKeptIsKeptAgain(@ForAll("made") List<Instant> all, @ForAll("zones") ZoneId zone) {
        Set<Instant> kept = KeepRule.kept(all, RULE, zone);
        assertEquals(kept, KeepRule.kept(List.copyOf(kept), RULE, zone));
    }

    /** Two backups a day and pruning after each: what a stand does over months with gaps. */
    @Property(tries = 50)
    void aStandThatPrunesEachDayLacksNoneOfItsNewestDaysAndWeeks(
            @ForAll("zones") ZoneId zone, @ForAll("openDays") List<Boolean> open) {
        List<Instant> there = new ArrayList<>();
        List<Instant> ever = new ArrayList<>();
        for (int day = 0; day < open.size(); day++) {
            if (open.get(day)) {
                for (int half = 0; half < 2; half++) {
                    Instant at = FROM.plus(Duration.ofHours(day * 24L + half * 11L));
                    ever.add(at);
                    there.add(at);
                    there.retainAll(KeepRule.kept(there, RULE, zone));
                }
            }
        }
        if (!ever.isEmpty()) {
            assertEquals(KeepRule.kept(ever, RULE, zone), Set.copyOf(there));
        }
    }

    @Property(tries = 1_000)
    void theNextTimeItIsDueIsTheOnlyOneUntilThen(
            @ForAll("moments") Instant now,
            @ForAll("zones") ZoneId zone,
            @ForAll @IntRange(max = 23) int hour) {
        Instant last = Due.last(now, hour, zone);
        Instant next = Due.next(now, hour, zone);
        assertFalse(last.isAfter(now));
        assertTrue(next.isAfter(now));
        assertEquals(last, Due.last(next.minusMillis(1), hour, zone), "none between the two");
        long hours = Duration.between(last, next).toHours();
        assertTrue(hours >= 22 && hours <= 48, () -> last + " to " + next);
    }

    @Provide
    Arbitrary<ZoneId> zones() {
        return Arbitraries.of(
                        "America/Chicago",
                        "America/New_York",
                        "America/Santiago",
                        "Australia/Lord_Howe",
                        "Asia/Kathmandu",
                        "Pacific/Apia",
                        "Africa/Casablanca",
                        "UTC")
                .map(ZoneId::of);
    }

    /** Around the clock changes of two years, with gaps of hours to weeks. */
    @Provide
    Arbitrary<List<Instant>> made() {
        Arbitrary<Long> gap =
                Arbitraries.frequencyOf(
                        Tuple.of(6, Arbitraries.longs().between(1, 60 * 26)),
                        Tuple.of(1, Arbitraries.longs().between(1, 60 * 24 * 40)));
        Arbitrary<List<Long>> gaps = gap.list().ofMinSize(1).ofMaxSize(120);
        return Combinators.combine(moments(), gaps)
                .as(
                        (from, minutes) -> {
                            Set<Instant> all = new TreeSet<>();
                            Instant at = from.truncatedTo(ChronoUnit.SECONDS);
                            for (long step : minutes) {
                                at = at.plus(Duration.ofMinutes(step));
                                all.add(at);
                            }
                            return List.copyOf(all);
                        });
    }

    @Provide
    Arbitrary<Instant> moments() {
        long year = Duration.ofDays(366).toSeconds();
        return Arbitraries.longs().between(0, 2 * year).map(FROM::plusSeconds);
    }

    @Provide
    Arbitrary<List<Boolean>> openDays() {
        return Arbitraries.of(true, true, true, false).list().ofSize(130);
    }

    /** Said another way than the rule itself says it: by sorting into piles. */
    private static Set<Instant> lasts(
            List<Instant> all, Function<Instant, LocalDate> span, int spansMax) {
        return all.stream().collect(Collectors.groupingBy(span)).entrySet().stream()
                .sorted((a, b) -> b.getKey().compareTo(a.getKey()))
                .limit(spansMax)
                .map(pile -> newest(pile.getValue()))
                .collect(Collectors.toSet());
    }

    private static LocalDate monday(Instant at, ZoneId zone) {
        return LocalDate.ofInstant(at, zone)
                .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    private static Instant newest(List<Instant> all) {
        return all.stream().max(Comparator.naturalOrder()).orElseThrow();
    }
}
