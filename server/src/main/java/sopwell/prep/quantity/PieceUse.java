package sopwell.prep.quantity;

import java.util.List;

/**
 * What a random sold piece takes of an ingredient, and so what a day of pieces takes. Immutable.
 *
 * @param mean E[u], in the ingredient's base unit
 * @param square E[u²]
 */
public record PieceUse(double mean, double square) {
    /**
     * One way a piece can be.
     *
     * @param share of all pieces, 0 to 1
     * @param amount what it takes
     */
    public record Way(double share, double amount) {}

    /** From the ways that take something; the other pieces take nothing. */
    public static PieceUse of(List<Way> ways) {
        double mean = 0;
        double square = 0;
        for (Way way : ways) {
            mean += way.share() * way.amount();
            square += way.share() * way.amount() * way.amount();
        }
        return new PieceUse(mean, square);
    }

    /**
     * What a day takes: mean M E[u], variance M E[u²] + phi M² E[u]².
     *
     * @param pieces the mean of the count M
     * @param phi the count's variance is M + phi M²
     */
    public Demand day(double pieces, double phi) {
        return GammaDemand.of(pieces * mean, pieces * square + phi * pieces * pieces * mean * mean);
    }
}
