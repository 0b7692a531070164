package sopwell.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds for all money, tried over seeded orders; a failure names its seed. */
class MoneyLawsTest {
    private static final int TRIES = 4_000;
    private static final CashUnits CANADIAN =
            CashUnits.of(
                    List.of(10_000L, 5_000L, 2_000L, 1_000L, 500L),
                    List.of(200L, 100L, 25L, 10L, 5L));
    private static final CashUnits NEW_ZEALAND =
            CashUnits.of(
                    List.of(10_000L, 5_000L, 2_000L, 1_000L, 500L),
                    List.of(200L, 100L, 50L, 20L, 10L));
    private static final CashUnits EURO =
            CashUnits.of(
                    List.of(10_000L, 5_000L, 2_000L, 1_000L, 500L),
                    List.of(200L, 100L, 50L, 20L, 10L, 5L, 2L, 1L));

    @Test
    void theLinesAddUpToTheOrder() {
        for (long seed = 0; seed < TRIES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Bill bill = Bill.of(lines(random), discount(random), tax(random));
            Totals totals = bill.totals();
            List<Bill.Share> shares = bill.shares();
            String said = "seed " + seed;
            assertEquals(totals.subtotalCents(), sum(shares, Bill.Share::cents), said);
            assertEquals(totals.discountCents(), sum(shares, Bill.Share::discountCents), said);
            assertEquals(totals.taxCents(), sum(shares, Bill.Share::taxCents), said);
            assertEquals(totals.totalCents(), sum(shares, Bill.Share::totalCents), said);
            for (Bill.Share share : shares) {
                assertTrue(share.discountCents() <= share.cents(), said);
                assertTrue(share.discountCents() >= 0 && share.taxCents() >= 0, said);
            }
        }
    }

    @Test
    void aShareIsWithinACentOfItsProportion() {
        for (long seed = 0; seed < TRIES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Bill.Line> lines = lines(random);
            Bill bill = Bill.of(lines, discount(random), new TaxRule(0));
            Totals totals = bill.totals();
            for (Bill.Share share : bill.shares()) {
                long exact = share.cents() * totals.discountCents();
                long found = share.discountCents() * totals.subtotalCents();
                String said = "seed " + seed;
                assertTrue(Math.abs(exact - found) <= totals.subtotalCents(), said);
            }
        }
    }

    @Test
    void taxByLineAndByOrderDifferByLessThanACentALine() {
        for (long seed = 0; seed < TRIES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Bill.Line> lines = lines(random);
            Discount discount = discount(random);
            TaxRule one = tax(random);
            TaxRule other =
                    new TaxRule(
                            one.rateMilliPercent(),
                            one.basis() == TaxRule.Basis.ORDER
                                    ? TaxRule.Basis.LINE
                                    : TaxRule.Basis.ORDER,
                            one.rounding(),
                            one.included());
            long apart =
                    Bill.of(lines, discount, one).totals().taxCents()
                            - Bill.of(lines, discount, other).totals().taxCents();
            assertTrue(Math.abs(apart) < lines.size(), "seed " + seed + ": " + apart);
        }
    }

    @Test
    void taxAgreesWithDecimalArithmetic() {
        for (long seed = 0; seed < TRIES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            TaxRule tax = tax(random);
            long cents = random.nextLong(10_000_000);
            BigDecimal rate = BigDecimal.valueOf(tax.rateMilliPercent(), 5);
            RoundingMode mode =
                    switch (tax.rounding()) {
                        case HALF_UP -> RoundingMode.HALF_UP;
                        case HALF_EVEN -> RoundingMode.HALF_EVEN;
                        case DOWN -> RoundingMode.DOWN;
                    };
            BigDecimal exact = BigDecimal.valueOf(cents).multiply(rate);
            BigDecimal divisor = tax.included() ? rate.add(BigDecimal.ONE) : BigDecimal.ONE;
            assertEquals(
                    exact.divide(divisor, 0, mode).longValueExact(),
                    tax.taxCents(cents),
                    "seed " + seed + ": " + tax + " of " + cents);
        }
    }

