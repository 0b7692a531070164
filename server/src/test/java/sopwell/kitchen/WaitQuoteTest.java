package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Quote;

/** The wait told to the guest follows the work in front of the order. */
class WaitQuoteTest {
    private final Script script = new Script();

    @Test
    void anEmptyKitchenQuotesTheSlowestStationsOwnWork() {
        Quote quote = script.place("fries").quote();
        int seconds =
                Router.seconds(script.menu(), script.asked("fries").get(0).selection(), "fryer");
        assertEquals(seconds * 85 / 100 / 30 * 30, quote.fromSeconds());
        assertEquals((seconds * 135 / 100 + 60) / 30 * 30 + 30, quote.toSeconds());
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
}
