package sopwell.prep;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.prep.Kinds.Kind;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.larder.Measures;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;

/**
 * What ingredients cost, and what it costs to be short of one: the margin of the pieces that need
 * it, by how often they are sold. Exact decimals, in cents for one base unit. Not thread-safe.
 */
final class Worth {
    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final int PLACES = 6;
    private static final BigDecimal LEAST = new BigDecimal("0.000001");

    private final RecipeBook book;
    private final PrepTerms terms;
    private final Map<String, Cost> set;
    private final Map<String, BigDecimal> costs = new HashMap<>();

    Worth(RecipeBook book, OwnerTerms terms) {
        this.book = book;
        this.terms = terms.numbers();
        this.set = terms.kitchen().costs();
        List<Ingredient> upward = new ArrayList<>(book.downward());
        Collections.reverse(upward);
        for (Ingredient one : upward) {
            costs.put(one.id(), book.recipe(one.id()).map(this::made).orElseGet(() -> bought(one)));
        }
    }

    /** What one base unit of an ingredient costs; 0 for what costs nothing. */
    BigDecimal cost(String ingredient) {
        return costs.getOrDefault(ingredient, BigDecimal.ZERO);
    }

    private static BigDecimal bought(Ingredient one) {
        return one.supply()
                .map(s -> BigDecimal.valueOf(s.packCents()).divide(s.packInBase(), DIGITS))
                .orElse(BigDecimal.ZERO);
    }

    private BigDecimal made(Recipe recipe) {
        return recipe.inputs().stream()
                .map(input -> input.amount().multiply(cost(input.ingredient())))
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(recipe.out(), DIGITS);
    }

    /** What a piece made so leaves over what goes into it, in cents. */
    private BigDecimal margin(Kind kind, Map<String, BigDecimal> takes) {
        BigDecimal spent =
                takes.entrySet().stream()
                        .map(one -> one.getValue().multiply(cost(one.getKey())))
                        .reduce(BigDecimal.ZERO, BigDecimal::add);
        return BigDecimal.valueOf(kind.priceCents()).subtract(spent);
    }

    /**
     * What a shortage and waste of an ingredient cost.
     *
     * @param takings the ways of making, with what each takes, in the same order
     */
    Stakes stakes(String ingredient, List<Kind> kinds, Takings takings) {
        BigDecimal lost = BigDecimal.ZERO;
        BigDecimal taken = BigDecimal.ZERO;
        for (int k = 0; k < kinds.size(); k++) {
            Map<String, BigDecimal> takes = takings.of(k);
            BigDecimal amount = takes.getOrDefault(ingredient, BigDecimal.ZERO);
            if (amount.signum() > 0) {
                BigDecimal often = BigDecimal.valueOf(kinds.get(k).weight());
                BigDecimal margin = margin(kinds.get(k), takes).max(BigDecimal.ZERO);
                int percent = takings.isOwn(k, ingredient) ? 100 : terms.withoutPercent();
                BigDecimal loses =
                        margin.multiply(BigDecimal.valueOf(percent, 2))
                                .add(BigDecimal.valueOf(terms.goodwillCents()));
                lost = lost.add(often.multiply(loses));
                taken = taken.add(often.multiply(amount));
            }
        }
        BigDecimal shortage = taken.signum() == 0 ? LEAST : lost.divide(taken, DIGITS).max(LEAST);
        BigDecimal waste = cost(ingredient);
        if (isSet(ingredient)) {
            Cost cost = set.get(ingredient);
            shortage = cost.shortCents().isEmpty() ? shortage : each(cost, ingredient, true);
            waste = cost.wasteCents().isEmpty() ? waste : each(cost, ingredient, false);
        }
        waste = rounded(waste);
        return new Stakes(
                rounded(shortage).max(LEAST),
                waste,
                rounded(waste.multiply(BigDecimal.valueOf(terms.nightPerMille(), 3))));
    }

    /** A unit that the ingredient is counted in no more says nothing. */
    private boolean isSet(String ingredient) {
        return set.containsKey(ingredient)
                && Measures.inBase(book.ingredient(ingredient), set.get(ingredient).unit())
                        .isPresent();
    }

    /** What the owner has set for one of a unit, for one base unit. */
    private BigDecimal each(Cost cost, String ingredient, boolean isShort) {
        int cents = (isShort ? cost.shortCents() : cost.wasteCents()).getAsInt();
        return BigDecimal.valueOf(cents)
                .divide(
                        Measures.inBase(book.ingredient(ingredient), cost.unit()).orElseThrow(),
                        DIGITS);
    }

    private static BigDecimal rounded(BigDecimal cents) {
        return cents.setScale(PLACES, RoundingMode.HALF_UP);
    }
}
