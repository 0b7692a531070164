package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.Move;
import sopwell.kitchen.KitchenCommand.Remake;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Together;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.mix.DayExceptions;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.orders.StandSettings;

/** What is made again, what becomes of the order, and what counts as wasted. */
class RemakesTest {
    private final Script script = new Script();
    private final Kitchen kitchen = script.stand().kitchen();

    @Test
    void onlyWhatIsMadeAgainIsWorkWhenTheRestIsUp() {
        Order order = script.place("3 beef");
        PartId part = part(order, 1, "line");
        script.must(new Up(part));
        script.must(remake(part, 2, RemakeReason.DROPPED));
        Part again = kitchen.find(part).orElseThrow();
        assertEquals(PartState.WAITING, again.state());
        assertEquals(2, again.pieces());
        int each = Router.seconds(script.menu(), again.making().selection(), "line");
        assertEquals(2L * each, kitchen.backlogSeconds("line"));
        assertEquals(OrderStage.WAITING, kitchen.stage(order));
        script.must(new Up(part));
        assertEquals(OrderStage.UP, kitchen.stage(order));
    }

    @Test
    void whatIsBegunIsStillMadeInFull() {
        Order order = script.place("3 beef");
        PartId part = part(order, 1, "line");
        script.must(new Start(part));
        script.must(remake(part, 1, RemakeReason.WRONG));
        Part again = kitchen.find(part).orElseThrow();
        assertEquals(PartState.STARTED, again.state());
        assertEquals(3, again.pieces());
        assertEquals(1, again.again().orElseThrow().pieces());
    }

    @Test
    void anOrderThatWasHandedComesBackOpen() {
        Order order = script.place("beef, fries");
        script.allUp(order);
        script.must(new OrderCommand.Hand(order.id()));
        script.must(remake(part(order, 1, "line"), 1, RemakeReason.COLD));
        assertFalse(script.now(order).isHanded());
        assertEquals(1, kitchen.inSight("line").size());
        assertEquals(0, kitchen.inSight("fryer").size(), "the fries are still good");
    }

    @Test
    void anOrderWhoseNumberIsTakenStaysHanded() {
        Script few = new Script(numbersUpTo(2));
        Order first = few.place("beef");
        few.allUp(first);
        few.must(new OrderCommand.Hand(first.id()));
        few.place("cola");
        Order again = few.place("cola");
        assertEquals(first.number(), again.number());
        Remake remake = remake(part(first, 1, "line"), 1, RemakeReason.COLD);
        assertEquals(Reason.NUMBER_TAKEN, reason(few.decide(remake)));
        assertTrue(few.now(first).isHanded());
    }

    @Test
    void whatWentIntoItIsMadeAgainTooAndCountsOnce() {
        Order order = script.place("2 combo");
        script.allUp(order);
        script.must(remake(part(order, 1, "line"), 1, RemakeReason.DROPPED));
        Part sausage = kitchen.find(part(order, 1, "grill")).orElseThrow();
        assertEquals(PartState.WAITING, sausage.state());
        assertEquals(1, sausage.pieces());
        assertEquals(1, exceptions().wastedPieces());
        assertEquals(Reason.WAITS_FOR, reason(script.decide(new Up(part(order, 1, "line")))));
        script.must(new Together(Move.HAVE, List.of(part(order, 1, "line"))));
        script.must(new Up(part(order, 1, "line")));
        assertEquals(OrderStage.UP, kitchen.stage(order));
    }

    @Test
    void aRowOfSeveralPartsIsMadeAgainFromItsFirst() {
        Order order = script.place("beef, 2 beef, beef");
        List<PartId> parts =
                List.of(part(order, 1, "line"), part(order, 2, "line"), part(order, 3, "line"));
        script.must(new Together(Move.UP, parts));
        script.must(new Remake(parts, 2, RemakeReason.SPOILED, ""));
        assertEquals(List.of(1, 1), kitchen.inSight("line").stream().map(Part::pieces).toList());
        assertEquals(
                List.of(1, 2),
                kitchen.inSight("line").stream().map(part -> part.id().line()).toList());
    }

    @Test
    void wasteIsCountedByReasonMostFirst() {
        Order order = script.place("3 beef, fries");
        script.allUp(order);
        script.must(remake(part(order, 1, "line"), 1, RemakeReason.COLD));
        script.must(new Up(part(order, 1, "line")));
        script.must(remake(part(order, 1, "line"), 2, RemakeReason.DROPPED));
        script.must(remake(part(order, 2, "fryer"), 1, RemakeReason.COLD));
        script.must(new Start(part(order, 2, "fryer")));
        script.must(remake(part(order, 2, "fryer"), 1, RemakeReason.COLD));
        assertEquals(
                List.of(
                        new DayExceptions.RemakeCount(RemakeReason.COLD, 3),
                        new DayExceptions.RemakeCount(RemakeReason.DROPPED, 2)),
                exceptions().remakes());
        script.later(86_400).place("beef");
        assertEquals(0, exceptions().wastedPieces(), "another day");
    }

    @Test
    void aChangeMakesItAllNew() {
        Order order = script.place("3 beef");
        PartId part = part(order, 1, "line");
        script.must(new Up(part));
        script.must(remake(part, 1, RemakeReason.DROPPED));
        script.change(order, "2 beef dry");
        assertEquals(2, kitchen.find(part).orElseThrow().pieces());
        assertTrue(kitchen.find(part).orElseThrow().again().isEmpty());
    }

    @Test
    void whatCannotBeMadeAgainIsRefused() {
        Order order = script.place("2 beef, fries");
        PartId part = part(order, 1, "line");
        assertEquals(Reason.NOT_BEGUN, why(remake(part, 1, RemakeReason.COLD)));
        script.must(new Start(part));
        assertEquals(Reason.REMAKE_PIECES, why(remake(part, 3, RemakeReason.COLD)));
        assertEquals(Reason.REMAKE_PIECES, why(remake(part, 0, RemakeReason.COLD)));
        assertEquals(
                Reason.TEXT_TOO_LONG,
                why(new Remake(List.of(part), 1, RemakeReason.OTHER, "x".repeat(201))));
        assertEquals(
                Reason.UNKNOWN_PART, why(remake(part(order, 9, "line"), 1, RemakeReason.COLD)));
        assertEquals(Reason.UNKNOWN_PART, why(new Remake(List.of(), 1, RemakeReason.COLD, "")));
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        assertEquals(Reason.ORDER_VOID, why(remake(part, 1, RemakeReason.COLD)));
    }

    private static StandSettings numbersUpTo(int most) {
        StandSettings usual = Script.SETTINGS;
        return new StandSettings(
                usual.stand(),
                usual.name(),
                usual.zone(),
                usual.cutHour(),
                usual.tax(),
                usual.targetSeconds(),
                most,
                usual.cash(),
                usual.safety());
    }

    private Reason why(Remake remake) {
        return reason(script.decide(remake));
    }

    private DayExceptions exceptions() {
        return DayExceptions.of(script.stand().orders(), kitchen);
    }

    private static Remake remake(PartId part, int pieces, RemakeReason reason) {
        return new Remake(List.of(part), pieces, reason, "");
    }

    private static PartId part(Order order, int line, String station) {
        return new PartId(order.id(), line, station);
    }
}
