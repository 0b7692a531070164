package sopwell.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.desk.Script.reason;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.Limits;
import sopwell.desk.Script;
import sopwell.money.CashRule;
import sopwell.money.Discount;
import sopwell.money.TaxRule;
import sopwell.money.Totals;

/** What may be done to orders, and what is refused. */
class OrdersTest {
    private final Script script = new Script();

    @Test
    void anOrderHasANumberAPriceAndALineForEachThing() {
        Order order = script.place("2 beef dipped hot, fries", "Ines", true);

        assertEquals(1, order.number());
        assertEquals("Ines", order.name());
        assertEquals(List.of(1, 2), order.lines().stream().map(OrderLine::line).toList());
        assertEquals(2 * 790 + 345, order.totals().subtotalCents());
        // 1925 x 8.25 % = 158.8125 cents
        assertEquals(159, order.totals().taxCents());
        assertEquals(1925 + 159, order.totals().totalCents());
        assertEquals("20260114-0001", order.id());
    }

    @Test
    void anEditKeepsTheNumbersOfLinesThatStay() {
        Order order = script.place("2 beef dipped hot, fries, cola");

        assertFalse(script.change(order, "fries, 2 beef dipped sweet, hot dog").isRefused());

        Order now = script.now(order);
        assertEquals(2, now.version());
        assertEquals(List.of(2, 1, 4), now.lines().stream().map(OrderLine::line).toList());
        assertEquals(345 + 2 * 790 + 395, now.totals().subtotalCents());
    }

    @Test
    void aLineThatIsMadeTheSameKeepsItsPriceAndAnAlteredOneIsPricedAnew() {
        Order order = script.place("beef dipped");
        assertFalse(script.change(order, "3 beef dipped").isRefused());
        assertEquals(3 * 790, script.now(order).totals().subtotalCents());
        assertFalse(script.change(script.now(order), "3 beef dipped provolone").isRefused());
        assertEquals(3 * (790 + 75), script.now(order).totals().subtotalCents());
        assertEquals(1, script.now(order).lines().get(0).line());
    }

    @Test
    void aDiscountComesOffBeforeTaxAndStaysThroughEdits() {
        Order order = script.place("beef");
        Discount half = new Discount(Discount.Kind.GUEST, 0, 50_000, "waited too long");
        script.must(new OrderCommand.SetDiscount(order.id(), 1, half));
        assertEquals(new Totals(790, 395, 33, false, 428), script.now(order).totals());
        assertEquals(2, script.now(order).version());
        script.change(script.now(order), "beef, fries");
        assertEquals(new Totals(1135, 568, 47, false, 614), script.now(order).totals());
        script.must(new OrderCommand.SetDiscount(order.id(), 0, Discount.NONE));
        assertEquals(1229, script.now(order).totals().totalCents());
    }

    @Test
    void refusesDiscountsThatMeanNothing() {
        Order order = script.place("beef");
        assertEquals(Reason.REASON_MISSING, discount(order, 0, 100, " "));
        assertEquals(Reason.DISCOUNT_TOO_LARGE, discount(order, 0, 791, "why"));
        assertEquals(Reason.STALE_VERSION, discount(order, 2, 100, "why"));
        assertEquals(Reason.NOTHING_CHANGED, discount(order, 0, 0, "why"));
        assertEquals(Reason.CARD_NUMBER, discount(order, 0, 100, "4111111111111111"));
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        assertEquals(Reason.ORDER_VOID, discount(order, 0, 100, "why"));
    }

    private Reason discount(Order order, int version, long cents, String reason) {
        Discount discount = new Discount(Discount.Kind.GUEST, cents, 0, reason);
        return Script.reason(
                script.decide(new OrderCommand.SetDiscount(order.id(), version, discount)));
    }

    @Test
    void theSecondOfTwoEditorsIsRefusedAndNothingChanges() {
        Order seen = script.place("beef dipped");
        script.change(seen, "beef dry");

        assertEquals(Reason.STALE_VERSION, reason(script.change(seen, "beef twice")));
        assertEquals("dry", script.now(seen).lines().get(0).selection().options().get(0));
    }

    @Test
    void saysLineByLineWhatBecameOfAnOrderSinceAVersion() {
        Order seen = script.place("beef dipped, fries, cola");
        script.change(seen, "beef dry, cola, hot dog");
        script.change(script.now(seen), "beef wet, 2 cola, hot dog");

        Meanwhile meanwhile = script.stand().orders().since(seen.id(), 1).orElseThrow();
        assertEquals(3, meanwhile.now().version());
        assertEquals(
                List.of("1 dipped>wet", "2 1x>2x", "3 new", "2 gone"),
                meanwhile.lines().stream().map(OrdersTest::said).toList());
        assertEquals(
                List.of("1 dry>wet", "2 1x>2x"),
                script.stand().orders().since(seen.id(), 2).orElseThrow().lines().stream()
                        .map(OrdersTest::said)
                        .toList());
        assertTrue(script.stand().orders().since(seen.id(), 3).isEmpty(), "that is the present");
    }

    private static String said(Meanwhile.LineChange change) {
        if (change.before().isEmpty() || change.after().isEmpty()) {
            return change.number() + (change.before().isEmpty() ? " new" : " gone");
        }
        OrderLine before = change.before().get();
        OrderLine after = change.after().get();
        return before.selection().equals(after.selection())
                ? change.number() + " " + before.quantity() + "x>" + after.quantity() + "x"
                : change.number()
                        + " "
                        + before.selection().options().get(0)
                        + ">"
                        + after.selection().options().get(0);
    }

