package sopwell.prep.forecast;

/**
 * From a count to the part of it that is of one kind. If N has the mean M and the width phi, and X
 * of N pieces are of a kind with the share p, whose share varies from day to day with rho, then X
 * has exactly the mean M p and, with c = rho (1 - p) / p, the width phi (1 + c) + c. Stateless.
 */
final class Thinning {
    private Thinning() {}

    /** The width of the part. */
    static double phi(double phi, double share, double rho) {
        if (share <= 0) {
            return phi;
        }
        double c = rho * (1 - share) / share;
        return phi * (1 + c) + c;
    }
}
