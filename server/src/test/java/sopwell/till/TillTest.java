package sopwell.till;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.till.Means.CARD;
import static sopwell.till.Means.CASH;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.CashUnits;
import sopwell.money.Discount;
import sopwell.money.TaxRule;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.orders.Safety;
import sopwell.orders.StandSettings;

/** What may be paid, given back, and done to tills. */
class TillTest {
    private static final String NOBODY = "";
    private Script script;
    private Order order;

    @BeforeEach
    void placeAnOrder() {
        script = new Script();
        order = script.place("beef");
        assertEquals(855, order.totals().totalCents());
    }

    @Test
    void paysExactlyWhatIsDueUnlessToldOtherwise() {
        TillEvent.OrderPaid paid = paid(pay(CASH, 0, 0, 0));
        assertEquals(new Payment(855, 0, 0, 855, 0), paid.payment());
        assertEquals(0, paid.leftCents());
        assertEquals(0, due());
    }

    @Test
    void givesTheChangeOfWhatWasHandedOver() {
        assertEquals(new Payment(855, 0, 0, 2_000, 1_145), paid(pay(CASH, 0, 2_000, 0)).payment());
    }

    @Test
    void keepsTipsApartFromWhatIsPaid() {
        Payment cash = paid(pay(CASH, 500, 2_000, 145)).payment();
        assertEquals(new Payment(500, 145, 0, 2_000, 1_355), cash);
        Payment card = paid(pay(CARD, 0, 0, 100)).payment();
        assertEquals(new Payment(355, 100, 0, 455, 0), card);
        assertEquals(245, tips());
        assertEquals(855, till().of(order.id()).keptCents());
    }

    private long tips() {
        Takings takings = till().of(order.id());
        return takings.cashTipCents() + takings.cardTipCents();
    }

    @Test
    void splitsAnOrderBetweenCashAndCard() {
        assertEquals(355, paid(pay(CASH, 500, 500, 0)).leftCents());
        assertEquals(355, due());
        assertEquals(0, paid(pay(CARD, 0, 0, 0)).leftCents());
        assertEquals(500, till().of(order.id()).cashCents());
        assertEquals(355, till().of(order.id()).cardCents());
    }

    @Test
    void refusesMoreThanIsDue() {
        assertEquals(Reason.MORE_THAN_DUE, Script.reason(pay(CASH, 900, 0, 0)));
        assertEquals(Reason.MORE_THAN_DUE, Script.reason(pay(CARD, 0, 900, 0)));
        assertEquals(900 - 855, paid(pay(CARD, 0, 900, 45)).payment().tipCents());
    }

    @Test
    void refusesTooLittleAndNonsense() {
        assertEquals(Reason.TENDERED_SHORT, Script.reason(pay(CASH, 0, 800, 0)));
        assertEquals(Reason.TENDERED_SHORT, Script.reason(pay(CASH, 0, 855, 1)));
        assertEquals(Reason.AMOUNT_WRONG, Script.reason(pay(CASH, -1, 0, 0)));
        assertEquals(Reason.AMOUNT_WRONG, Script.reason(pay(CASH, 0, 0, -1)));
        assertEquals(Reason.AMOUNT_WRONG, Script.reason(pay(CASH, 0, 4_111_111_111L, 0)));
    }

    @Test
    void refusesToPayWhatIsPaidOrVoidOrNotThere() {
        pay(CASH, 0, 0, 0);
        assertEquals(Reason.NOTHING_DUE, Script.reason(pay(CASH, 0, 0, 0)));
        Order other = script.place("fries");
        script.must(new OrderCommand.VoidOrder(other.id(), 0, "gone"));
        TillCommand.Pay gone = new TillCommand.Pay(other.id(), NOBODY, CASH, 0, 0, 0);
        assertEquals(Reason.ORDER_VOID, Script.reason(script.decide(gone)));
        TillCommand.Pay never = new TillCommand.Pay("20260114-9999", NOBODY, CASH, 0, 0, 0);
        assertEquals(Reason.UNKNOWN_ORDER, Script.reason(script.decide(never)));
    }

