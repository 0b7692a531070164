package sopwell.stock.recipes;

import java.math.BigDecimal;

/** One way of writing each amount, so that equal amounts are equal records. Stateless. */
final class Amounts {
    private Amounts() {}

    /** The same amount without trailing zeros after the point, and never with an exponent. */
    static BigDecimal plain(BigDecimal amount) {
        BigDecimal stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
