package sopwell.till;

import sopwell.Check;

/**
 * The amounts of one payment, in cents. Immutable.
 *
 * @param cents what it settles of the order, 1 or more
 * @param tipCents what is given on top of it, 0 or more; it is no sale
 * @param roundingCents what rounding cash adds to the amount settled, negative if it takes off
 * @param tenderedCents what was handed over
 * @param changeCents what was given back of it, 0 or more
 */
public record Payment(
        long cents, long tipCents, long roundingCents, long tenderedCents, long changeCents) {
    public Payment {
        Check.that(cents > 0 && tipCents >= 0 && changeCents >= 0, "a payment pays something");
        Check.that(
                tenderedCents - changeCents == cents + roundingCents + tipCents,
                "what is handed over is what is paid, and the change");
    }
}