    @Test
    void roundsCashAndNothingElse() {
        Script fives = new Script(settings(5));
        Order fries = fives.place("fries");
        assertEquals(373, fries.totals().totalCents());
        Decision cash = fives.decide(new TillCommand.Pay(fries.id(), NOBODY, CASH, 0, 500, 0));
        assertEquals(new Payment(373, 0, 2, 500, 125), paid(cash).payment());
        assertEquals(0, fives.stand().till().dueCents(fives.now(fries)));
        Order again = fives.place("fries");
        Decision card = fives.decide(new TillCommand.Pay(again.id(), NOBODY, CARD, 0, 0, 0));
        assertEquals(new Payment(373, 0, 0, 373, 0), paid(card).payment());
        Order third = fives.place("fries");
        assertEquals(
                Reason.NOT_IN_CASH,
                Script.reason(
                        fives.decide(new TillCommand.Pay(third.id(), NOBODY, CASH, 0, 376, 0))));
    }

    @Test
    void shrinkingOrVoidingAPaidOrderLeavesARefundDue() {
        pay(CASH, 0, 0, 0);
        Order two = script.place("beef, fries");
        script.must(new TillCommand.Pay(two.id(), NOBODY, CARD, 0, 0, 0));
        script.change(two, "beef");
        assertEquals(855 - 1_229, script.stand().till().dueCents(script.now(two)));
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        assertEquals(-855, due());
        TillEvent.OrderRefunded back = refunded(refund(CASH, 0, false, "order was void"));
        assertEquals(855, back.cents());
        assertEquals(0, back.goodwillCents());
        assertEquals(0, due());
    }

    @Test
    void growingAPaidOrderLeavesAnAmountDue() {
        pay(CARD, 0, 0, 0);
        script.change(order, "beef, fries");
        assertEquals(1_229 - 855, due());
        assertEquals(1_229 - 855, paid(pay(CASH, 0, 0, 0)).payment().cents());
    }

    @Test
    void aDiscountOnAPaidOrderLeavesARefundDue() {
        pay(CARD, 0, 0, 0);
        script.allUp(order);
        script.must(new OrderCommand.Hand(order.id()));
        Discount cold = new Discount(Discount.Kind.GUEST, 0, 50_000, "it was cold");
        script.must(new OrderCommand.SetDiscount(order.id(), 0, cold));
        assertEquals(-427, due());
        assertEquals(427, refunded(refund(CARD, 0, false, "it was cold")).cents());
    }

    @Test
    void neverGivesBackMoreThanWasPaidThatWay() {
        pay(CASH, 500, 0, 0);
        pay(CARD, 0, 0, 0);
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        assertEquals(Reason.MORE_THAN_PAID, Script.reason(refund(CASH, 501, false, "gone")));
        assertEquals(500, refunded(refund(CASH, 0, false, "gone")).cents());
        assertEquals(Reason.MORE_THAN_PAID, Script.reason(refund(CASH, 1, false, "gone")));
        assertEquals(355, refunded(refund(CARD, 0, false, "gone")).cents());
        assertEquals(0, due());
        assertEquals(Reason.AMOUNT_WRONG, Script.reason(refund(CARD, 0, false, "gone")));
    }

    @Test
    void whatIsGivenBackBeyondThatIsGoodwillAndNotDueAgain() {
        pay(CASH, 0, 0, 0);
        TillEvent.OrderRefunded back = refunded(refund(CASH, 300, false, "it was cold"));
        assertEquals(300, back.goodwillCents());
        assertEquals(0, due());
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        assertEquals(-555, due(), "what is left of the payment, not more");
    }

    @Test
    void aPaymentTakenByMistakeCanBeTakenBackAndIsDueAgain() {
        pay(CARD, 0, 0, 0);
        TillEvent.OrderRefunded back = refunded(refund(CARD, 855, true, "it was cash"));
        assertEquals(0, back.goodwillCents());
        assertEquals(855, back.leftCents());
        assertEquals(855, due());
    }

    @Test
    void aRefundNeedsItsReason() {
        pay(CASH, 0, 0, 0);
        assertEquals(Reason.REASON_MISSING, Script.reason(refund(CASH, 100, false, " ")));
        assertEquals(
                Reason.CARD_NUMBER,
                Script.reason(refund(CASH, 100, false, "to 4111 1111 1111 1111")));
    }