    @Test
    void sharesOfHugeAmountsAddUpToo() {
        long most = 99L * 100_000_000L * 2;
        long[] weights = new long[40];
        Arrays.fill(weights, most);
        weights[7] = 1;
        long amount = 39 * most - 12_345;
        long[] parts = Shares.of(amount, weights);
        assertEquals(amount, Arrays.stream(parts).sum());
        assertTrue(parts[7] <= 1 && parts[0] <= most);
    }

    @Test
    void changeIsMadeOfAsFewPiecesAsPossible() {
        for (CashUnits units : List.of(CashUnits.USUAL, CANADIAN, NEW_ZEALAND, EURO)) {
            int least = (int) units.leastCents();
            int[] fewest = fewest(units, 20_000 / least);
            for (int amount = 0; amount < fewest.length; amount++) {
                List<CashCount> change = units.change((long) amount * least);
                long pieces = change.stream().mapToLong(CashCount::pieces).sum();
                long worth = change.stream().mapToLong(CashCount::cents).sum();
                assertEquals((long) amount * least, worth);
                assertEquals(fewest[amount], pieces, units + ": " + amount * least);
            }
        }
    }

    /** The slow way: the fewest pieces of every amount, from those of all smaller ones. */
    private static int[] fewest(CashUnits units, int amounts) {
        int[] fewest = new int[amounts];
        for (int amount = 1; amount < amounts; amount++) {
            fewest[amount] = Integer.MAX_VALUE;
            for (CashUnit unit : units.units()) {
                int piece = (int) (unit.cents() / units.leastCents());
                if (piece <= amount) {
                    fewest[amount] = Math.min(fewest[amount], fewest[amount - piece] + 1);
                }
            }
        }
        return fewest;
    }

    @Test
    void roundingMovesNoAmountByMoreThanHalfAStep() {
        for (int step : List.of(1, 2, 5, 10, 20, 50, 100, 1_000)) {
            for (CashRounding.Tie tie : CashRounding.Tie.values()) {
                CashRounding rounding = new CashRounding(step, tie);
                for (long cents = 0; cents < 3_000; cents++) {
                    long rounded = rounding.roundCents(cents);
                    assertEquals(0, rounded % step);
                    assertTrue(2 * Math.abs(rounded - cents) <= step, rounding + ": " + cents);
                    assertEquals(rounded, rounding.roundCents(rounded), "twice is once");
                }
            }
        }
    }

    @Test
    void whatAGuestHandsOverIsNotesThatAreEnough() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < TRIES; i++) {
            long due = random.nextLong(30_000);
            for (CashUnits units : List.of(CashUnits.USUAL, CANADIAN)) {
                long before = due;
                for (long tender : units.tendersCents(due)) {
                    assertTrue(tender > before, "the least first");
                    assertTrue(units.change(tender).stream().allMatch(c -> c.unit().note()));
                    before = tender;
                }
            }
        }
    }

    private static List<Bill.Line> lines(SplittableRandom random) {
        List<Bill.Line> lines = new ArrayList<>();
        int count = 1 + random.nextInt(random.nextInt(4) == 0 ? 40 : 5);
        for (int i = 0; i < count; i++) {
            long cents = random.nextInt(8) == 0 ? random.nextLong(3) : random.nextLong(2_000);
            lines.add(new Bill.Line(cents, random.nextInt(4) > 0));
        }
        return lines;
    }

    private static Discount discount(SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> new Discount(Discount.Kind.GUEST, random.nextLong(3_000), 0, "why");
            case 1 ->
                    new Discount(
                            Discount.Kind.GUEST,
                            0,
                            random.nextInt(Discount.MILLI_PERCENT_ALL + 1),
                            "why");
            case 2 -> new Discount(Discount.Kind.STAFF_MEAL, 0, 100_000, "why");
            default -> Discount.NONE;
        };
    }

    private static TaxRule tax(SplittableRandom random) {
        int most = random.nextInt(10) == 0 ? 100_001 : 26_000;
        return new TaxRule(
                random.nextInt(most),
                random.nextBoolean() ? TaxRule.Basis.LINE : TaxRule.Basis.ORDER,
                List.of(Rounding.values()).get(random.nextInt(Rounding.values().length)),
                random.nextBoolean());
    }

    private static long sum(
            List<Bill.Share> shares, java.util.function.ToLongFunction<Bill.Share> part) {
        return shares.stream().mapToLong(part).sum();
    }
}
