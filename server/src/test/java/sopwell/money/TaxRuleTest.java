package sopwell.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.Check;

/** Sales tax on an order. */
class TaxRuleTest {

    @Test
    void roundsUpWhenTheThirdDecimalIsMoreThanFour() {
        // Streamlined Sales and Use Tax Agreement, section 324, as adopted in RCW 82.08.054:
        // carried
        // to the third decimal, rounded up when that is greater than four. Worked here: three items
        // of $0.99 on one invoice at 8.25 % make 0.245025, so 25 cents.
        assertEquals(25, new TaxRule(8_250).taxCents(297));
        assertEquals(8, new TaxRule(8_250).taxCents(99));
    }

    @Test
    void canadasWorkedExampleComesOutToTheCent() {
        // Budget 2012 of Canada, on rounding: 1.83 + 2.86 with 5 % come to 4.92.
        List<Bill.Line> lines = List.of(new Bill.Line(183, true), new Bill.Line(286, true));
        Bill bill = Bill.of(lines, Discount.NONE, new TaxRule(5_000));
        assertEquals(492, bill.totals().totalCents());
    }

    @Test
    void agreesWithDecimalArithmetic() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 20_000; i++) {
            int rate = random.nextInt(100_001);
            long subtotal = random.nextLong(10_000_000);
            long expected =
                    BigDecimal.valueOf(subtotal)
                            .multiply(BigDecimal.valueOf(rate))
                            .divide(BigDecimal.valueOf(100_000), 0, RoundingMode.HALF_UP)
                            .longValueExact();
            assertEquals(expected, new TaxRule(rate).taxCents(subtotal), rate + " of " + subtotal);
        }
    }

    @Test
    void refusesRatesAndSubtotalsOutsideTheirRange() {
        assertThrows(Check.Broken.class, () -> new TaxRule(-1));
        assertThrows(Check.Broken.class, () -> new TaxRule(100_001));
        assertThrows(Check.Broken.class, () -> new TaxRule(1).taxCents(-1));
        assertThrows(ArithmeticException.class, () -> new TaxRule(8_250).taxCents(Long.MAX_VALUE));
    }

    @Test
    void totalsThatDoNotAddUpAreABug() {
        assertThrows(Check.Broken.class, () -> new Totals(100, 0, 8, false, 107));
    }
}
