package sopwell.money;

import sopwell.Check;

/**
 * What is taken off an order before tax, and why. Immutable.
 *
 * @param cents a fixed amount, 0 or more; what is more than the order is not taken off
 * @param milliPercent or a share, in thousandths of a percent, 0 to 100,000; one of the two is 0
 * @param reason why, in words; empty only when nothing is taken off
 */
public record Discount(Kind kind, long cents, int milliPercent, String reason) {
    /** Everything is taken off. */
    public static final int MILLI_PERCENT_ALL = 100_000;

    /** Nothing is taken off. */
    public static final Discount NONE = new Discount(Kind.GUEST, 0, 0, "");

    /** Whom it is for; the day report counts them apart. */
    public enum Kind {
        /** For the guest. */
        GUEST,
        /** A meal for one of the stand's own people. */
        STAFF_MEAL
    }

    public Discount {
        Check.that(cents >= 0 && milliPercent >= 0, "a discount takes off, it does not add");
        Check.that(milliPercent <= MILLI_PERCENT_ALL, "no more than everything is taken off");
        Check.that(cents == 0 || milliPercent == 0, "a discount is an amount or a share");
    }

    public boolean isNone() {
        return cents == 0 && milliPercent == 0;
    }

    /**
     * What it takes off a subtotal, in cents; a share is rounded half up.
     *
     * @param subtotalCents 0 or more
     */
    public long offCents(long subtotalCents) {
        if (milliPercent == 0) {
            return Math.min(cents, subtotalCents);
        }
        long product = Math.multiplyExact(subtotalCents, milliPercent);
        return Rounding.HALF_UP.quotient(product, MILLI_PERCENT_ALL);
    }
}
