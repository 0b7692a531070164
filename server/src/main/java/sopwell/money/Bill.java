package sopwell.money;

import java.util.ArrayList;
import java.util.List;

/**
 * An order worked out to the cent, line by line: the lines' shares of discount and tax add up to
 * the order's. Immutable.
 *
 * <p>A discount is parted among the lines in proportion to their prices ({@link Shares}), so that a
 * line that is not taxed takes its part of it. A tax on the whole order is parted among the taxed
 * lines the same way, after it was rounded.
 */
public record Bill(List<Share> shares, Totals totals) {
    public Bill {
        shares = List.copyOf(shares);
    }

    /**
     * One line before anything is taken off or added.
     *
     * @param cents quantity times price, 0 or more
     * @param taxed whether sales tax is due on it
     */
    public record Line(long cents, boolean taxed) {}

    /**
     * One line's part of the order.
     *
     * @param taxCents its tax, added to the price or in it as the rule says
     * @param totalCents what it adds to what is to be paid
     */
    public record Share(long cents, long discountCents, long taxCents, long totalCents) {}

    /** Works out an order. */
    public static Bill of(List<Line> lines, Discount discount, TaxRule tax) {
        long[] cents = lines.stream().mapToLong(Line::cents).toArray();
        long subtotalCents = sum(cents);
        long discountCents = discount.offCents(subtotalCents);
        long[] off = Shares.of(discountCents, cents);
        long[] taxed = new long[cents.length];
        for (int i = 0; i < taxed.length; i++) {
            taxed[i] = lines.get(i).taxed() ? cents[i] - off[i] : 0;
        }
        long[] taxes = taxes(taxed, tax);
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < cents.length; i++) {
            long added = tax.included() ? 0 : taxes[i];
            shares.add(new Share(cents[i], off[i], taxes[i], cents[i] - off[i] + added));
        }
        long taxCents = sum(taxes);
        long totalCents =
                Math.addExact(subtotalCents - discountCents, tax.included() ? 0 : taxCents);
        return new Bill(
                shares,
                new Totals(subtotalCents, discountCents, taxCents, tax.included(), totalCents));
    }

    private static long[] taxes(long[] taxed, TaxRule tax) {
        return switch (tax.basis()) {
            case ORDER -> Shares.of(tax.taxCents(sum(taxed)), taxed);
            case LINE -> {
                long[] taxes = new long[taxed.length];
                for (int i = 0; i < taxes.length; i++) {
                    taxes[i] = tax.taxCents(taxed[i]);
                }
                yield taxes;
            }
        };
    }

    private static long sum(long[] cents) {
        long sum = 0;
        for (long one : cents) {
            sum = Math.addExact(sum, one);
        }
        return sum;
    }
}