    @Test
    void remembersOnlySoManyVersionsOfAnOrder() {
        Order order = script.place("beef dipped");
        for (int i = 0; i <= Limits.ORDER_VERSIONS_MAX; i++) {
            script.change(script.now(order), i % 2 == 0 ? "beef dry" : "beef dipped");
        }
        assertTrue(script.stand().orders().since(order.id(), 1).isEmpty());
        assertTrue(script.stand().orders().since(order.id(), 2).isPresent());
    }

    @Test
    void twoLinesThatBecomeAlikeKeepTheirPlaces() {
        Order order = script.place("beef dipped, beef dry");
        script.change(order, "beef dry, beef dry");
        assertEquals(
                List.of(1, 2), script.now(order).lines().stream().map(OrderLine::line).toList());
    }

    @Test
    void anEditThatChangesNothingIsRefused() {
        Order order = script.place("beef dipped");
        assertEquals(Reason.NOTHING_CHANGED, reason(script.change(order, "beef dipped")));
    }

    @Test
    void anOrderWithoutLinesIsRefused() {
        Order order = script.place("beef");
        OrderCommand.Change empty = new OrderCommand.Change(order.id(), 1, "", true, List.of(), "");
        assertEquals(Reason.NO_LINES, reason(script.decide(empty)));
        OrderCommand.Place nothing = new OrderCommand.Place("", true, List.of());
        assertEquals(Reason.NO_LINES, reason(script.decide(nothing)));
    }

    @Test
    void quantitiesOutsideOneToNinetyNineAreRefused() {
        Asked beef = script.asked("beef").get(0);
        for (int quantity : new int[] {Integer.MIN_VALUE, -1, 0, 100, Integer.MAX_VALUE}) {
            OrderCommand.Place place =
                    new OrderCommand.Place(
                            "", true, List.of(new Asked(quantity, beef.selection())));
            assertEquals(Reason.QUANTITY, reason(script.decide(place)), "" + quantity);
        }
        assertTrue(script.stand().orders().all().isEmpty());
    }

    @Test
    void aVoidNeedsAReasonAndEndsTheOrder() {
        Order order = script.place("beef");
        assertEquals(
                Reason.REASON_MISSING,
                reason(script.decide(new OrderCommand.VoidOrder(order.id(), 0, "  "))));

        script.must(new OrderCommand.VoidOrder(order.id(), 1, "guest left"));

        assertTrue(script.now(order).isVoid());
        assertEquals(
                Reason.ORDER_VOID,
                reason(script.decide(new OrderCommand.VoidOrder(order.id(), 0, "again"))));
        assertEquals(Reason.ORDER_VOID, reason(script.change(script.now(order), "fries")));
        assertEquals(Reason.ORDER_VOID, reason(script.decide(new OrderCommand.Hand(order.id()))));
        assertEquals(
                Reason.ORDER_VOID, reason(script.decide(new OrderCommand.BringBack(order.id()))));
    }

    @Test
    void anOrderIsHandedOnlyWhenWholeAndCanBeBroughtBack() {
        Order order = script.place("beef, fries");
        assertEquals(Reason.NOT_WHOLE, reason(script.decide(new OrderCommand.Hand(order.id()))));

        script.allUp(order);
        script.later(30).must(new OrderCommand.Hand(order.id()));

        assertTrue(script.now(order).isHanded());
        assertEquals(Reason.ORDER_HANDED, reason(script.decide(new OrderCommand.Hand(order.id()))));
        script.must(new OrderCommand.BringBack(order.id()));
        assertTrue(script.now(order).isOpen());
        assertEquals(
                Reason.ORDER_NOT_HANDED,
                reason(script.decide(new OrderCommand.BringBack(order.id()))));
    }

    @Test
    void whatIsNotOnTheBooksIsRefused() {
        script.place("beef");
        assertEquals(
                Reason.UNKNOWN_ORDER,
                reason(script.decide(new OrderCommand.Hand("20260114-0999"))));
    }

    @Test
    void aNumberIsNeverOnTwoOpenOrders() {
        StandSettings few =
                new StandSettings(
                        "s",
                        "S",
                        Script.SETTINGS.zone(),
                        4,
                        new TaxRule(0),
                        360,
                        3,
                        CashRule.USUAL,
                        Safety.USUAL);
        Script small = new Script(few);
        Order first = small.place("beef");
        Order second = small.place("beef");
        small.place("beef");
        assertEquals(
                Reason.NUMBERS_USED_UP,
                reason(small.decide(new OrderCommand.Place("", true, small.asked("beef")))));
        small.allUp(second);
        small.must(new OrderCommand.Hand(second.id()));

        Order fourth = small.place("fries");

        assertEquals(2, fourth.number());
        assertNotEquals(second.id(), fourth.id());
        assertEquals(
                Reason.NUMBER_TAKEN, reason(small.decide(new OrderCommand.BringBack(second.id()))));
        assertEquals(1, first.number());
    }

    @Test
    void namesAndReasonsHaveLimitsAndNoControlCharacters() {
        List<Asked> beef = script.asked("beef");
        assertEquals(
                Reason.TEXT_TOO_LONG,
                reason(script.decide(new OrderCommand.Place("x".repeat(41), true, beef))));
        for (String unclear : List.of("a\u0000b", "a\nb", "a\u202eb", "\ud800")) {
            assertEquals(
                    Reason.TEXT_UNCLEAR,
                    reason(script.decide(new OrderCommand.Place(unclear, true, beef))));
        }
        assertFalse(script.decide(new OrderCommand.Place("Zoë 雪", true, beef)).isRefused());
    }

    @Test
    void anItemOfCertainDaysIsRefusedOnOthers() {
        OrderCommand.Place egg = new OrderCommand.Place("", true, script.asked("pepper and egg"));
        assertEquals(Reason.NOT_TODAY, reason(script.decide(egg)));
        script.at("2026-01-16T12:00");
        assertFalse(script.decide(egg).isRefused());
    }
}
