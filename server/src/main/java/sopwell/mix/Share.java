package sopwell.mix;

import sopwell.Check;

/**
 * So many of so many, and how sure a share from so few can be. Immutable.
 *
 * <p>The interval is Wilson's score interval of 95 %: it never leaves 0 to 1, and holds what it
 * says for small counts too. Source: E. B. Wilson, Journal of the American Statistical Association
 * 22 (1927), 209 to 212; form as in the NIST/SEMATECH e-Handbook, section 7.2.4.1.
 *
 * @param some 0 or more
 * @param all not less than {@code some}
 */
public record Share(long some, long all) {
    /** The normal distribution's quantile that leaves 2.5 % above it. */
    private static final double Z95 = 1.959963984540054;

    public Share {
        Check.that(some >= 0 && all >= some, "a share is some of all");
    }

    /** Whether there is anything to have a share of. */
    public boolean isKnown() {
        return all > 0;
    }

    /** The share, 0 to 1; 0 of nothing is 0. */
    public double value() {
        return all == 0 ? 0 : (double) some / all;
    }

    /** The lower end of the interval, 0 to 1; of nothing, 0. */
    public double low() {
        return some == 0 ? 0 : Math.max(0, centre() - halfWidth());
    }

    /** The upper end of the interval, 0 to 1; of nothing, 1. */
    public double high() {
        return some == all ? 1 : Math.min(1, centre() + halfWidth());
    }

    /** Both counted together. */
    public Share plus(Share other) {
        return new Share(some + other.some, all + other.all);
    }

    private double centre() {
        double z2 = Z95 * Z95;
        return (some + z2 / 2) / (all + z2);
    }

    private double halfWidth() {
        double z2 = Z95 * Z95;
        double p = value();
        return Z95 / (all + z2) * Math.sqrt(all * p * (1 - p) + z2 / 4);
    }
}
