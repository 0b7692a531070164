package sopwell.kitchen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.kitchen.PaceEvent.Learned;
import sopwell.kitchen.PaceEvent.PaceCarried;
import sopwell.log.Recorded;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.OrderLine;

/** What the stand learns of its own pace, and that it takes it along into the next day. */
class PaceTest {
    private final Script script = new Script();

    @Test
    void timesFromStartToUpTeachHowLongWorkTakes() {
        double menuMs = upInMs("beef");
        for (int n = 0; n < 60; n++) {
            make("beef", 51);
        }
        double factor = 51_000.0 / menuMs;
        assertEquals(1.5, factor, 1e-9, "half as long again as the menu's 34 seconds");
        // The expected time is a mean: a little above the middle, by the variance that is known.
        double learned = upInMs("beef") / menuMs;
        assertEquals(factor, learned, 0.04 * factor);
        double other = upInMs("jus cup") / (1000.0 * seconds("jus cup"));
        assertTrue(other > 1.1 && other < learned, "the line as a whole is slower: " + other);
    }

    @Test
    void sizesAndItemsAreKindsOfTheirOwn() {
        for (int n = 0; n < 60; n++) {
            make("small beef", 25);
            make("large beef", 50);
        }
        double small = upInMs("small beef") / 1000.0;
        double large = upInMs("large beef") / 1000.0;
        assertEquals(25, small, 2.5);
        assertEquals(50, large, 5);
    }

    @Test
    void aForgottenTapTeachesNothing() {
        for (int n = 0; n < 20; n++) {
            make("beef", 34);
        }
        PaceCarried before = script.stand().kitchen().learned();
        make("beef", 40 * 60);
        make("beef", 2);
        assertEquals(before.learned(), script.stand().kitchen().learned().learned());
    }

    @Test
    void oneLongTimeMovesLittleAndWhatIsNewCountsMoreThanWhatIsOld() {
        for (int n = 0; n < 100; n++) {
            make("beef", 34);
        }
        double before = upInMs("beef");
        make("beef", 150);
        assertTrue(upInMs("beef") < 1.05 * before, "one in a hundred");
        for (int n = 0; n < 60; n++) {
            make("beef", 68);
        }
        assertEquals(68_000, upInMs("beef"), 6_800);
    }

    @Test
    void anUpWithoutAStartOrAfterBringingBackTeachesNothing() {
        Order order = script.place("beef");
        PartId part = new PartId(order.id(), 1, "line");
        script.later(100);
        script.must(new KitchenCommand.Up(part));
        assertEquals(List.of(), script.stand().kitchen().learned().learned());
        script.must(new KitchenCommand.BringBack(part));
        script.later(60);
        script.must(new KitchenCommand.Up(part));
        assertEquals(List.of(), script.stand().kitchen().learned().learned());
    }

    @Test
    void aBasketTeachesByTheLoad() {
        for (int n = 0; n < 60; n++) {
            make("4 fries", 230);
        }
        assertEquals(230_000, upInMs("fries"), 11_500);
    }

    @Test
    void whatWasLearnedGoesOnIntoTheNextDayAndARestartKnowsIt() {
        for (int n = 0; n < 30; n++) {
            make("2 beef, fries", 150);
        }
        PaceCarried learned = script.stand().kitchen().learned();
        script.must(new OrderCommand.CloseDay());
        script.at("2026-01-15T11:00").place("beef");
        List<Recorded> log = script.log();
        int opened = 0;
        for (int n = 0; n < log.size(); n++) {
            opened = log.get(n).event() instanceof DayOpened ? n : opened;
        }
        assertEquals(learned, log.get(opened + 1).event());

        Stand restarted = new Stand(Script.SETTINGS);
        restarted.apply(log.get(0));
        log.subList(opened, log.size()).forEach(restarted::apply);
        for (int n = 0; n < 10; n++) {
            int from = script.log().size();
            make("2 beef dipped, fries", 140);
            script.log().subList(from, script.log().size()).forEach(restarted::apply);
        }
        assertAlike(script.stand(), restarted);
        assertNotEquals(learned, restarted.kitchen().learned(), "it learned on");
    }

    @Test
    void theFirstDayOfAStandCarriesNothing() {
        script.place("beef");
        assertTrue(script.log().stream().noneMatch(r -> r.event() instanceof PaceCarried));
    }

    @Test
    void learnedKindsStandInOrder() {
        make("fries, beef, cola", 30);
        List<Learned> learned = script.stand().kitchen().learned().learned();
        List<String> stations = learned.stream().map(Learned::station).toList();
        assertEquals(stations.stream().sorted().toList(), stations);
    }

    private void assertAlike(Stand one, Stand other) {
        long nowMs = script.nowMs() + 5_000;
        assertEquals(one.kitchen().learned(), other.kitchen().learned());
        assertEquals(
                one.kitchen().handsAtWork(script.menu().station("line"), nowMs),
                other.kitchen().handsAtWork(script.menu().station("line"), nowMs));
        assertEquals(one.kitchen().quoted().within(), other.kitchen().quoted().within());
        List<OrderLine> lines =
                List.of(OrderLine.priced(script.menu(), 1, script.asked("2 beef").get(0)));
        assertEquals(
                WaitQuote.quote(one.kitchen(), script.menu(), lines, nowMs),
                WaitQuote.quote(other.kitchen(), script.menu(), lines, nowMs));
    }

    /** Places an order, makes each of its parts in this time by tapping both, and hands it. */
    private void make(String call, int seconds) {
        Order order = script.place(call);
        List<Part> parts = List.copyOf(script.stand().kitchen().parts(order.id()));
        parts.forEach(part -> script.must(new KitchenCommand.Start(part.id())));
        script.later(seconds);
        parts.forEach(part -> script.must(new KitchenCommand.Up(part.id())));
        script.later(20);
        script.must(new OrderCommand.Hand(order.id()));
    }

    /** How long a call's first line is expected to take at its own station, in milliseconds. */
    private double upInMs(String call) {
        Order order = script.place(call);
        Part part = script.stand().kitchen().parts(order.id()).iterator().next();
        Work work = Work.of(part, script.menu());
        double ms = (double) script.stand().kitchen().pace().times().pieceMs(work);
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "only asked"));
        return ms;
    }

    private int seconds(String call) {
        return Router.seconds(script.menu(), script.asked(call).get(0).selection(), "line");
    }
}
