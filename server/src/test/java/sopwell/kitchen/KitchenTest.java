package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.BringBack;
import sopwell.kitchen.KitchenCommand.BringBackLast;
import sopwell.kitchen.KitchenCommand.Seen;
import sopwell.kitchen.KitchenCommand.Start;
import sopwell.kitchen.KitchenCommand.Up;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;

/** How parts move, what changes do to them, and what is refused. */
class KitchenTest {
    private final Script script = new Script();
    private final Kitchen kitchen = script.stand().kitchen();

    @Test
    void everyStationSeesItsPartsOldestFirst() {
        Order first = script.place("2 beef dipped, fries");
        Order second = script.later(5).place("combo hot, cola");

        assertEquals(List.of(first.id() + ".1.line", second.id() + ".1.line"), sight("line"));
        assertEquals(List.of(first.id() + ".2.fryer"), sight("fryer"));
        assertEquals(List.of(second.id() + ".1.grill"), sight("grill"));
        assertEquals(List.of(second.id() + ".2.drinks"), sight("drinks"));
    }

    @Test
    void anOrdersStageFollowsFromItsParts() {
        Order order = script.place("beef, fries");
        assertEquals(OrderStage.WAITING, kitchen.stage(order));
        script.must(new Start(part(order, 1, "line")));
        assertEquals(OrderStage.STARTED, kitchen.stage(order));
        script.must(new Up(part(order, 1, "line")));
        assertEquals(OrderStage.STARTED, kitchen.stage(order));
        script.must(new Up(part(order, 2, "fryer")));
        assertEquals(OrderStage.UP, kitchen.stage(order));
        script.must(new BringBack(part(order, 2, "fryer")));
        assertEquals(OrderStage.STARTED, kitchen.stage(order));
    }

    @Test
    void movesOutOfOrderAreRefused() {
        Order order = script.place("beef");
        PartId part = part(order, 1, "line");
        assertEquals(Reason.NOT_UP, reason(script.decide(new BringBack(part))));
        assertEquals(Reason.NOTHING_TO_SEE, reason(script.decide(new Seen(part))));
        script.must(new Start(part));
        assertEquals(Reason.ALREADY_STARTED, reason(script.decide(new Start(part))));
        script.must(new Up(part));
        assertEquals(Reason.ALREADY_UP, reason(script.decide(new Up(part))));
        assertEquals(Reason.ALREADY_UP, reason(script.decide(new Start(part))));
        script.must(new OrderCommand.Hand(order.id()));
        assertEquals(Reason.ORDER_HANDED, reason(script.decide(new BringBack(part))));
        PartId unknown = new PartId(order.id(), 7, "line");
        assertEquals(Reason.UNKNOWN_PART, reason(script.decide(new Up(unknown))));
    }

    @Test
    void whatNobodyStartedStartsWhenItIsUp() {
        Order order = script.place("beef");
        script.later(90).must(new Up(part(order, 1, "line")));
        Part part = script.part(order, 1, "line");
        assertEquals(script.nowMs(), part.startedAtMs());
        assertEquals(script.nowMs(), part.upAtMs());
    }

    @Test
    void aChangedPartMustBeSeenBeforeItIsUp() {
        Order order = script.place("beef dipped hot, fries");
        script.must(new Start(part(order, 1, "line")));
        script.must(new Up(part(order, 2, "fryer")));

        script.change(order, "beef dry hot, fries");

        assertTrue(script.part(order, 1, "line").isUnseen());
        assertEquals(PartState.STARTED, script.part(order, 1, "line").state());
        assertFalse(script.part(order, 2, "fryer").isUnseen(), "the fryer sees no difference");
        assertEquals(PartState.UP, script.part(order, 2, "fryer").state());
        assertEquals(Reason.CHANGE_UNSEEN, reason(script.decide(new Up(part(order, 1, "line")))));
        script.must(new Seen(part(order, 1, "line")));
        script.must(new Up(part(order, 1, "line")));
        assertEquals(OrderStage.UP, kitchen.stage(script.now(order)));
    }

