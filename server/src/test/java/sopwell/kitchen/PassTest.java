package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand.BringBack;
import sopwell.kitchen.PassCommand.CallNumber;
import sopwell.kitchen.PassCommand.CountBags;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;

/** What is done at the pass with whole orders. */
class PassTest {
    private final Script script = new Script();

    @Test
    void onlyAWholeOrderIsCalledAndEveryCallIsCounted() {
        Order order = script.place("beef, fries");
        assertEquals(Reason.NOT_WHOLE, Script.reason(script.decide(new CallNumber(order.id()))));
        script.allUp(order);
        script.later(5);
        script.must(new CallNumber(order.id()));
        script.later(60);
        script.must(new CallNumber(order.id()));
        Pass.Standing standing = script.stand().pass().of(order.id());
        assertEquals(2, standing.calls());
        assertEquals(script.nowMs(), standing.calledAtMs());
    }

    @Test
    void aCallBeforeItWasWholeAgainSaysNothingAnyMore() {
        Order order = script.place("beef");
        script.allUp(order);
        script.must(new CallNumber(order.id()));
        script.must(new BringBack(script.part(order, 1, "line").id()));
        script.later(30);
        script.allUp(order);
        Pass pass = script.stand().pass();
        long wholeAtMs = script.stand().kitchen().wholeAtMs(order.id());
        assertEquals(0, pass.of(order.id()).callsSince(wholeAtMs));
        script.must(new CallNumber(order.id()));
        assertEquals(1, pass.of(order.id()).callsSince(wholeAtMs));
    }

    @Test
    void bagsAreCountedAgainAfterAChange() {
        Order order = script.place("beef, fries");
        script.must(new CountBags(order.id(), 1));
        script.must(new CountBags(order.id(), 2));
        assertEquals(2, script.stand().pass().of(order.id()).bags());
        assertEquals(
                Reason.NOTHING_CHANGED, Script.reason(script.decide(new CountBags(order.id(), 2))));
        assertFalse(script.change(order, "beef, 3 fries").isRefused());
        assertEquals(0, script.stand().pass().of(order.id()).bags());
    }

    @Test
    void aCountThatCannotBeIsRefused() {
        Order order = script.place("beef");
        for (int bags : new int[] {-1, 0, Limits.BAGS_MAX + 1, 1_000}) {
            assertEquals(
                    Reason.BAGS_RANGE,
                    Script.reason(script.decide(new CountBags(order.id(), bags))));
        }
        script.must(new CountBags(order.id(), Limits.BAGS_MAX));
        assertEquals(Limits.BAGS_MAX, script.stand().pass().of(order.id()).bags());
    }

    @Test
    void nothingIsDoneWithWhatIsNotThereHandedOrVoid() {
        assertEquals(
                Reason.UNKNOWN_ORDER,
                Script.reason(script.decide(new CallNumber("20260114-0999"))));
        Order order = script.place("beef");
        script.allUp(order);
        script.must(new OrderCommand.Hand(order.id()));
        assertEquals(
                Reason.ORDER_HANDED, Script.reason(script.decide(new CountBags(order.id(), 1))));
        Order other = script.place("beef");
        script.must(new OrderCommand.VoidOrder(other.id(), 1, "gone"));
        assertEquals(Reason.ORDER_VOID, Script.reason(script.decide(new CallNumber(other.id()))));
    }

    @Test
    void anotherDayBeginsWithNothingCounted() {
        Order order = script.place("beef");
        script.must(new CountBags(order.id(), 2));
        script.at("2026-01-15T12:00").place("beef");
        assertEquals(0, script.stand().pass().of(order.id()).bags());
    }
}
