package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sopwell.stock.recipes.RecipeFault.Kind;

/**
 * Amounts as people write them: {@code 5.2 kg}, {@code 2 lb 3 oz}, {@code 1/2 gal}, {@code 12}.
 * Stateless.
 *
 * <p>Numbers have a point, never a comma: in some places that parts thousands, in others it is the
 * point. A fraction that no decimal can hold is rounded to a millionth of the base unit.
 */
public final class AmountText {
    private static final int WRITTEN_DECIMALS_MAX = 3;
    private static final int SHOWN_DECIMALS_MAX = 2;
    private static final int ROUNDED_DECIMALS = 6;

    private static final Pattern NUMBER =
            Pattern.compile(
                    "\\s*(?:(?:(\\d{1,9})\\s+)?(\\d{1,6})\\s*/\\s*(\\d{1,6})"
                            + "|(\\d{0,9})\\s*([¼½¾⅓⅔⅛⅜⅝⅞])"
                            + "|(\\d{1,9}(?:\\.\\d{1,30})?|\\.\\d{1,30}))");
    private static final Pattern WORD =
            Pattern.compile(
                    "\\s*((?i:fl\\.?\\s*oz|fluid\\s+ounces?|onzas?\\s+líquidas?)|\\p{L}+)\\.?");

    private static final Map<String, List<Integer>> VULGAR =
            Map.of(
                    "¼", List.of(1, 4),
                    "½", List.of(1, 2),
                    "¾", List.of(3, 4),
                    "⅓", List.of(1, 3),
                    "⅔", List.of(2, 3),
                    "⅛", List.of(1, 8),
                    "⅜", List.of(3, 8),
                    "⅝", List.of(5, 8),
                    "⅞", List.of(7, 8));

    private AmountText() {}

    /**
     * What came of reading an amount. Immutable.
     *
     * @param amount in the base unit of its dimension; empty when there is a fault
     * @param fault what is wrong with it, without a place
     */
    public record Read(Optional<BigDecimal> amount, Optional<RecipeFault> fault) {}

    /**
     * Reads an amount of something.
     *
     * @param wanted how the thing is measured; empty when nobody knows
     */
    public static Read read(String text, Optional<Dimension> wanted) {
        return new Reading(text, wanted).read();
    }

    /**
     * An amount in a form that reads back as itself: in this unit, or in the small one beside it
     * for less than one, if that takes few digits; else in another of its dimension, else in the
     * base unit with all its digits.
     */
    public static String written(BigDecimal base, Unit usual) {
        Unit unit = fitting(base, usual);
        if (isShort(base, unit)) {
            return with(unit.fromBase(base), unit);
        }
        for (Unit other : Unit.values()) {
            if (other.dimension() == unit.dimension() && isShort(base, other)) {
                return with(other.fromBase(base), other);
            }
        }
        return with(Amounts.plain(base), unit.dimension().base());
    }

    /** An amount for people to read: in this unit, rounded to two decimals. */
    public static String shown(BigDecimal base, Unit usual) {
        Unit unit = fitting(base, usual);
        BigDecimal rounded = base.divide(unit.inBase(), SHOWN_DECIMALS_MAX, RoundingMode.HALF_UP);
        return with(Amounts.plain(rounded), unit);
    }

    /** Less than one of a large unit is said in the small one beside it: 150 g, not 0.15 kg. */
    private static Unit fitting(BigDecimal base, Unit usual) {
        if (base.compareTo(usual.inBase()) >= 0) {
            return usual;
        }
        return switch (usual) {
            case KG -> Unit.G;
            case L -> Unit.ML;
            case LB -> Unit.OZ;
            case G, OZ, ML, FL_OZ, QT, GAL, EACH -> usual;
        };
    }

    private static boolean isShort(BigDecimal base, Unit unit) {
        BigDecimal amount = unit.fromBase(base);
        return amount.scale() <= WRITTEN_DECIMALS_MAX && unit.toBase(amount).compareTo(base) == 0;
    }

