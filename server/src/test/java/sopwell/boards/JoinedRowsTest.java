package sopwell.boards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.BringBackLast;
import sopwell.kitchen.KitchenCommand.Move;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Together;
import sopwell.kitchen.PartId;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.Question;
import sopwell.orders.Order;
import sopwell.orders.Reason;

/** Equal sandwiches of one order are one row, and stay told apart where it matters. */
class JoinedRowsTest {
    private final Script script = new Script();
    private final Places places = new Places();

    @Test
    void equalLinesOfOneOrderAreOneRow() {
        Order order = script.place("beef dipped, 2 beef dipped, beef dry, beef dipped");
        script.place("beef dipped");
        assertEquals(List.of(4, 1, 1), quantities());
        assertEquals(
                List.of(part(order, 1), part(order, 2), part(order, 4)), rows().get(0).parts());
        assertEquals(List.of(1, 2, 3), rows().stream().map(PartRow::digit).toList());
    }

    @Test
    void onePressDoesItToAllAndZeroBringsAllBack() {
        Order order = script.place("beef, beef, beef");
        script.must(new Together(Move.START, rows().get(0).parts()));
        assertTrue(rows().get(0).started());
        assertEquals(List.of(3), quantities());
        script.later(40).must(new Together(Move.UP, rows().get(0).parts()));
        assertEquals(List.of(), rows());
        script.later(1).must(new BringBackLast("line"));
        assertEquals(List.of(3), quantities());
        assertEquals(part(order, 1), rows().get(0).part());
    }

    @Test
    void zeroBringsBackWhatOnePressPutUpAndNoMore() {
        script.place("beef, beef");
        script.place("beef");
        script.must(new Together(Move.UP, rows().get(1).parts()));
        script.later(5).must(new Together(Move.UP, rows().get(0).parts()));
        script.must(new BringBackLast("line"));
        assertEquals(List.of(2), quantities());
        script.must(new BringBackLast("line"));
        assertEquals(List.of(2, 1), quantities());
        assertEquals(
                Reason.NOTHING_TO_BRING_BACK, reason(script.decide(new BringBackLast("line"))));
    }

    @Test
    void aChangeToOneOfThemSplitsTheRowAndIsNotPutUpWithTheOthers() {
        Order order = script.place("beef, beef, beef");
        List<PartId> seen = rows().get(0).parts();
        script.change(order, "beef, beef dry, beef");
        assertEquals(List.of(2, 1), quantities());
        assertEquals(List.of(1, 2), rows().stream().map(PartRow::digit).toList());
        assertFalse(rows().get(0).unseen());
        assertTrue(rows().get(1).unseen());

        script.must(new Together(Move.UP, seen));

        assertEquals(List.of(1), quantities(), "the changed one waits to be read");
        assertEquals(part(order, 2), rows().get(0).part());
        assertEquals(
                Reason.CHANGE_UNSEEN,
                reason(script.decide(new Together(Move.UP, seen.subList(1, 2)))));
    }

    @Test
    void whatIsLeftOfARowKeepsItsPlaceAndDigit() {
        Order first = script.place("beef, beef");
        script.place("beef dry");
        assertEquals(2, rows().size());
        script.must(new sopwell.kitchen.KitchenCommand.Up(part(first, 1)));
        assertEquals(part(first, 2), rows().get(0).part());
        assertEquals(List.of(1, 2), rows().stream().map(PartRow::digit).toList());
    }

    @Test
    void whatIsAskedAboutOrBegunStandsAlone() {
        Order order = script.place("beef, beef, beef");
        script.must(new Start(part(order, 2)));
        assertEquals(List.of(2, 1), quantities());
        Question right = new Question(List.of(), "");
        script.must(new QueryCommand.Ask(part(order, 3), right));
        assertEquals(List.of(1, 1, 1), quantities());
    }

    @Test
    void oneMoreOfTheSameIsARowOfItsOwnUntilItIsTaken() {
        Order order = script.place("beef");
        script.later(30).change(order, "beef, beef");
        assertEquals(List.of(1, 1), quantities(), "a quantity never grows unseen");
    }

    @Test
    void aPressNamesPartsThatThereAre() {
        assertEquals(
                Reason.UNKNOWN_PART,
                reason(
                        script.decide(
                                new Together(
                                        Move.UP,
                                        List.of(new PartId("20260114-0001", 1, "line"))))));
        assertEquals(Reason.UNKNOWN_PART, reason(script.decide(new Together(Move.UP, List.of()))));
    }

    @Test
    void otherStationsListPartByPart() {
        script.place("fries, fries");
        StationBoard fryer =
                StationBoards.of(script.menu().station("fryer"), scene(), new Places());
        assertEquals(2, fryer.rows().size());
    }

    private List<PartRow> rows() {
        return StationBoards.of(script.menu().station("line"), scene(), places).rows();
    }

    private Scene scene() {
        return Scene.of(
                script.menu(),
                script.stand()::menuOf,
                script.stand().kitchen(),
                script.stand().pans(),
                script.nowMs());
    }

    private List<Integer> quantities() {
        return rows().stream().map(PartRow::quantity).toList();
    }

    private static PartId part(Order order, int line) {
        return new PartId(order.id(), line, "line");
    }
}
