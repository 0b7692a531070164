package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.Check;
import sopwell.desk.Script;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.kitchen.RemakeReason;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.mix.WaitTally.PartWait;
import sopwell.mix.WaitTally.Quoted;
import sopwell.money.Discount;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;

/** How long guests waited, and for what. */
class WaitTallyTest {
    private static final int UNKNOWN = WaitTally.UNKNOWN;

    private final Script script = new Script();

    @Test
    void anOrderIsFollowedFromTheCallToTheHand() {
        Order order = script.place("2 beef, fries");
        script.later(60).must(new KitchenCommand.Start(part(order, 1, "line")));
        script.later(90).must(new KitchenCommand.Up(part(order, 2, "fryer")));
        script.later(50).must(new KitchenCommand.Up(part(order, 1, "line")));
        script.later(30).must(new OrderCommand.Hand(order.id()));

        OrderWait wait = tally().orders().get(0);

        assertEquals(60, wait.toStarted());
        assertEquals(200, wait.toUp());
        assertEquals(230, wait.toHanded());
        assertEquals(30, wait.upToHanded());
        assertEquals(
                List.of(
                        new PartWait("line", "beef", 2, 60, 200, 230),
                        new PartWait("fryer", "fries", 1, UNKNOWN, 150, 230)),
                wait.parts());
        assertEquals(140, wait.parts().get(0).startedToUp());
        assertEquals(UNKNOWN, wait.parts().get(1).startedToUp(), "nobody said when it was begun");
        assertEquals(80, wait.parts().get(1).upToHanded());
        assertEquals(24, wait.halfHour());
    }

    @Test
    void aBeginningIsUnknownWhenSomethingWentUpUnannouncedBeforeIt() {
        Order order = script.place("beef, fries");
        script.later(50).must(new KitchenCommand.Up(part(order, 2, "fryer")));
        script.later(10).must(new KitchenCommand.Start(part(order, 1, "line")));
        assertEquals(UNKNOWN, tally().orders().get(0).toStarted());
        assertEquals(60, tally().orders().get(0).parts().get(0).toStarted());
    }

    @Test
    void aSecondThatHasBegunCounts() {
        Order order = script.place("beef");
        script.atMs(script.nowMs() + 360_001).must(new KitchenCommand.Up(part(order, 1, "line")));
        assertEquals(361, tally().orders().get(0).toUp());
    }

    @Test
    void whatIsMadeAgainIsBeingMadeUntilItIsUpForGood() {
        Order order = script.place("beef");
        PartId beef = part(order, 1, "line");
        script.later(30).must(new KitchenCommand.Start(beef));
        script.later(60).must(new KitchenCommand.Up(beef));
        script.later(20)
                .must(new KitchenCommand.Remake(List.of(beef), 1, RemakeReason.DROPPED, ""));
        assertEquals(UNKNOWN, tally().orders().get(0).toUp());
        script.later(40).must(new KitchenCommand.Start(beef));
        script.later(50).must(new KitchenCommand.Up(beef));
        assertEquals(
                List.of(new PartWait("line", "beef", 1, 30, 200, UNKNOWN)),
                tally().orders().get(0).parts());
    }

    @Test
    void whatComesBackFromThePassWithoutATapIsStillBegunNobodyKnowsWhen() {
        Order order = script.place("beef");
        PartId beef = part(order, 1, "line");
        script.later(60).must(new KitchenCommand.Up(beef));
        script.later(10).must(new KitchenCommand.BringBack(beef));
        script.later(30).must(new KitchenCommand.Up(beef));
        assertEquals(
                new PartWait("line", "beef", 1, UNKNOWN, 100, UNKNOWN),
                tally().orders().get(0).parts().get(0));
    }

    @Test
    void aLineThatCameLaterIsWaitedForFromThen() {
        Order order = script.place("beef");
        script.later(100);
        script.change(order, "beef, fries");
        script.later(50);
        script.allUp(script.now(order));
        OrderWait wait = tally().orders().get(0);
        assertEquals(150, wait.toUp());
        assertEquals(150, wait.parts().get(0).toUp());
        assertEquals(50, wait.parts().get(1).toUp());
    }

    @Test
    void voidOrdersAreOutAndStaffMealsApart() {
        Order gone = script.place("beef");
        script.must(new OrderCommand.VoidOrder(gone.id(), 0, "guest left"));
        Order ours = script.place("beef");
        script.must(
                new OrderCommand.SetDiscount(
                        ours.id(),
                        ours.version(),
                        new Discount(Discount.Kind.STAFF_MEAL, 0, 100_000, "shift meal")));
        script.place("beef");
        assertEquals(
                List.of(true, false), tally().orders().stream().map(OrderWait::staff).toList());
    }

    @Test
    void aQuoteIsKeptOrMissed() {
        Order kept = handedAfter(script.place("beef"), Quoted.WITHIN);
        Order sooner = handedAfter(script.place("beef"), Quoted.SOONER);
        Order later = handedAfter(script.place("beef"), Quoted.LATER);
        Order edited = script.place("beef");
        script.change(edited, "beef, fries");
        script.allUp(script.now(edited));
        script.must(new OrderCommand.Hand(edited.id()));
        assertTrue(kept.number() < sooner.number() && sooner.number() < later.number());
        assertEquals(
                List.of(Quoted.WITHIN, Quoted.SOONER, Quoted.LATER, Quoted.UNJUDGED),
                tally().orders().stream().map(OrderWait::quoted).toList());
    }

    @Test
    void waitsFollowOneAnother() {
        assertThrows(Check.Broken.class, () -> new PartWait("line", "beef", 1, 60, 59, UNKNOWN));
        assertThrows(Check.Broken.class, () -> new PartWait("line", "beef", 1, 60, UNKNOWN, 59));
        assertThrows(
                Check.Broken.class, () -> new PartWait("line", "beef", 1, -2, UNKNOWN, UNKNOWN));
        assertEquals(0, new PartWait("line", "beef", 1, 60, 60, 60).upToHanded());
    }

    private Order handedAfter(Order order, Quoted how) {
        int seconds =
                switch (how) {
                    case SOONER, UNJUDGED -> order.quote().fromSeconds() - 1;
                    case WITHIN -> order.quote().toSeconds();
                    case LATER -> order.quote().toSeconds() + 1;
                };
        script.later(seconds);
        script.allUp(order);
        script.must(new OrderCommand.Hand(order.id()));
        return order;
    }

    private static PartId part(Order order, int line, String station) {
        return new PartId(order.id(), line, station);
    }

    private LocalDate date() {
        return script.stand().orders().date().orElseThrow();
    }

    private WaitTally tally() {
        return WaitTally.of(
                date(),
                script.stand().orders(),
                script.stand().kitchen(),
                script.stand().settings().zone());
    }
}
