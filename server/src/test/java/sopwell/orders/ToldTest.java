package sopwell.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.kitchen.Part;
import sopwell.menu.Menu;
import sopwell.mix.DayTally;
import sopwell.mix.Mix;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.WaitTally;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OrderEvent.OrderTold;
import sopwell.storage.MenuReader;
import sopwell.storage.MenuWriter;

/** What a guest was told while the stand could not be asked, and when it holds. */
class ToldTest {
    private static final int MINUTE_MS = 60_000;

    private final Script script = new Script();
    private final Menu dearer = edited("\"priceCents\":345", "\"priceCents\":995");

    @Test
    void goesInAtThePriceOfTheMenuThatItWasToldBy() {
        Order order = placed(told(dearer, 1_077, 7 * MINUTE_MS));

        assertEquals(995, order.lines().get(0).unitCents());
        assertEquals(1_077, order.totals().totalCents());
        assertEquals(script.menu().revision(), order.menuRevision(), "made by the menu of today");
        assertEquals(dearer.revision(), order.toldMenu());
        assertTrue(order.isAtToldPrice());
        assertEquals(1, mix().counts().toldPrices());
    }

    @Test
    void countsTheWaitFromTheCall() {
        Order order = placed(told(script.menu(), 373, 7 * MINUTE_MS));

        assertFalse(order.isAtToldPrice());
        assertTrue(order.isTakenBefore());
        assertEquals(script.nowMs() - 7 * MINUTE_MS, order.takenAtMs());
        Part part = script.stand().kitchen().parts(order.id()).iterator().next();
        assertEquals(order.takenAtMs(), part.placedAtMs());
        script.later(60);
        script.allUp(order);
        WaitTally waits =
                WaitTally.of(
                        script.stand().orders().date().orElseThrow(),
                        script.stand().orders(),
                        script.stand().kitchen(),
                        script.stand().settings().zone());
        assertEquals(8 * 60, waits.orders().get(0).toUp());
        assertEquals(1, mix().counts().takenBefore());
    }

    @Test
    void whatIsSentAtOnceIsAnOrderLikeAnyOther() {
        Order order = placed(told(script.menu(), 373, 2_000));
        assertFalse(order.isTakenBefore());
        assertEquals(
                List.of(OrderPlaced.class),
                script.log().stream()
                        .map(recorded -> recorded.event().getClass())
                        .filter(type -> type == OrderPlaced.class || type == OrderTold.class)
                        .toList());
    }

    @Test
    void nobodyChoosesAPrice() {
        for (long cents : new long[] {0, 1, 372, 374, 1_077, -373, Long.MAX_VALUE}) {
            Told told = told(script.menu(), cents, MINUTE_MS);
            assertEquals(Reason.TOLD_PRICE, reason(script.decide(fries(told))), "" + cents);
        }
        assertEquals(Reason.TOLD_PRICE, reason(script.decide(fries(told(dearer, 373, MINUTE_MS)))));
        assertTrue(script.stand().orders().all().isEmpty());
    }

    @Test
    void aCallOfYesterdayIsNotPlacedByItself() {
        int day = 24 * 60 * MINUTE_MS;
        assertEquals(
                Reason.TOLD_TIME,
                reason(script.decide(fries(told(script.menu(), 373, day + 1_000)))));
        assertEquals(
                Reason.TOLD_TIME,
                reason(script.decide(fries(told(script.menu(), 373, -10 * MINUTE_MS)))));
        assertFalse(script.decide(fries(told(script.menu(), 373, day - 1_000))).isRefused());
    }

    @Test
    void aClockThatIsALittleAheadIsForgiven() {
        Order order = placed(told(script.menu(), 373, -2 * MINUTE_MS));
        assertEquals(script.nowMs(), order.takenAtMs());
    }

    @Test
    void whatTheMenuOfTodayCanNotMakeIsRefused() {
        Menu other = edited("\"id\":\"fries\"", "\"id\":\"chips\"");
        List<Asked> asked =
                List.of(
                        new Asked(
                                1,
                                new sopwell.call.CallParser(other)
                                        .read("fries")
                                        .lines()
                                        .get(0)
                                        .selection()));
        Told told = told(other, 373, MINUTE_MS);
        assertEquals(
                Reason.MENU_CHANGED,
                reason(script.decide(new OrderCommand.Place("", true, asked, Optional.of(told)))));
    }

    private Told told(Menu menu, long cents, long agoMs) {
        return new Told(menu, cents, script.nowMs() - agoMs);
    }

    private OrderCommand.Place fries(Told told) {
        return new OrderCommand.Place("", true, script.asked("fries"), Optional.of(told));
    }

    private Order placed(Told told) {
        script.must(fries(told));
        return script.stand().orders().all().iterator().next();
    }

    private Mix mix() {
        LocalDate date = script.stand().orders().date().orElseThrow();
        return Mix.of(
                Period.day(date),
                List.of(
                        DayTally.of(
                                date,
                                script.stand().orders(),
                                script.stand().settings().zone(),
                                script.stand()::menuOf)),
                new Names(List.of(script.menu())));
    }

    private Menu edited(String from, String to) {
        String json = MenuWriter.tree(script.menu().parts()).toString();
        assertTrue(json.contains(from), json);
        byte[] bytes = json.replace(from, to).getBytes(StandardCharsets.UTF_8);
        return MenuReader.read(bytes).menu().orElseThrow();
    }
}
