package sopwell.stock.larder;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import sopwell.Check;
import sopwell.Limits;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.stock.recipes.Container;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Unit;

/** Reads amounts that people typed. Stateless. */
public final class Measures {
    /** Digits after the point that an amount may have. */
    private static final Pattern AMOUNT = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,3})?");

    private static final int THOUSAND_DIGITS = 3;

    private Measures() {}

    /** Why an amount can't be read, if it can't; nothing may be one. */
    static Optional<Refusal> wrong(RecipeBook book, TypedAmount asked) {
        if (!book.hasIngredient(asked.ingredient())) {
            return Optional.of(Refusal.of(Reason.UNKNOWN_INGREDIENT, asked.ingredient()));
        }
        if (inBase(book.ingredient(asked.ingredient()), asked.unit()).isEmpty()) {
            List<String> units = units(book.ingredient(asked.ingredient()));
            return Optional.of(
                    Refusal.of(Reason.UNKNOWN_MEASURE, asked.unit(), String.join(", ", units)));
        }
        return AMOUNT.matcher(asked.amount()).matches()
                ? Optional.empty()
                : Optional.of(
                        Refusal.of(
                                Reason.STOCK_AMOUNT, asked.amount(), 0, Limits.STOCK_AMOUNT_MAX));
    }

    /** Why an amount that must be something can't be read, if it can't. */
    static Optional<Refusal> wrongOrNothing(RecipeBook book, TypedAmount asked) {
        Optional<Refusal> wrong = wrong(book, asked);
        if (wrong.isEmpty() && new BigDecimal(asked.amount()).signum() == 0) {
            return Optional.of(
                    Refusal.of(
                            Reason.STOCK_AMOUNT, asked.amount(), "0.001", Limits.STOCK_AMOUNT_MAX));
        }
        return wrong;
    }

    /** The amount that was typed; it must have been found right. */
    static Measure of(RecipeBook book, TypedAmount asked) {
        Optional<BigDecimal> one = inBase(book.ingredient(asked.ingredient()), asked.unit());
        Check.that(one.isPresent(), "only amounts that were looked at are taken in");
        return new Measure(
                asked.ingredient(),
                thousandths(one.get().multiply(new BigDecimal(asked.amount()))),
                asked.amount(),
                asked.unit());
    }

    /** An amount of a base unit in thousandths, the nearest; a tie goes to the even one. */
    public static long thousandths(BigDecimal base) {
        return base.movePointRight(THOUSAND_DIGITS)
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    /**
     * What an ingredient may be counted in: its containers, the unit that people here use, then all
     * others that fit.
     */
    public static List<String> units(Ingredient ingredient) {
        List<String> units = new ArrayList<>();
        ingredient.containers().stream().map(Container::id).forEach(units::add);
        units.add(id(ingredient.unit()));
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == ingredient.base().dimension() && !units.contains(id(unit))) {
                units.add(id(unit));
            }
        }
        return units;
    }

    /** What one of a unit or container is in the base unit; empty when it is none here. */
    public static Optional<BigDecimal> inBase(Ingredient ingredient, String unit) {
        Optional<BigDecimal> container = ingredient.container(unit).map(Container::inBase);
        if (container.isPresent()) {
            return container;
        }
        for (Unit one : Unit.values()) {
            if (id(one).equals(unit) && one.dimension() == ingredient.base().dimension()) {
                return Optional.of(one.inBase());
            }
        }
        return Optional.empty();
    }

    /** How a unit is written: in small letters, with hyphens. */
    public static String id(Unit unit) {
        return unit.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
