package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.Out;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OutCommand;

/** When something was out, and what was likely missed by it. */
class OutTimeTest {
    private static final ZoneId ZONE = Script.SETTINGS.zone();

    private final Script script = new Script();

    @Test
    void aMarkLastsUntilItIsLiftedOrItsTimeIsOver() {
        script.place("beef");
        long noon = script.nowMs();
        script.must(new OutCommand.Mark(Out.item("fries"), 0, 0));
        script.must(new OutCommand.Mark(Out.option("hot"), 0, 10));
        script.later(1_200).must(new OutCommand.Lift(Out.item("fries")));
        script.later(60).must(new OutCommand.LiftDue());
        script.must(new OutCommand.Mark(Out.item("fries"), 0, 0));
        script.later(60);
        script.place("beef");
        assertEquals(
                List.of(
                        new OutTime(Out.item("fries"), noon, noon + 1_200_000, false, 0),
                        new OutTime(Out.option("hot"), noon, noon + 600_000, false, 0),
                        new OutTime(
                                Out.item("fries"), noon + 1_260_000, noon + 1_320_000, true, 0)),
                times());
    }

    @Test
    void whatIsCountedDownIsOutFromTheLastPieceOn() {
        script.must(new OutCommand.Mark(Out.item("fries"), 2, 0));
        script.later(100);
        assertEquals(List.of(), times());
        Order last = script.place("2 fries");
        script.allUp(last);
        script.must(new OrderCommand.Hand(last.id()));
        long gone = script.nowMs();
        script.later(300).must(new OrderCommand.CloseDay());
        assertEquals(
                List.of(new OutTime(Out.item("fries"), gone, gone + 300_000, false, 0)), times());
    }

    @Test
    void whatWasMissedIsWhatTheSameHalfHoursUsuallySell() {
        // Out for fifteen minutes of one half hour and all of the next: half of the first counts.
        LocalDate date = LocalDate.of(2026, 1, 14);
        long from = date.atTime(12, 15).atZone(ZONE).toInstant().toEpochMilli();
        OutTime fries = new OutTime(Out.item("fries"), from, from + 45 * 60_000, false, 1);
        List<DayTally> before = List.of(day(7, 8, 20), day(14, 12, 10));
        OutTime.Usual usual = fries.usual(date, ZONE, before).orElseThrow();
        assertEquals(2, usual.days());
        assertEquals((8 / 2.0 + 20 + 12 / 2.0 + 10) / 2, usual.pieces(), 1e-9);
        assertEquals(19, usual.missed(fries), 1e-9);
        OutTime hot = new OutTime(Out.option("hot"), from, from + 15 * 60_000, false, 0);
        assertEquals(5.0, hot.usual(date, ZONE, before).orElseThrow().pieces(), 1e-9);
        OutTime large = new OutTime(Out.size("beef", "large"), from, from + 60_000, false, 0);
        assertEquals(0, large.usual(date, ZONE, before).orElseThrow().missed(large), 1e-9);
        assertEquals(Optional.empty(), fries.usual(date, ZONE, List.of()));
        assertEquals(0, new OutTime.Usual(3, 1).missed(new OutTime(fries.out(), 0, 1, false, 9)));
    }

    /** A day so many days before, with fries at noon and at half past, and ten beef with hot. */
    private static DayTally day(int daysBefore, int noon, int later) {
        Sold beef = new Sold("beef", "regular", List.of("peppers=hot+sweet"), false, 10, 100);
        return new DayTally(
                LocalDate.of(2026, 1, 14).minusDays(daysBefore),
                List.of(
                        new HalfHour(24, Counts.NONE, List.of(fries(noon), beef)),
                        new HalfHour(25, Counts.NONE, List.of(fries(later))),
                        new HalfHour(26, Counts.NONE, List.of(fries(99)))));
    }

    private static Sold fries(int pieces) {
        return new Sold("fries", "", List.of(), false, pieces, 100);
    }

    private List<OutTime> times() {
        return OutTime.of(script.stand().outSpans(), script.stand().orders(), script.nowMs());
    }
}
