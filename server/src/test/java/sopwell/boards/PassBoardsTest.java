package sopwell.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.kitchen.PassCommand.CallNumber;
import sopwell.kitchen.PassCommand.CountBags;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** The pass and the guests' screen. */
class PassBoardsTest {
    private final Script script = new Script();
    private final Digits<String> digits = new Digits<>();

    @Test
    void wholeOrdersStandInTheOrderInWhichTheyBecameWholeAndKeepTheirKeys() {
        Order first = script.place("beef");
        Order second = script.place("fries");
        Order third = script.place("combo");
        script.later(10).allUp(second);
        assertEquals(List.of(second.number()), numbers(pass().whole()));
        script.later(10).allUp(third);
        script.later(10).allUp(first);
        PassBoard board = pass();
        assertEquals(
                List.of(second.number(), third.number(), first.number()), numbers(board.whole()));
        assertEquals(List.of(1, 2, 3), board.whole().stream().map(PassRow::digit).toList());
        script.must(new OrderCommand.Hand(second.id()));
        board = pass();
        assertEquals(List.of(2, 3), board.whole().stream().map(PassRow::digit).toList());
        assertEquals(List.of(second.number()), numbers(board.handed()));
    }

    @Test
    void everyMissingPartSaysWhereItIsAndSinceWhen() {
        Order order = script.place("beef, 2 fries");
        long placedAtMs = script.nowMs();
        script.later(40).must(new Start(script.part(order, 2, "fryer").id()));
        long begunAtMs = script.nowMs();
        script.later(30).must(new Up(script.part(order, 1, "line").id()));
        List<PassRow.PassPart> parts = pass().open().get(0).parts();
        PassRow.PassPart fries = parts.get(1);
        assertEquals("Fryer", fries.station().en());
        assertEquals(begunAtMs, fries.sinceMs());
        assertEquals(script.nowMs(), parts.get(0).sinceMs());
        Order other = script.place("cola");
        assertEquals(script.nowMs(), pass().open().get(1).parts().get(0).sinceMs());
        assertTrue(placedAtMs < script.now(other).placedAtMs());
    }

    @Test
    void callsAndBagsStandOnTheRowUntilAfterTheHandOver() {
        Order order = script.place("beef");
        script.allUp(order);
        script.must(new CountBags(order.id(), 2));
        script.later(20).must(new CallNumber(order.id()));
        PassRow row = pass().whole().get(0);
        assertEquals(1, row.calls());
        assertEquals(script.nowMs(), row.calledAtMs());
        assertEquals(2, row.bags());
        script.must(new OrderCommand.Hand(order.id()));
        assertEquals(2, pass().handed().get(0).bags());
    }

    @Test
    void guestsSeeWhatIsUpTheNewestOrJustCalledFirst() {
        Order first = script.place("beef", "Ines", true);
        Order second = script.place("fries", "Theo", true);
        script.place("combo");
        assertEquals(List.of(), ready().rows());
        script.later(10).allUp(first);
        script.later(10).allUp(second);
        assertEquals(List.of(second.number(), first.number()), readyNumbers());
        script.later(10).must(new CallNumber(first.id()));
        assertEquals(List.of(first.number(), second.number()), readyNumbers());
        assertEquals(new ReadyRow(first.number(), "Ines", script.nowMs()), ready().rows().get(0));
        script.must(new OrderCommand.Hand(first.id()));
        assertEquals(List.of(second.number()), readyNumbers());
        script.must(new OrderCommand.BringBack(first.id()));
        assertEquals(2, ready().rows().size());
        assertTrue(!script.change(second, "beef").isRefused());
        assertEquals(List.of(first.number()), readyNumbers());
    }

    @Test
    void numbersThatDoNotFitAreCounted() {
        for (int i = 0; i < Limits.BOARD_ROWS_MAX + 2; i++) {
            script.allUp(script.place("cola"));
        }
        assertEquals(Limits.BOARD_ROWS_MAX, ready().rows().size());
        assertEquals(2, ready().below());
        assertEquals(2, pass().wholeBelow());
        assertEquals(0, pass().below());
        assertEquals(Limits.BOARD_ROWS_MAX, pass().whole().size());
    }

    private static List<Integer> numbers(List<PassRow> rows) {
        return rows.stream().map(PassRow::number).toList();
    }

    private List<Integer> readyNumbers() {
        return ready().rows().stream().map(ReadyRow::number).toList();
    }

    private PassBoard pass() {
        Stand stand = script.stand();
        return PassBoards.pass(
                new PassBoards.Sources(
                        stand.orders(), stand.till(), stand.kitchen(), stand.pass(), stand::menuOf),
                digits);
    }

    private ReadyBoard ready() {
        Stand stand = script.stand();
        return PassBoards.ready(stand.orders(), stand.kitchen(), stand.pass());
    }
}
