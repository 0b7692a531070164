package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Kept;
import sopwell.log.KeyTaken;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent;

/** What every event log keeps to, whatever it writes to. */
abstract class EventLogContract {
    /** A log without events. */
    abstract EventLog log();

    /** The same log after the server was stopped and started; the same object if it can't be. */
    abstract EventLog again();

    @Test
    void isEmptyAtFirst() {
        assertEquals(0, log().lastSeq());
        assertEquals(List.of(), all(log()));
        assertEquals(Optional.empty(), log().find("key-1"));
    }

    @Test
    void numbersEventsFromOneWithoutGaps() {
        List<Recorded> first = log().append(List.of(Samples.entry(1, handed(1), handed(2))));
        List<Recorded> second = log().append(Samples.entries(2, 100));
        List<Recorded> expected = new ArrayList<>(first);
        expected.addAll(second);
        for (int n = 0; n < expected.size(); n++) {
            assertEquals(n + 1, expected.get(n).seq());
        }
        assertEquals(102, log().lastSeq());
        assertEquals(expected, all(log()));
        assertEquals(expected, all(again()));
    }

    @Test
    void recordsWhatACommandWasCalledAndWhenAndInWhatOrder() {
        Entry entry = Samples.entry(5, handed(1), handed(2), handed(3));
        List<Recorded> recorded = log().append(List.of(entry));
        for (int n = 0; n < 3; n++) {
            Recorded expected = new Recorded(n + 1, entry.atMs(), "key-5", n, handed(n + 1));
            assertEquals(expected, recorded.get(n));
        }
        assertEquals(recorded, all(again()));
    }

    @Test
    void keepsEveryKindOfEvent() {
        List<Event> events =
                Samples.oneOfEach().stream()
                        .filter(e -> EventCodec.name(e) != EventName.MENU_ADOPTED)
                        .filter(e -> EventCodec.name(e) != EventName.NAMES_ERASED)
                        .toList();
        log().append(List.of(Samples.entry(1, events.toArray(new Event[0]))));
        assertEquals(events, all(again()).stream().map(Recorded::event).toList());
    }

    @Test
    void writesNothingWhenAKeyAmongManyIsTaken() {
        List<Recorded> before = log().append(Samples.entries(1, 3));
        List<Entry> mixed = new ArrayList<>(Samples.entries(10, 40));
        mixed.add(20, Samples.entry(2, handed(9)));
        KeyTaken taken = assertThrows(KeyTaken.class, () -> log().append(mixed));
        assertEquals("key-2", taken.key());
        assertEquals(3, log().lastSeq());
        assertEquals(before, all(log()));
        assertEquals(Optional.empty(), log().find("key-10"));
        assertEquals(4, log().append(Samples.entries(10, 1)).get(0).seq());
        assertEquals(4, again().lastSeq());
    }

    @Test
    void refusesOneKeyTwiceInOneAppend() {
        List<Entry> twice = List.of(Samples.entry(1, handed(1)), Samples.entry(1, handed(2)));
        assertEquals("key-1", assertThrows(KeyTaken.class, () -> log().append(twice)).key());
        assertEquals(0, log().lastSeq());
    }

    @Test
    void findsACommandByItsKeyLongAfter() {
        log().append(Samples.entries(1, 5));
        List<Recorded> three =
                log().append(List.of(Samples.entry(6, handed(1), handed(2), handed(3))));
        log().append(Samples.entries(7, 5));
        Kept expected = new Kept("fingerprint-6", three);
        assertEquals(Optional.of(expected), log().find("key-6"));
        EventLog again = again();
        assertEquals(Optional.of(expected), again.find("key-6"));
        assertEquals("fingerprint-11", again.find("key-11").orElseThrow().fingerprint());
        assertEquals(1, again.find("key-11").orElseThrow().events().size());
        assertEquals(Optional.empty(), again.find("key-12"));
        assertThrows(KeyTaken.class, () -> again.append(Samples.entries(6, 1)));
    }

    @Test
    void goesOnWhereItEnded() {
        log().append(Samples.entries(1, 70));
        EventLog again = again();
        assertEquals(70, again.lastSeq());
        assertEquals(71, again.append(Samples.entries(71, 1)).get(0).seq());
        assertEquals(71, all(again).size());
    }

