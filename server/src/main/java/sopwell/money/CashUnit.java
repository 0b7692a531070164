package sopwell.money;

import sopwell.Check;

/**
 * A note or a coin. Immutable.
 *
 * @param cents its value, 1 or more
 * @param note whether it is a note rather than a coin
 */
public record CashUnit(long cents, boolean note) {
    public CashUnit {
        Check.that(cents >= 1, "a note or coin is worth something");
    }
}
