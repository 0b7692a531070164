package sopwell.money;

import sopwell.Check;

/** How a fraction of a cent becomes whole cents. */
public enum Rounding {
    /**
     * To the nearest cent, half a cent up. Carried to the third decimal of a dollar and rounded up
     * when that decimal is more than four: section 324 of the Streamlined Sales and Use Tax
     * Agreement.
     */
    HALF_UP,
    /** To the nearest cent, half a cent to the even one. */
    HALF_EVEN,
    /** The fraction is dropped. */
    DOWN;

    /**
     * A quotient in whole cents.
     *
     * @param dividend 0 or more
     * @param divisor 1 or more, and at most half of what a long holds
     */
    public long quotient(long dividend, long divisor) {
        Check.that(dividend >= 0 && divisor > 0, "amounts of zero and more are rounded");
        long whole = dividend / divisor;
        long twiceRest = 2 * (dividend % divisor);
        boolean up =
                switch (this) {
                    case HALF_UP -> twiceRest >= divisor;
                    case HALF_EVEN ->
                            twiceRest > divisor || (twiceRest == divisor && whole % 2 == 1);
                    case DOWN -> false;
                };
        return up ? whole + 1 : whole;
    }
}
