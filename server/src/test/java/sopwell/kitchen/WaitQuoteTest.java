package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Quote;

/** The wait told to the guest follows the work in front of the order, and its own past. */
class WaitQuoteTest {
    private final Script script = new Script();

    @Test
    void itIsARangeOfWholeMinutesAroundTheOrdersOwnWork() {
        Quote quote = script.place("fries").quote();
        int fry = Router.seconds(script.menu(), script.asked("fries").get(0).selection(), "fryer");
        assertEquals(0, quote.fromSeconds() % 60);
        assertEquals(0, quote.toSeconds() % 60);
        assertTrue(quote.fromSeconds() <= fry && fry < quote.toSeconds(), quote.toString());
        assertTrue(quote.toSeconds() - quote.fromSeconds() >= 60);
    }

    @Test
    void moreWorkInFrontMeansALongerWait() {
        Quote first = script.place("beef").quote();
        for (int i = 0; i < 20; i++) {
            script.place("2 beef dipped hot");
        }
        Quote late = script.place("beef").quote();
        assertTrue(late.fromSeconds() > first.fromSeconds() + 300, first + " " + late);
    }

    @Test
    void workOfAnotherStationDoesNotLengthenIt() {
        Quote before = script.place("cola").quote();
        for (int i = 0; i < 20; i++) {
            script.place("beef, fries");
        }
        assertTrue(script.place("cola").quote().toSeconds() <= before.toSeconds() + 60);
    }

    @Test
    void whatIsUpOrVoidIsNoWorkAnyMore() {
        Quote empty = script.place("beef").quote();
        Order big = script.place("30 beef");
        script.must(new OrderCommand.VoidOrder(big.id(), 0, "guest left"));
        List.copyOf(script.stand().orders().open()).forEach(script::allUp);
        assertEquals(empty, script.place("beef").quote());
    }

    @Test
    void hundredsOfOpenOrdersAreCountedNotPlayedThrough() {
        for (int i = 0; i < 400; i++) {
            script.place("beef, fries");
        }
        Quote late = script.place("beef").quote();
        long line = script.stand().kitchen().backlogSeconds("line") / 2;
        assertTrue(late.fromSeconds() < line && line < late.toSeconds(), late + " " + line);
    }

    @Test
    void aRangeThatIsTooNarrowGrowsAndOneThatIsTooWideShrinks() {
        for (int n = 0; n < 240; n++) {
            Order order = script.place("beef");
            script.later(n % 2 == 0 ? 20 : 240);
            script.allUp(order);
            script.must(new OrderCommand.Hand(order.id()));
        }
        Quote wide = script.place("beef").quote();
        assertTrue(wide.fromSeconds() <= 60 && wide.toSeconds() >= 240, wide.toString());
        assertEquals(240, script.stand().kitchen().quoted().handed());
        for (int n = 0; n < 900; n++) {
            Order order = script.place("beef");
            script.later(90);
            script.allUp(order);
            script.must(new OrderCommand.Hand(order.id()));
        }
        Quote narrow = script.place("beef").quote();
        assertTrue(narrow.toSeconds() - narrow.fromSeconds() <= 120, narrow.toString());
        Quoted newestDay = script.stand().kitchen().quoted();
        assertTrue(newestDay.handed() > 300, "since the cut hour: " + newestDay.handed());
        int within = newestDay.within();
        assertTrue(within * 10 >= newestDay.handed() * 8, within + " of " + newestDay.handed());
    }

    @Test
    void anEditedOrderTeachesNothing() {
        Order order = script.place("beef");
        script.change(order, "2 beef");
        script.later(2_000);
        script.allUp(script.now(order));
        script.must(new OrderCommand.Hand(order.id()));
        assertEquals(0, script.stand().kitchen().quoted().handed());
    }
}