    @Test
    void openingATillOpensTheDay() {
        Script fresh = new Script();
        assertTrue(!fresh.stand().orders().isDayOpen());
        fresh.must(new TillCommand.OpenTill("Ana", 10_000));
        assertTrue(fresh.stand().orders().isDayOpen());
        assertEquals(10_000, fresh.stand().till().open("ana").orElseThrow().expectedCents());
    }

    @Test
    void followsWhatShouldBeInATill() {
        script.must(new TillCommand.OpenTill("Ana", 10_000));
        script.must(new TillCommand.PayIn("Ana", 2_000, "coins from the bank"));
        script.must(new TillCommand.PayOut("", 1_250, "ice"));
        pay(CASH, 0, 2_000, 100);
        assertEquals(10_000 + 2_000 - 1_250 + 955, expected("Ana"));
        refund(CASH, 300, false, "cold");
        assertEquals(10_000 + 2_000 - 1_250 + 655, expected("Ana"));
        pay(CARD, 0, 0, 0);
        assertEquals(10_000 + 2_000 - 1_250 + 655, expected("Ana"));
    }

    @Test
    void closesATillWithWhatWasCounted() {
        script.must(new TillCommand.OpenTill("Ana", 10_000));
        pay(CASH, 0, 0, 0);
        List<TillCommand.Pieces> counts =
                List.of(
                        new TillCommand.Pieces(10_000, 1),
                        new TillCommand.Pieces(25, 30),
                        new TillCommand.Pieces(1, 5),
                        new TillCommand.Pieces(5, 0));
        script.must(new TillCommand.CloseTill("ANA", counts));
        Drawer drawer = till().drawers().get(0);
        assertEquals(10_855, drawer.counted().orElseThrow().expectedCents());
        assertEquals(10_755, drawer.counted().orElseThrow().countedCents());
        assertEquals(-100, drawer.counted().orElseThrow().overCents());
        assertEquals(3, drawer.counted().orElseThrow().counts().size());
    }

    @Test
    void refusesWhatATillCannotDo() {
        TillCommand.PayIn in = new TillCommand.PayIn("", 100, "coins");
        assertEquals(Reason.NO_TILL_OPEN, Script.reason(script.decide(in)));
        assertEquals(Reason.CASHIER_MISSING, Script.reason(open(" ", 0)));
        assertEquals(Reason.AMOUNT_WRONG, Script.reason(open("Ana", -5)));
        assertEquals(Reason.CARD_NUMBER, Script.reason(open("4111-1111-1111-1111", 100)));
        open("Ana", 1_000);
        assertEquals(Reason.TILL_OPEN, Script.reason(open("ana", 0)));
        open("Theo", 0);
        assertEquals(Reason.WHICH_TILL, Script.reason(script.decide(in)));
        TillCommand.PayIn ines = new TillCommand.PayIn("Ines", 100, "coins");
        assertEquals(Reason.TILL_NOT_OPEN, Script.reason(script.decide(ines)));
        TillCommand.PayOut much = new TillCommand.PayOut("Ana", 1_001, "ice");
        assertEquals(Reason.TILL_SHORT, Script.reason(script.decide(much)));
        TillCommand.PayOut why = new TillCommand.PayOut("Ana", 1_000, "");
        assertEquals(Reason.REASON_MISSING, Script.reason(script.decide(why)));
        TillCommand.PayOut none = new TillCommand.PayOut("Ana", 0, "ice");
        assertEquals(Reason.AMOUNT_WRONG, Script.reason(script.decide(none)));
    }

    @Test
    void refusesCountsThatCannotBe() {
        open("Ana", 0);
        assertEquals(Reason.UNKNOWN_UNIT, Script.reason(close("Ana", 2, 1)));
        assertEquals(Reason.COUNT_WRONG, Script.reason(close("Ana", 25, -1)));
        assertEquals(Reason.COUNT_WRONG, Script.reason(close("Ana", 25, 100_001)));
        assertTrue(!close("Ana", 25, 100_000).isRefused());
        assertEquals(Reason.NO_TILL_OPEN, Script.reason(close("Ana", 25, 1)));
    }

    @Test
    void theDayIsNotClosedOverAnOpenTill() {
        script.must(new OrderCommand.VoidOrder(order.id(), 0, "gone"));
        open("Ana", 0);
        assertEquals(Reason.TILLS_OPEN, Script.reason(script.decide(new OrderCommand.CloseDay())));
        close("Ana", 25, 0);
        script.must(new OrderCommand.CloseDay());
    }

