package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit of measure that an owner writes.
 *
 * <p>Ounces and pounds are avoirdupois; fluid ounces, quarts and gallons are those of the United
 * States. The factors are exact by definition: the pound has been 0.45359237 kg since 1959, and the
 * gallon is 231 cubic inches of 2.54 cm each (NIST Handbook 44, Appendix C).
 */
public enum Unit {
    G(Dimension.MASS, "1"),
    KG(Dimension.MASS, "1000"),
    OZ(Dimension.MASS, "28.349523125"),
    LB(Dimension.MASS, "453.59237"),
    ML(Dimension.VOLUME, "1"),
    L(Dimension.VOLUME, "1000"),
    FL_OZ(Dimension.VOLUME, "29.5735295625"),
    QT(Dimension.VOLUME, "946.352946"),
    GAL(Dimension.VOLUME, "3785.411784"),
    EACH(Dimension.COUNT, "1");

    private final Dimension dimension;
    private final BigDecimal inBase;

    Unit(Dimension dimension, String inBase) {
        this.dimension = dimension;
        this.inBase = new BigDecimal(inBase);
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** One of it in the base unit of its dimension, exact. */
    public BigDecimal inBase() {
        return inBase;
    }

    /** An amount of this unit in the base unit, exact. */
    public BigDecimal toBase(BigDecimal amount) {
        return Amounts.plain(amount.multiply(inBase));
    }

    /** An amount of the base unit in this unit, to 34 digits. */
    public BigDecimal fromBase(BigDecimal base) {
        return Amounts.plain(base.divide(inBase, MathContext.DECIMAL128));
    }
}
