package sopwell.till;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.money.CashCount;
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.CashUnits;
import sopwell.money.TaxRule;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.Safety;
import sopwell.orders.StandSettings;

/** What is handed over is what is paid and the change, whatever cash is rounded to. */
class ChangeLawsTest {
    private static final List<Long> NOTES = List.of(500L, 1_000L);

    @Test
    void changeAndWhatIsPaidAreWhatWasHandedOver() {
        SplittableRandom random = new SplittableRandom(17);
        for (CashRounding.Tie tie : CashRounding.Tie.values()) {
            holds(random, new CashRule(new CashRounding(1, tie), coins(1, 5, 10, 25, 100)));
            holds(random, new CashRule(new CashRounding(5, tie), coins(5, 10, 25, 100)));
            holds(random, new CashRule(new CashRounding(10, tie), coins(10, 20, 50, 100)));
        }
    }

    private static void holds(SplittableRandom random, CashRule cash) {
        Script script = new Script(settings(cash));
        for (int i = 0; i < 60; i++) {
            Order order = script.place("beef, " + (1 + random.nextInt(9)) + " fries");
            long total = order.totals().totalCents();
            long tendered = (total / 500 + 1 + random.nextInt(20)) * 500;
            Decision decision =
                    script.decide(new TillCommand.Pay(order.id(), "", Means.CASH, 0, tendered, 0));
            Payment paid = ((TillEvent.OrderPaid) decision.events().get(0)).payment();
            String said = cash.rounding() + ": " + total + " of " + tendered;
            assertEquals(tendered, paid.changeCents() + total + paid.roundingCents(), said);
            assertTrue(2 * Math.abs(paid.roundingCents()) <= cash.rounding().stepCents(), said);
            List<CashCount> pieces = cash.units().change(paid.changeCents());
            assertEquals(
                    paid.changeCents(), pieces.stream().mapToLong(CashCount::cents).sum(), said);
        }
    }

    private static CashUnits coins(long... cents) {
        return CashUnits.of(NOTES, java.util.Arrays.stream(cents).boxed().toList());
    }

    private static StandSettings settings(CashRule cash) {
        return new StandSettings(
                "s",
                "S",
                Script.SETTINGS.zone(),
                4,
                new TaxRule(8_250),
                360,
                999,
                cash,
                Safety.USUAL);
    }
}
