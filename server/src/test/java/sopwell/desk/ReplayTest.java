package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.log.Entry;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.storage.MemoryLog;

/** The same events give the same stand, and only the open day is read. */
class ReplayTest {
    private final Script script = new Script();
    private final EventLog log = new MemoryLog("test");
    private int kept;

    @Test
    void readsOnlyTheNewestDateAndTheMenuBeforeIt() {
        for (String day : List.of("12", "13", "14")) {
            script.at("2026-01-" + day + "T12:00");
            script.place("beef");
            script.place("2 fries");
        }
        keepAll();
        List<Recorded> read = new ArrayList<>();

        Stand stand = Replay.newestDay(log, Script.SETTINGS, read::add);

        assertEquals(3, read.size(), "the opening and two orders");
        assertEquals(script.log().size(), stand.seq());
        assertEquals(2, stand.orders().all().size());
        assertEquals(script.menu().revision(), stand.menu().revision());
    }

    @Test
    void aDateThatWasOpenedTwiceIsReadFromItsFirstOpening() {
        Order early = script.place("beef");
        script.allUp(early);
        script.must(new OrderCommand.Hand(early.id()));
        script.must(new OrderCommand.CloseDay());
        script.later(600).place("fries");
        keepAll();
        assertEquals(2, Replay.newestDay(log, Script.SETTINGS, e -> {}).orders().all().size());
    }

    @Test
    void anEarlierDayIsThereWholeAndADayWithoutOpeningIsNot() {
        script.place("beef");
        script.at("2026-01-16T12:00").place("fries, cola");
        script.at("2026-01-17T12:00").place("hot dog");
        keepAll();
        Stand friday = Replay.day(log, Script.SETTINGS, LocalDate.of(2026, 1, 16)).orElseThrow();
        assertEquals(1, friday.orders().all().size());
        assertEquals(2, friday.orders().all().iterator().next().lines().size());
        for (String none : List.of("2026-01-13", "2026-01-15", "2026-01-18")) {
            assertTrue(Replay.day(log, Script.SETTINGS, LocalDate.parse(none)).isEmpty(), none);
        }
    }

    @Test
    void anEmptyLogIsAStandOfWhichNothingIsKnown() {
        Stand stand = Replay.newestDay(log, Script.SETTINGS, e -> {});
        assertEquals(0, stand.seq());
        assertTrue(!stand.hasMenu() && stand.orders().date().isEmpty());
    }

    private void keepAll() {
        for (Recorded recorded : script.log().subList(kept, script.log().size())) {
            log.append(
                    List.of(
                            new Entry(
                                    recorded.atMs(),
                                    recorded.key(),
                                    "f",
                                    List.of(recorded.event()))));
        }
        kept = script.log().size();
    }
}