    private static String with(BigDecimal amount, Unit unit) {
        String number = amount.toPlainString();
        return unit == Unit.EACH ? number : number + " " + UnitWords.written(unit);
    }

    /** One reading. */
    private static final class Reading {
        private final String text;
        private final Optional<Dimension> wanted;
        private int at;

        Reading(String text, Optional<Dimension> wanted) {
            this.text = text.strip();
            this.wanted = wanted;
        }

        Read read() {
            BigDecimal sum = BigDecimal.ZERO;
            Optional<Dimension> dimension = wanted;
            do {
                Matcher number = NUMBER.matcher(text).region(at, text.length());
                if (!number.lookingAt()) {
                    return fault(text.contains(",") ? Kind.AMOUNT_COMMA : Kind.AMOUNT_NO_NUMBER);
                }
                at = number.end();
                if (text.startsWith(",", at)) {
                    return fault(Kind.AMOUNT_COMMA);
                }
                Optional<Unit> unit = unit(dimension);
                if (unit.isEmpty()) {
                    return noUnit(dimension);
                }
                if (dimension.isPresent() && dimension.get() != unit.get().dimension()) {
                    return fault(Kind.AMOUNT_OTHER_KIND);
                }
                dimension = Optional.of(unit.get().dimension());
                Optional<BigDecimal> amount = amount(number, unit.get());
                if (amount.isEmpty()) {
                    return fault(Kind.AMOUNT_NO_NUMBER);
                }
                sum = sum.add(amount.get());
            } while (at < text.length());
            return new Read(Optional.of(Amounts.plain(sum)), Optional.empty());
        }

        /** The unit that comes next; pieces need none, and a number alone is that many pieces. */
        private Optional<Unit> unit(Optional<Dimension> dimension) {
            Matcher word = WORD.matcher(text).region(at, text.length());
            if (word.lookingAt()) {
                at = word.end();
                return UnitWords.read(word.group(1));
            }
            boolean pieces = dimension.isEmpty() || dimension.get() == Dimension.COUNT;
            return pieces && at == text.length() ? Optional.of(Unit.EACH) : Optional.empty();
        }

        private Read noUnit(Optional<Dimension> dimension) {
            boolean ends = Character.isDigit(text.charAt(text.length() - 1));
            return dimension.isPresent() && ends && at == text.length()
                    ? fault(Kind.AMOUNT_NO_UNIT)
                    : fault(Kind.AMOUNT_UNKNOWN_UNIT);
        }

        private Read fault(Kind kind) {
            String known = String.join(", ", wanted.map(UnitWords::of).orElseGet(UnitWords::all));
            return new Read(
                    Optional.empty(), Optional.of(new RecipeFault("", kind, List.of(text, known))));
        }

        private static Optional<BigDecimal> amount(Matcher number, Unit unit) {
            if (number.group(6) != null) {
                return Optional.of(unit.toBase(new BigDecimal(number.group(6))));
            }
            boolean vulgar = number.group(5) != null;
            String whole = vulgar ? number.group(4) : number.group(1);
            List<Integer> fraction =
                    vulgar
                            ? VULGAR.get(number.group(5))
                            : List.of(
                                    Integer.parseInt(number.group(2)),
                                    Integer.parseInt(number.group(3)));
            if (fraction.get(1) == 0) {
                return Optional.empty();
            }
            BigDecimal base = unit.inBase().multiply(BigDecimal.valueOf(fraction.get(0)));
            BigDecimal part = divided(base, BigDecimal.valueOf(fraction.get(1)));
            boolean alone = whole == null || whole.isEmpty();
            BigDecimal wholes = alone ? BigDecimal.ZERO : unit.toBase(new BigDecimal(whole));
            return Optional.of(wholes.add(part));
        }

        private static BigDecimal divided(BigDecimal amount, BigDecimal by) {
            BigDecimal exact = amount.divide(by, MathContext.DECIMAL128);
            return exact.multiply(by).compareTo(amount) == 0
                    ? exact
                    : exact.setScale(ROUNDED_DECIMALS, RoundingMode.HALF_UP);
        }
    }
}
