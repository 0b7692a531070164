package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.storage.MenuReader;
import sopwell.storage.MenuWriter;

/** What is begun when, on the demo's menu: 2 hands on the line, 2 baskets of 4, 2 zones of 6. */
class ScheduleTest {
    private final Script script = new Script();

    @Test
    void anEmptyKitchenHasNothingToDo() {
        Schedule schedule = schedule();
        assertEquals(List.of(), schedule.loads("line"));
        Order order = script.place("beef");
        script.allUp(order);
        assertTrue(schedule().slot(new PartId(order.id(), 1, "line")).isEmpty());
        assertTrue(schedule().wholeAtMs(order.id()).isEmpty());
    }

    @Test
    void theOldestIsTakenByWhicheverHandIsFree() {
        Order first = script.place("beef");
        Order second = script.place("beef");
        Order third = script.place("beef");
        long each = seconds("beef", "line") * 1000L;
        assertEquals(0, startsIn(first, 1, "line"));
        assertEquals(0, startsIn(second, 1, "line"));
        assertEquals(each, startsIn(third, 1, "line"));
        assertEquals(2 * each, upIn(third, 1, "line"));
        assertEquals(script.nowMs() + 2 * each, schedule().wholeAtMs(third.id()).orElseThrow());
    }

    /** A menu adopted at noon may have lost a station that open orders still need. */
    @Test
    void aStationThatIsNoMoreHoldsNobodyUp() {
        Order combo = script.place("combo");
        String json = MenuWriter.tree(script.menu().parts()).toString();
        Menu later =
                MenuReader.read(
                                json.replace("\"grill\"", "\"griddle\"")
                                        .getBytes(StandardCharsets.UTF_8))
                        .menu()
                        .orElseThrow();
        Kitchen kitchen = script.stand().kitchen();
        Schedule schedule = Schedule.of(kitchen, later, script.nowMs());
        assertTrue(schedule.slot(new PartId(combo.id(), 1, "line")).isPresent());
        assertTrue(schedule.slot(new PartId(combo.id(), 1, "grill")).isEmpty());
        assertTrue(WaitQuote.now(kitchen, later, "line").isPresent());
    }

    @Test
    void aBasketTakesAsLongAsOnePiece() {
        Order four = script.place("4 fries");
        Order three = script.place("3 fries");
        Order two = script.place("2 fries");
        long fry = seconds("fries", "fryer") * 1000L;
        assertEquals(fry, upIn(four, 1, "fryer"));
        assertEquals(fry, upIn(three, 1, "fryer"));
        assertEquals(fry, startsIn(two, 1, "fryer"), "two do not fit beside three");
        assertEquals(List.of(4, 3, 2), pieces("fryer"));
        Order one = script.place("fries");
        assertEquals(fry, upIn(one, 1, "fryer"), "one fits beside three");
        assertEquals(List.of(4, 4, 2), pieces("fryer"));
    }

    @Test
    void moreThanABasketHoldsTakesSeveral() {
        Order many = script.place("10 fries");
        long fry = seconds("fries", "fryer") * 1000L;
        assertEquals(2 * fry, upIn(many, 1, "fryer"));
        assertEquals(List.of(4, 4, 2), pieces("fryer"));
    }

    @Test
    void aComboOnTheLineWaitsForTheGrillAndTheHandTakesTheNextMeanwhile() {
        Order combo = script.place("combo");
        Order beef = script.place("beef");
        long char1 = seconds("combo", "grill") * 1000L;
        assertEquals(char1, startsIn(combo, 1, "line"));
        assertEquals(0, startsIn(beef, 1, "line"));
    }

    @Test
    void friesComeUpWithTheSlowestPartOfTheirOrder() {
        for (int n = 0; n < 20; n++) {
            script.place("2 beef");
        }
        Order order = script.place("beef, fries");
        long line = upIn(order, 1, "line");
        long fry = seconds("fries", "fryer") * 1000L;
        assertTrue(line > 2 * fry, "a queue at the line");
        long earlyMs = line - upIn(order, 2, "fryer");
        assertTrue(earlyMs >= 5_000 && earlyMs <= 5_000 + line / 25, earlyMs + " ms");
        assertEquals(upIn(order, 2, "fryer") - fry, startsIn(order, 2, "fryer"));
    }

    @Test
    void whatWasBegunKeepsItsHandAndItsStart() {
        Order first = script.place("beef");
        script.must(new KitchenCommand.Start(new PartId(first.id(), 1, "line")));
        Order second = script.place("2 fries, fries");
        script.must(new KitchenCommand.Start(new PartId(second.id(), 1, "fryer")));
        script.must(new KitchenCommand.Start(new PartId(second.id(), 2, "fryer")));
        script.later(20);
        assertEquals(-20_000, startsIn(first, 1, "line"));
        assertEquals(seconds("beef", "line") * 1000L - 20_000, upIn(first, 1, "line"));
        List<Schedule.Load> loads = schedule().loads("fryer");
        assertEquals(1, loads.size(), "dropped together");
        assertEquals(3, loads.get(0).pieces());
        assertTrue(loads.get(0).started());
    }

    @Test
    void whatIsVoidTakesNoHand() {
        Order first = script.place("30 beef");
        Order second = script.place("beef");
        assertTrue(startsIn(second, 1, "line") > 0);
        script.must(new OrderCommand.VoidOrder(first.id(), 0, "guest left"));
        assertEquals(0, startsIn(second, 1, "line"));
    }

    private Schedule schedule() {
        return Schedule.of(script.stand().kitchen(), script.menu(), script.nowMs());
    }

    private List<Integer> pieces(String station) {
        return schedule().loads(station).stream().map(Schedule.Load::pieces).toList();
    }

    private long startsIn(Order order, int line, String station) {
        return slot(order, line, station).startByMs() - script.nowMs();
    }

    private long upIn(Order order, int line, String station) {
        return slot(order, line, station).upAtMs() - script.nowMs();
    }

    private Schedule.Slot slot(Order order, int line, String station) {
        return schedule().slot(new PartId(order.id(), line, station)).orElseThrow();
    }

    private int seconds(String call, String station) {
        return Router.seconds(script.menu(), script.asked(call).get(0).selection(), station);
    }
}
