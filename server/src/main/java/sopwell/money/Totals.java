package sopwell.money;

import sopwell.Check;

/**
 * What an order costs, in cents; tax is on the whole order, rounded once. Immutable.
 *
 * @param subtotalCents the sum of the lines, 0 or more
 * @param taxCents sales tax, 0 or more
 * @param totalCents subtotal and tax
 */
public record Totals(long subtotalCents, long taxCents, long totalCents) {
    public Totals {
        Check.that(
                Math.addExact(subtotalCents, taxCents) == totalCents,
                "a total is its subtotal and its tax");
    }

    /** The totals of a subtotal under a tax rule. */
    public static Totals of(long subtotalCents, TaxRule tax) {
        long taxCents = tax.taxCents(subtotalCents);
        return new Totals(subtotalCents, taxCents, Math.addExact(subtotalCents, taxCents));
    }
}
