package sopwell.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.kitchen.OrderStage;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** What the screens show. */
class BoardsTest {
    private final Script script = new Script();
    private final Places places = new Places();
    private final Digits<String> wholeDigits = new Digits<>();

    @Test
    void aRowKeepsItsDigitUntilItLeavesAndTheFreeOneGoesToTheOldestWithout() {
        for (int i = 0; i < 11; i++) {
            script.place("beef");
        }
        assertEquals(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 0, 0), digitsOf(line()));
        script.must(new Up(line().rows().get(2).part()));
        assertEquals(List.of(1, 2, 4, 5, 6, 7, 8, 9, 3, 0), digitsOf(line()));
    }

    @Test
    void rowsStandInTheOrderInWhichTheyWereOrdered() {
        Order first = script.place("beef, combo");
        assertEquals(2, line().rows().size());
        Order second = script.later(9).place("beef");
        script.change(first, "beef dry, combo");
        assertEquals(
                List.of(first.number(), first.number(), second.number()),
                line().rows().stream().map(PartRow::number).toList());
    }

    @Test
    void theFootCountsWhatIsInSight() {
        script.place("2 beef dipped hot, beef dry provolone");
        Column dip =
                line().columns().stream().filter(c -> c.step().equals("dip")).findFirst().get();
        assertEquals(3, dip.total());
        assertEquals("dipped", dip.counts().get(0).word().text().en());
        assertEquals(2, dip.counts().get(0).pieces());
        Column cheese =
                line().columns().stream().filter(c -> c.step().equals("cheese")).findFirst().get();
        assertEquals(1, cheese.total());
    }

    @Test
    void aChangedCellSaysWhatItWasAndIsTheOnlyOneMarked() {
        Order order = script.place("beef dipped hot");
        script.change(order, "2 beef dry hot");
        PartRow row = line().rows().get(0);
        assertTrue(row.unseen());
        assertEquals(1, row.quantityBefore());
        assertEquals(2, row.quantity());
        List<StepCell> changed = row.cells().stream().filter(StepCell::changed).toList();
        assertEquals(List.of("dip"), changed.stream().map(StepCell::step).toList());
        assertEquals("dipped", changed.get(0).before().get(0).text().en());
        assertEquals("dry", changed.get(0).words().get(0).text().en());
    }

    @Test
    void whatDoesNotFitIsCounted() {
        for (int i = 0; i < Limits.BOARD_ROWS_MAX + 3; i++) {
            script.place("beef");
        }
        assertEquals(Limits.BOARD_ROWS_MAX, line().rows().size());
        assertEquals(3, line().below());
        assertEquals(3, pass().below());
    }

    @Test
    void thePassShowsWhatIsMissingThenWhatIsWholeThenTheLastHanded() {
        Order order = script.place("beef dipped sweet, fries");
        script.must(new Up(script.part(order, 1, "line").id()));
        PassRow row = pass().rows().get(0);
        assertEquals(OrderStage.STARTED, row.stage());
        assertEquals(2, row.pieces());
        assertTrue(row.parts().get(0).done());
        assertFalse(row.parts().get(1).done());
        assertEquals(
                List.of("sweet", "hot", "dipped"),
                row.parts().get(0).words().stream().map(w -> w.text().en()).toList());

        script.later(60).must(new Up(script.part(order, 2, "fryer").id()));
        assertEquals(OrderStage.UP, pass().rows().get(0).stage());
        assertEquals(script.nowMs(), pass().rows().get(0).wholeAtMs());
        script.must(new OrderCommand.Hand(order.id()));
        assertEquals(OrderStage.HANDED, pass().rows().get(0).stage());
    }

    @Test
    void theCounterShowsOpenOrdersNewestFirst() {
        Order first = script.place("beef");
        Order second = script.place("fries");
        script.allUp(first);
        CounterBoard board =
                OrderBoards.counter(
                        stand().orders(),
                        stand().till(),
                        stand().kitchen(),
                        stand().outs(),
                        stand()::menuOf);
        assertEquals(
                List.of(second.number(), first.number()),
                board.rows().stream().map(CounterRow::number).toList());
        assertEquals(OrderStage.UP, board.rows().get(1).stage());
    }

    private StationBoard line() {
        return StationBoards.of(
                script.menu().station("line"),
                Scene.of(
                        script.menu(),
                        stand()::menuOf,
                        stand().kitchen(),
                        script.stand().pans(),
                        script.nowMs()),
                places);
    }

    private PassBoard pass() {
        return PassBoards.pass(
                new PassBoards.Sources(
                        stand().orders(),
                        stand().till(),
                        stand().kitchen(),
                        stand().pass(),
                        stand()::menuOf),
                wholeDigits);
    }

    private Stand stand() {
        return script.stand();
    }

    private static List<Integer> digitsOf(StationBoard board) {
        return board.rows().stream().map(PartRow::digit).toList();
    }
}
