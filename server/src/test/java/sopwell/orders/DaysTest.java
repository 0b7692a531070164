package sopwell.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.Out;
import sopwell.orders.OrderEvent.DayClosed;
import sopwell.orders.OrderEvent.DayOpened;

/** When business days begin and end, and what that does to numbers. */
class DaysTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);

    private final Script script = new Script();

    @Test
    void theFirstOrderOpensTheDay() {
        assertFalse(script.stand().orders().isDayOpen());
        script.place("beef");
        assertTrue(script.stand().orders().isDayOpen());
        assertEquals(LocalDate.of(2026, 1, 14), script.stand().orders().date().orElseThrow());
    }

    @Test
    void numbersRestartTheNextDay() {
        script.place("beef");
        script.place("beef");
        script.at("2026-01-15T11:00");

        Order first = script.place("fries");

        assertEquals(1, first.number());
        assertEquals("20260115-0001", first.id());
        assertEquals(1, script.stand().orders().all().size());
    }

    @Test
    void aDayNobodyClosedIsClosedAtTheCutHourAndSaysWhatWasLeft() {
        Order left = script.place("beef");
        script.at("2026-01-15T03:59").must(new OrderCommand.CutDay());
        assertTrue(script.stand().orders().isDayOpen(), "before the cut hour nothing happens");

        script.at("2026-01-15T04:00").must(new OrderCommand.CutDay());

        assertFalse(script.stand().orders().isDayOpen());
        DayClosed closed = (DayClosed) script.log().get(script.log().size() - 1).event();
        assertTrue(closed.byCut());
        assertEquals(List.of(left.id()), closed.leftOpen());
        assertTrue(script.stand().kitchen().inSight("line").isEmpty());
        assertEquals(Reason.DAY_CLOSED, reason(script.decide(new OrderCommand.Hand(left.id()))));
    }

    @Test
    void anOrderAfterTheCutHourClosesTheOldDayFirst() {
        script.place("beef");
        script.at("2026-01-15T11:00").place("beef");

        List<Class<?>> kinds =
                script.log().stream()
                        .<Class<?>>map(recorded -> recorded.event().getClass())
                        .toList();
        assertEquals(
                List.of(DayClosed.class, DayOpened.class, OrderEvent.OrderPlaced.class),
                kinds.subList(kinds.size() - 3, kinds.size()));
    }

    @Test
    void aDayIsNotClosedByHandWhileGuestsWait() {
        Order order = script.place("beef");
        assertEquals(
                Refusal.of(Reason.ORDERS_OPEN, "1"),
                script.decide(new OrderCommand.CloseDay()).refusal().orElseThrow());
        script.allUp(order);
        script.must(new OrderCommand.Hand(order.id()));
        script.must(new OrderCommand.CloseDay());
        assertEquals(Reason.NO_DAY_OPEN, reason(script.decide(new OrderCommand.CloseDay())));
    }

    @Test
    void aDateThatWasClosedTooEarlyGoesOnWhereItStopped() {
        Order first = script.place("beef");
        script.allUp(first);
        script.must(new OrderCommand.Hand(first.id()));
        script.must(new OrderCommand.CloseDay());

        Order second = script.later(600).place("beef");

        assertEquals(2, second.number());
        assertEquals("20260114-0002", second.id());
        assertEquals(
                List.of(new Orders.Reopening(script.nowMs(), "after-close")),
                script.stand().orders().reopenings(),
                "nobody said why, but that it went on is kept");
        assertEquals(2, script.stand().orders().all().size());
    }

    @Test
    void whateverOpensAClosedDayAgainLeavesATrace() {
        closed();
        script.later(60).must(new OrderCommand.OpenDay());
        script.must(new OrderCommand.CloseDay());
        script.later(60).must(new OutCommand.Mark(Out.item("fries"), 0, 0));
        assertEquals(2, script.stand().orders().reopenings().size());
        script.must(new OrderCommand.CloseDay());
        script.at("2026-01-15T11:00").place("beef");
        assertTrue(script.stand().orders().reopenings().isEmpty(), "the next day is a new one");
    }

    @Test
    void aDateThatTheCutHourClosedOpensWithoutATrace() {
        script.at("2026-01-14T02:00").place("beef");
        script.at("2026-01-14T04:00").must(new OrderCommand.CutDay());
        script.at("2026-01-14T11:00").place("beef");
        assertEquals(2, script.stand().orders().all().size(), "the same date");
        assertTrue(script.stand().orders().reopenings().isEmpty());
    }

    private void closed() {
        Order first = script.place("beef");
        script.allUp(first);
        script.must(new OrderCommand.Hand(first.id()));
        script.must(new OrderCommand.CloseDay());
    }

    @Test
    void aReopenedDayGoesOnWhereItStoppedAndSaysWhy() {
        closed();
        long cutAtMs = script.stand().orders().cutAtMs();
        assertTrue(script.stand().orders().reopenings().isEmpty());
        script.later(600).must(new OrderCommand.ReopenDay(Optional.of(FIRST), "a party came late"));
        assertTrue(script.stand().orders().isDayOpen());
        assertEquals(cutAtMs, script.stand().orders().cutAtMs(), "the day's own cut hour holds");
        assertEquals(
                List.of(new Orders.Reopening(script.nowMs(), "a party came late")),
                script.stand().orders().reopenings());
        Order second = script.place("fries");
        assertEquals("20260114-0002", second.id());
        script.allUp(second);
        script.must(new OrderCommand.Hand(second.id()));
        script.must(new OrderCommand.CloseDay());
        assertEquals(2, script.stand().orders().all().size(), "one day, counted once");
    }

    @Test
    void aDayReopenedAfterMidnightKeepsItsDate() {
        closed();
        script.at("2026-01-15T01:00")
                .must(new OrderCommand.ReopenDay(Optional.of(FIRST), "counted wrongly"));
        assertEquals(FIRST, script.stand().orders().date().orElseThrow());
        assertEquals("20260114-0002", script.place("beef").id());
    }

    @Test
    void onlyTheNewestDayIsReopenedAndOnlyWhileItLasts() {
        assertEquals(Reason.NOT_NEWEST_DAY, reopening(FIRST, "why not"), "nothing was ever closed");
        closed();
        assertEquals(Reason.NOT_NEWEST_DAY, reopening(FIRST.minusDays(1), "why not"));
        script.must(new OrderCommand.ReopenDay(Optional.empty(), "whichever is newest"));
        assertEquals(FIRST, script.stand().orders().date().orElseThrow());
        script.must(new OrderCommand.CloseDay());
        assertEquals(Reason.REASON_MISSING, reopening(FIRST, " "));
        script.at("2026-01-15T03:59");
        script.must(new OrderCommand.ReopenDay(Optional.of(FIRST), "just in time"));
        script.must(new OrderCommand.CloseDay());
        script.at("2026-01-15T04:00");
        assertEquals(Reason.DAY_CUT, reopening(FIRST, "too late"));
        script.place("beef");
        assertEquals(Reason.DAY_OPEN, reopening(FIRST, "a new day has begun"));
    }

    private Reason reopening(LocalDate date, String reason) {
        return reason(script.decide(new OrderCommand.ReopenDay(Optional.of(date), reason)));
    }

    @Test
    void theCutHourHoldsOnDaysOfTwentyThreeAndTwentyFiveHours() {
        // America/Chicago, 2026: clocks go forward on 8 March and back on 1 November, the second
        // Sunday of March and the first of November (IANA time zone database).
        assertEquals(Duration.ofHours(15), untilCut("2026-03-07T12:00"));
        assertEquals(Duration.ofHours(16), untilCut("2026-03-14T12:00"));
        assertEquals(Duration.ofHours(17), untilCut("2026-10-31T12:00"));
    }

    @Test
    void aDayOpenedBeforeTheCutHourIsCutTheSameMorning() {
        assertEquals(Duration.ofMinutes(150), untilCut("2026-01-14T01:30"));
        assertEquals(Duration.ofHours(24), untilCut("2026-01-14T04:00"));
    }

    @Test
    void datesDoNotGoBackWhenTheZoneMovesWest() {
        Orders orders = script.at("2026-01-15T00:30").stand().orders();
        closed();
        StandSettings west = Zones.at(ZoneId.of("America/Los_Angeles"), Script.SETTINGS.cutHour());

        // There it is still the evening of the 14th, whose orders were another day's.
        Slot next = Slot.next(orders, west, script.nowMs());

        DayOpened opened = (DayOpened) next.before().get(0);
        assertEquals(FIRST.plusDays(1), opened.date());
        assertEquals("America/Los_Angeles", opened.zone());
        assertEquals("20260115-0002", next.order(), "no id is given twice");
        assertEquals(Optional.of(2), next.number());
        assertTrue(opened.cutAtMs() > script.nowMs());
    }

    @Test
    void aCutDayGoesOnToItsOwnDateWhenTheZoneMovesWest() {
        script.at("2026-01-14T23:30").place("beef");
        script.at("2026-01-15T04:30").place("beef");
        Orders orders = script.stand().orders();
        StandSettings west = Zones.at(ZoneId.of("Pacific/Pago_Pago"), Script.SETTINGS.cutHour());
        script.later((int) Duration.ofHours(24).toSeconds());

        // Past the cut of the 15th, in a zone where it is still the evening of that date.
        Slot next = Slot.next(orders, west, script.nowMs());

        assertEquals(DayClosed.class, next.before().get(0).getClass());
        assertEquals(FIRST.plusDays(1), ((DayOpened) next.before().get(1)).date());
        assertEquals("20260115-0002", next.order());
    }

    private static Duration untilCut(String local) {
        Script day = new Script().at(local);
        day.must(new OrderCommand.OpenDay());
        return Duration.between(
                Instant.ofEpochMilli(day.nowMs()),
                Instant.ofEpochMilli(day.stand().orders().cutAtMs()));
    }
}
