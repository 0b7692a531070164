package sopwell.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.Move;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Together;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Settler;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.Reason;

/** A sandwich whose sausage is on the grill waits for it, and says so. */
class WaitingRowsTest {
    private final Script script = new Script();
    private final Places places = new Places();

    @Test
    void aRowSaysWhatItWaitsForWhereAndUntilWhen() {
        Order order = script.place("combo");
        RowWait wait = rows().get(0).waits().get(0);
        assertEquals(new PartId(order.id(), 1, "grill"), wait.part());
        assertEquals("Grill", wait.station().en());
        assertEquals("Char sausage", wait.what().en());
        assertTrue(wait.expectedMs() > script.nowMs());
        script.must(new Start(wait.part()));
        assertTrue(rows().get(0).waits().get(0).begun());
        script.must(new Up(wait.part()));
        assertEquals(List.of(), rows().get(0).waits());
    }

    @Test
    void upIsRefusedUntilThenAndNamesTheStation() {
        Order order = script.place("sausage hot");
        PartId line = new PartId(order.id(), 1, "line");
        Decision refused = script.decide(new Up(line));
        assertEquals(Reason.WAITS_FOR, reason(refused));
        assertEquals(List.of("" + order.number(), "grill"), refused.refusal().get().args());
    }

    @Test
    void haveItPutsUpWhatIsInTheCooksHandForAllOfARow() {
        Order order = script.place("combo, combo, beef");
        List<PartId> combos = rows().get(1).parts();
        assertEquals(2, combos.size());
        script.must(new Together(Move.HAVE, combos));
        for (int line : List.of(1, 2)) {
            assertEquals(PartState.UP, script.part(order, line, "grill").state());
            assertEquals(PartState.WAITING, script.part(order, line, "line").state());
        }
        script.must(new Together(Move.UP, combos));
        assertEquals(
                Reason.NOTHING_AWAITED,
                reason(
                        script.decide(
                                new Together(
                                        Move.HAVE, List.of(new PartId(order.id(), 3, "line"))))));
    }

    @Test
    void aSausageThatIsTakenOffTheOrderIsNotWaitedFor() {
        Order order = script.place("combo");
        script.must(new Start(new PartId(order.id(), 1, "grill")));
        script.change(order, "beef");
        assertTrue(script.part(order, 1, "grill").cancelled());
        assertEquals(List.of(), rows().get(0).waits());
    }

    @Test
    void shownTimesStayWhileTheScheduleMovesALittle() {
        script.place("combo");
        long first = rows().get(0).waits().get(0).expectedMs();
        for (int second = 1; second * 1_000L < Settler.STEADY_MS; second++) {
            script.later(1);
            assertEquals(first, rows().get(0).waits().get(0).expectedMs());
        }
    }

    @Test
    void whatNeedNotBeBegunYetSaysWhenAndStandsByThat() {
        script.place("combo");
        rows();
        script.later(1).place("beef");
        List<PartRow> rows = rows();
        assertTrue(rows.get(0).startByMs() > script.nowMs(), "it waits for its sausage");
        assertEquals(0, rows.get(1).startByMs(), "it can be begun now");
        script.must(new Start(rows.get(0).part()));
        assertEquals(0, rows().get(0).startByMs(), "it is begun");
    }

    private List<PartRow> rows() {
        Scene scene =
                Scene.of(
                        script.menu(),
                        script.stand()::menuOf,
                        script.stand().kitchen(),
                        script.stand().pans(),
                        script.nowMs());
        return StationBoards.of(script.menu().station("line"), scene, places).rows();
    }
}
