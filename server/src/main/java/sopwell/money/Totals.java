package sopwell.money;

import sopwell.Check;

/**
 * What an order costs, in cents. Immutable.
 *
 * @param subtotalCents the sum of the lines at the menu's prices, 0 or more
 * @param discountCents what is taken off it, 0 to the subtotal
 * @param taxCents sales tax, 0 or more
 * @param taxIncluded whether the tax is in the prices; otherwise it is added
 * @param totalCents what is to be paid
 */
public record Totals(
        long subtotalCents,
        long discountCents,
        long taxCents,
        boolean taxIncluded,
        long totalCents) {
    public Totals {
        Check.that(
                discountCents >= 0 && discountCents <= subtotalCents,
                "a discount is zero to its subtotal");
        Check.that(taxCents >= 0, "tax is zero or more");
        Check.that(
                Math.addExact(subtotalCents - discountCents, taxIncluded ? 0 : taxCents)
                        == totalCents,
                "a total is its subtotal less its discount, and its tax");
    }

    /** What the lines come to after the discount, before tax is added. */
    public long netCents() {
        return subtotalCents - discountCents;
    }

    /** What was earned: without discount and without tax, wherever the tax is. */
    public long salesCents() {
        return totalCents - taxCents;
    }
}
