package sopwell.money;

import sopwell.Check;

/**
 * What cash is rounded to where small coins are missing: the total after tax, and only what is paid
 * in cash. Canada rounds to 5 cents since 2013 (1 and 2 down, 3 and 4 up, and so on); New Zealand
 * to 10 cents since 2006, where 5 is for the shop to decide. Immutable.
 *
 * @param stepCents the amounts that can be paid are its multiples; 1 rounds nothing
 * @param tie where the middle between two multiples goes
 */
public record CashRounding(int stepCents, Tie tie) {
    /** The largest step, in cents. */
    public static final int STEP_CENTS_MAX = 1_000;

    /** Every cent can be paid. */
    public static final CashRounding NONE = new CashRounding(1, Tie.DOWN);

    /** Where the middle between two steps goes. */
    public enum Tie {
        /** To the guest's favor when the guest pays. */
        DOWN,
        /** To the stand's favor when the guest pays. */
        UP
    }

    public CashRounding {
        Check.that(
                stepCents >= 1 && stepCents <= STEP_CENTS_MAX,
                "cash is rounded to 1 to 1,000 cents");
    }

    /**
     * What is paid in cash for an amount.
     *
     * @param cents 0 or more
     */
    public long roundCents(long cents) {
        Check.that(cents >= 0, "amounts of zero and more are rounded");
        long down = cents - cents % stepCents;
        long twiceRest = 2 * (cents % stepCents);
        boolean up = twiceRest > stepCents || (twiceRest == stepCents && tie == Tie.UP);
        return up ? Math.addExact(down, stepCents) : down;
    }
}
