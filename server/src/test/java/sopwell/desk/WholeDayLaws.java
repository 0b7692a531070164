package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import sopwell.log.Recorded;
import sopwell.mix.DayTally;
import sopwell.orders.Asked;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.StandSettings;
import sopwell.orders.Zones;
import sopwell.storage.MemoryLog;

/** Over days of 23 hours, of 25 and any others, every order is counted in one day, at its hour. */
class WholeDayLaws {
    private static final List<Asked> FRIES = new Script().asked("fries");

    /** A half hour is counted by itself up to the noon after. */
    private static final int NOON = 12;

    private long nowMs;

    /** An order as the log has it, in the business day that was open. */
    private record Placed(LocalDate day, long opensMs, long cutMs, long atMs, String id) {}

    @Property(tries = 150, edgeCases = EdgeCasesMode.NONE)
    void everyOrderIsInOneDayAndInItsHalfHour(
            @ForAll("days") Zones.When when,
            @ForAll @IntRange(max = NOON) int cutHour,
            @ForAll("gaps") List<Integer> gapMinutes) {
        StandSettings settings = Zones.at(when.zone(), cutHour);
        MemoryLog log = new MemoryLog("millrace");
        nowMs = when.before().toEpochMilli();
        SteppedDesk desk = new SteppedDesk(log, settings, () -> Instant.ofEpochMilli(nowMs));
        run(desk, 0, new StandCommand.AdoptMenu(Script.demoMenu()));
        for (int order = 0; order < gapMinutes.size(); order++) {
            place(desk, order);
            nowMs += Duration.ofMinutes(gapMinutes.get(order)).toMillis();
        }
        // One more, long after: a day is counted once another has followed.
        nowMs += Duration.ofDays(4).toMillis();
        place(desk, gapMinutes.size());

        List<Placed> placed = placed(log);
        assertEquals(gapMinutes.size() + 1, placed.size());
        assertEquals(placed.size(), placed.stream().map(Placed::id).distinct().count());
        LocalDate before = LocalDate.MIN;
        for (Placed one : placed) {
            assertTrue(one.atMs() >= one.opensMs() && one.atMs() < one.cutMs(), one::toString);
            assertTrue(!one.day().isBefore(before), "dates don't go back: " + one);
            before = one.day();
        }
        List<Placed> past = placed.subList(0, placed.size() - 1);
        DayBook book = new DayBook(log, settings, MemoryShelf.shelves());
        List<DayTally> days = book.days(past.get(0).day(), before);
        assertEquals(counted(past, settings), shown(days), "day and half hour");
    }

    /** By the clock on the wall: the hour as it reads, on the day's date or the one after. */
    private static Map<String, Integer> counted(List<Placed> placed, StandSettings settings) {
        Map<String, Integer> counts = new TreeMap<>();
        for (Placed one : placed) {
            ZonedDateTime wall = Instant.ofEpochMilli(one.atMs()).atZone(settings.zone());
            int dates = wall.toLocalDate().equals(one.day()) ? 0 : 1;
            int half = dates * 48 + wall.getHour() * 2 + (wall.getMinute() >= 30 ? 1 : 0);
            counts.merge(one.day() + " " + half, 1, Integer::sum);
        }
        return counts;
    }

    private static Map<String, Integer> shown(List<DayTally> days) {
        Map<String, Integer> counts = new TreeMap<>();
        for (DayTally day : days) {
            for (DayTally.HalfHour half : day.halfHours()) {
                counts.put(day.date() + " " + half.index(), half.counts().orders());
            }
        }
        return counts;
    }

    private static List<Placed> placed(MemoryLog log) {
        List<Placed> placed = new ArrayList<>();
        List<Recorded> all = new ArrayList<>();
        log.read(1, log.lastSeq(), all::add);
        Optional<DayOpened> day = Optional.empty();
        long opensMs = 0;
        for (Recorded one : all) {
            if (one.event() instanceof DayOpened opened) {
                day = Optional.of(opened);
                opensMs = one.atMs();
            } else if (one.event() instanceof OrderPlaced order) {
                DayOpened open = day.orElseThrow();
                placed.add(
                        new Placed(
                                open.date(), opensMs, open.cutAtMs(), one.atMs(), order.order()));
            }
        }
        return placed;
    }

    private void place(SteppedDesk desk, int order) {
        StandCommand place = new StandCommand.ForOrders(new OrderCommand.Place("", true, FRIES));
        run(desk, order + 1, place);
    }

    private static void run(SteppedDesk desk, int number, StandCommand command) {
        String key = "k" + number;
        Answer answer = desk.run(List.of(new SteppedDesk.Asking(key, key, command))).get(0).join();
        assertTrue(answer.refusal().isEmpty(), () -> "refused: " + answer.refusal());
    }

    @Provide
    Arbitrary<Zones.When> days() {
        return Zones.days();
    }

    @Provide
    Arbitrary<List<Integer>> gaps() {
        return Arbitraries.integers().between(1, 150).list().ofMinSize(1).ofMaxSize(40);
    }
}
