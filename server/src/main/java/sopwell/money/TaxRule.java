package sopwell.money;

import sopwell.Check;

/**
 * A stand's sales tax. Immutable.
 *
 * <p>With {@link Basis#ORDER} the tax is worked out once, on everything taxed that is on the order;
 * with {@link Basis#LINE} on each line, quantity times price, and the lines' taxes are added up.
 * Section 324 of the Streamlined Sales and Use Tax Agreement leaves the choice to the seller. The
 * two differ by less than a cent a line.
 *
 * @param rateMilliPercent the rate in thousandths of a percent, 0 to 100,000: 8.25 % is 8,250
 * @param rounding what becomes of a fraction of a cent
 * @param included whether the menu's prices have the tax in them already
 */
public record TaxRule(int rateMilliPercent, Basis basis, Rounding rounding, boolean included) {
    private static final long MILLI_PERCENT_ONE = 100_000L;

    /** What the tax is worked out on. */
    public enum Basis {
        /** The whole order, rounded once. */
        ORDER,
        /** Each line, rounded each time. */
        LINE
    }

    public TaxRule {
        Check.that(
                rateMilliPercent >= 0 && rateMilliPercent <= MILLI_PERCENT_ONE,
                "a tax rate is 0 to 100,000 thousandths of a percent");
    }

    /** A tax on the whole order, rounded half up and added to the menu's prices. */
    public TaxRule(int rateMilliPercent) {
        this(rateMilliPercent, Basis.ORDER, Rounding.HALF_UP, false);
    }

    /**
     * The tax on an amount, or in it when prices include it.
     *
     * @param amountCents 0 or more
     * @throws ArithmeticException if the product does not fit a long
     */
    public long taxCents(long amountCents) {
        Check.that(amountCents >= 0, "tax is on an amount of zero or more");
        long product = Math.multiplyExact(amountCents, rateMilliPercent);
        long divisor = included ? MILLI_PERCENT_ONE + rateMilliPercent : MILLI_PERCENT_ONE;
        return rounding.quotient(product, divisor);
    }
}