    @Test
    void aPartThatWasUpIsWorkAgainWhenItChanges() {
        Order order = script.place("beef dipped");
        script.must(new Up(part(order, 1, "line")));
        script.change(order, "2 beef dipped");
        assertEquals(PartState.STARTED, script.part(order, 1, "line").state());
        assertEquals(1, script.part(order, 1, "line").before().orElseThrow().quantity());
        assertEquals(1, kitchen.inSight("line").size());
    }

    @Test
    void aChangeThatIsTakenBackBeforeItWasSeenIsNoChange() {
        Order order = script.place("beef dipped");
        script.change(order, "beef dry");
        script.change(script.now(order), "beef dipped");
        assertFalse(script.part(order, 1, "line").isUnseen());
    }

    @Test
    void aLineTakenOffGoesAtOnceIfNobodyBeganItAndStaysToBeSeenIfSomebodyDid() {
        Order order = script.place("beef, combo, fries");
        script.must(new Start(part(order, 2, "line")));

        script.change(order, "fries");

        assertEquals(List.of(order.id() + ".2.line"), sight("line"));
        assertTrue(sight("grill").isEmpty());
        assertTrue(script.part(order, 2, "line").cancelled());
        assertEquals(Reason.PART_CANCELLED, reason(script.decide(new Up(part(order, 2, "line")))));
        assertEquals(Reason.NOT_WHOLE, reason(script.decide(new OrderCommand.Hand(order.id()))));
        script.must(new Seen(part(order, 2, "line")));
        assertTrue(sight("line").isEmpty());
        assertTrue(kitchen.find(part(order, 2, "line")).isEmpty());
    }

    @Test
    void aVoidedOrderLeavesOnlyWhatWasBegunAndThatUntilSeen() {
        Order order = script.place("beef, fries");
        script.must(new Up(part(order, 1, "line")));

        script.must(new OrderCommand.VoidOrder(order.id(), 0, "guest left"));

        assertTrue(sight("fryer").isEmpty());
        assertEquals(List.of(order.id() + ".1.line"), sight("line"));
        script.must(new Seen(part(order, 1, "line")));
        assertTrue(sight("line").isEmpty());
        assertEquals(OrderStage.VOID, kitchen.stage(script.now(order)));
    }

    @Test
    void bringBackLastUndoesTheStationsOwnLastUpThatIsStillHere() {
        Order first = script.place("beef");
        Order second = script.place("beef");
        script.must(new Up(part(first, 1, "line")));
        script.must(new Up(part(second, 1, "line")));
        script.must(new OrderCommand.Hand(second.id()));

        script.must(new BringBackLast("line"));

        assertEquals(PartState.STARTED, script.part(first, 1, "line").state());
        assertEquals(
                Reason.NOTHING_TO_BRING_BACK, reason(script.decide(new BringBackLast("line"))));
        assertEquals(
                Reason.NOTHING_TO_BRING_BACK, reason(script.decide(new BringBackLast("fryer"))));
    }

    @Test
    void theBacklogIsTheWorkThatIsLeft() {
        assertEquals(0, kitchen.backlogSeconds("fryer"));
        Order order = script.place("2 fries");
        int each = Router.seconds(script.menu(), order.lines().get(0).selection(), "fryer");
        assertEquals(2L * each, kitchen.backlogSeconds("fryer"));
        script.change(order, "3 fries");
        assertEquals(3L * each, kitchen.backlogSeconds("fryer"));
        script.allUp(script.now(order));
        assertEquals(0, kitchen.backlogSeconds("fryer"));
    }

    @Test
    void aPartsIdIsWrittenAndReadAlike() {
        PartId id = new PartId("20260114-0007", 2, "line");
        assertEquals(id, PartId.read(id.toString()).orElseThrow());
        for (String wrong :
                List.of(
                        "",
                        "x",
                        "20260114-0007",
                        "20260114-0007.2",
                        "20260114-0007.2.LINE",
                        "a.b.c")) {
            assertTrue(PartId.read(wrong).isEmpty(), wrong);
        }
    }

    private List<String> sight(String station) {
        return kitchen.inSight(station).stream()
                .map(part -> part.id().toString())
                .collect(Collectors.toList());
    }

    private static PartId part(Order order, int line, String station) {
        return new PartId(order.id(), line, station);
    }
}