    @Test
    void aTillLeftOpenAtTheCutCanStillBeCountedUntilTheNextDay() {
        open("Ana", 500);
        script.at("2026-01-15T09:00");
        script.must(new OrderCommand.CutDay());
        assertTrue(!close("Ana", 100, 5).isRefused());
        open("Ana", 700);
        assertEquals(1, till().drawers().size(), "the new day has its own tills");
    }

    @Test
    void aTillStaysOpenWhenItsDayGoesOn() {
        StandSettings three =
                new StandSettings(
                        "s",
                        "S",
                        Script.SETTINGS.zone(),
                        15,
                        new TaxRule(0),
                        360,
                        999,
                        CashRule.USUAL,
                        Safety.USUAL);
        Script afternoon = new Script(three);
        afternoon.must(new TillCommand.OpenTill("Ana", 500));
        afternoon.at("2026-01-14T15:30");
        Decision again = afternoon.decide(new TillCommand.OpenTill("Ana", 500));
        assertEquals(Reason.TILL_OPEN, Script.reason(again));
        afternoon.place("fries");
        assertEquals(1, afternoon.stand().till().open().size());
    }

    @Test
    void moneyIsTakenWithoutATillAndNotedApart() {
        pay(CASH, 500, 0, 0);
        open("Ana", 1_000);
        TillEvent.OrderPaid paid =
                paid(script.decide(new TillCommand.Pay(order.id(), "Theo", CASH, 100, 0, 0)));
        assertEquals("Theo", paid.cashier());
        assertEquals(600, till().apart().cashCents());
        pay(CASH, 0, 0, 0);
        assertEquals(600, till().apart().cashCents());
        assertEquals(1_255, expected("Ana"));
    }

    @Test
    void anUnnamedPaymentWithSeveralTillsOpenIsNotedApart() {
        open("Ana", 0);
        open("Theo", 0);
        pay(CASH, 0, 0, 0);
        assertEquals(855, till().apart().drawerCents());
        assertEquals(0, expected("Ana") + expected("Theo"));
    }

    @Test
    void aRefundComesOutOfNoEmptyTill() {
        pay(CASH, 0, 0, 0);
        open("Ana", 100);
        assertEquals(Reason.TILL_SHORT, Script.reason(refund(CASH, 200, false, "cold")));
    }

    private static StandSettings settings(int roundToCents) {
        return new StandSettings(
                "s",
                "S",
                Script.SETTINGS.zone(),
                4,
                new TaxRule(8_250),
                360,
                999,
                new CashRule(
                        new CashRounding(roundToCents, CashRounding.Tie.DOWN),
                        CashUnits.of(List.of(500L, 1_000L), List.of(5L, 10L, 25L, 100L))),
                Safety.USUAL);
    }

    private Till till() {
        return script.stand().till();
    }

    private long due() {
        return till().dueCents(script.now(order));
    }

    private long expected(String cashier) {
        return till().open(cashier).orElseThrow().expectedCents();
    }

    private Decision pay(Means means, long cents, long tenderedCents, long tipCents) {
        return script.decide(
                new TillCommand.Pay(order.id(), NOBODY, means, cents, tenderedCents, tipCents));
    }

    private Decision refund(Means means, long cents, boolean dueAgain, String reason) {
        return script.decide(
                new TillCommand.Refund(order.id(), NOBODY, means, cents, dueAgain, reason));
    }

    private Decision open(String cashier, long floatCents) {
        return script.decide(new TillCommand.OpenTill(cashier, floatCents));
    }

    private Decision close(String cashier, long cents, long pieces) {
        return script.decide(
                new TillCommand.CloseTill(cashier, List.of(new TillCommand.Pieces(cents, pieces))));
    }

    private static TillEvent.OrderPaid paid(Decision decision) {
        assertTrue(!decision.isRefused(), decision.refusal().toString());
        return (TillEvent.OrderPaid) decision.events().get(0);
    }

    private static TillEvent.OrderRefunded refunded(Decision decision) {
        assertTrue(!decision.isRefused(), decision.refusal().toString());
        return (TillEvent.OrderRefunded) decision.events().get(0);
    }
}
