package sopwell.money;

import sopwell.Check;

/**
 * How a stand deals in cash. Immutable.
 *
 * @param units whose smallest divides the rounding's step: what is rounded can be paid
 */
public record CashRule(CashRounding rounding, CashUnits units) {
    /** Every cent, in the usual notes and coins. */
    public static final CashRule USUAL = new CashRule(CashRounding.NONE, CashUnits.USUAL);

    public CashRule {
        Check.that(
                rounding.stepCents() % units.leastCents() == 0,
                "what cash is rounded to can be paid in the stand's coins");
    }
}