    @Test
    void keepsItsEpoch() {
        String epoch = log().epoch();
        assertTrue(epoch.length() >= 4, epoch);
        assertEquals(epoch, again().epoch());
    }

    @Test
    void handsOnExactlyTheRangeThatIsAskedFor() {
        List<Recorded> events = log().append(List.of(Samples.entry(1, handed(1), handed(2))));
        events = new ArrayList<>(events);
        events.addAll(log().append(Samples.entries(2, 2_100)));
        EventLog again = again();
        long[][] ranges = {
            {1, 1}, {2, 2}, {2, 5}, {0, 3}, {-7, 1}, {1_000, 1_003}, {999, 2_001}, {2_102, 2_102}
        };
        for (long[] range : ranges) {
            List<Recorded> expected =
                    events.subList((int) Math.max(range[0], 1) - 1, (int) range[1]);
            assertEquals(expected, range(again, range[0], range[1]));
        }
        assertEquals(events, range(again, 1, Long.MAX_VALUE));
        assertEquals(List.of(), range(again, 2_103, Long.MAX_VALUE));
        assertEquals(List.of(), range(again, 7, 6));
    }

    @Test
    void lookingThingsUpWhileReadingIsNoTrouble() {
        log().append(Samples.entries(1, 30));
        int[] found = new int[1];
        log().read(1, 30, r -> found[0] += log().find(r.key()).orElseThrow().events().size());
        assertEquals(30, found[0]);
    }

    @Test
    void knowsTheNewestEventOfAType() {
        Event opened =
                Samples.oneOfEach().stream()
                        .filter(OrderEvent.DayOpened.class::isInstance)
                        .findFirst()
                        .orElseThrow();
        log().append(List.of(Samples.entry(1, opened, handed(1))));
        log().append(List.of(Samples.entry(2, opened, handed(2))));
        EventLog log = again();
        Class<? extends Event> day = OrderEvent.DayOpened.class;
        assertEquals(OptionalLong.of(3), log.lastOf(day, 4));
        assertEquals(OptionalLong.of(3), log.lastOf(day, 3));
        assertEquals(OptionalLong.of(1), log.lastOf(day, 2));
        assertEquals(OptionalLong.empty(), log.lastOf(day, 0));
        assertEquals(OptionalLong.of(4), log.lastOf(OrderEvent.OrderHanded.class, 99));
        assertEquals(OptionalLong.empty(), log.lastOf(OrderEvent.DayClosed.class, 99));
        assertEquals(List.of(1L, 3L), log.placesOf(day));
        assertEquals(List.of(), log.placesOf(OrderEvent.DayClosed.class));
    }

    @Test
    void neverDatesAnEventBeforeItsPredecessor() {
        log().append(List.of(new Entry(5_000, "a", "", List.of(handed(1)))));
        EventLog again = again();
        List<Recorded> back =
                again.append(
                        List.of(
                                new Entry(3_000, "b", "", List.of(handed(2))),
                                new Entry(6_000, "c", "", List.of(handed(3))),
                                new Entry(5_500, "d", "", List.of(handed(4)))));
        assertEquals(List.of(5_000L, 6_000L, 6_000L), back.stream().map(Recorded::atMs).toList());
        assertEquals(back, range(again, 2, 4));
    }

    @Test
    void keepsVeryLongTexts() {
        OrderEvent.OrderPlaced placed = Samples.placed(1, "ñ\uD83C\uDF36".repeat(10_000));
        log().append(List.of(Samples.entry(1, placed)));
        assertEquals(placed, all(again()).get(0).event());
    }

    @Test
    void keepsNothingOfAnAppendWithACommandThatDidNothing() {
        List<Entry> hollow = List.of(Samples.entry(1, handed(1)), Samples.entry(2));
        assertThrows(Check.Broken.class, () -> log().append(hollow));
        assertEquals(0, again().lastSeq());
    }

    static OrderEvent.OrderHanded handed(int n) {
        return new OrderEvent.OrderHanded(Samples.order(n));
    }

    static List<Recorded> all(EventLog log) {
        return range(log, 1, log.lastSeq());
    }

    static List<Recorded> range(EventLog log, long from, long to) {
        List<Recorded> read = new ArrayList<>();
        log.read(from, to, read::add);
        return read;
    }
}
