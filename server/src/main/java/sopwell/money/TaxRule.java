package sopwell.money;

import sopwell.Check;

/**
 * A stand's sales tax: one rate on the order's subtotal, in thousandths of a percent (8.25 % is
 * 8,250). Immutable.
 *
 * <p>The tax is carried to the third decimal of a dollar and rounded up when that decimal is more
 * than four, as section 324 of the Streamlined Sales and Use Tax Agreement has it; for amounts of
 * zero and more this is rounding half up on the exact product.
 *
 * @param rateMilliPercent 0 to 100,000 (0 % to 100 %)
 */
public record TaxRule(int rateMilliPercent) {
    private static final long MILLI_PERCENT_ONE = 100_000L;

    public TaxRule {
        Check.that(
                rateMilliPercent >= 0 && rateMilliPercent <= MILLI_PERCENT_ONE,
                "a tax rate is 0 to 100,000 thousandths of a percent");
    }

    /**
     * The tax on a subtotal.
     *
     * @param subtotalCents 0 or more
     * @throws ArithmeticException if the product does not fit a long
     */
    public long taxCents(long subtotalCents) {
        Check.that(subtotalCents >= 0, "tax is on a subtotal of zero or more");
        long product = Math.multiplyExact(subtotalCents, rateMilliPercent);
        return Math.addExact(product, MILLI_PERCENT_ONE / 2) / MILLI_PERCENT_ONE;
    }
}
