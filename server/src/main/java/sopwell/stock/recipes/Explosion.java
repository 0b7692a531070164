package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;

/** What is needed of everything, all the way down to what is bought. Stateless. */
public final class Explosion {
    private Explosion() {}

    /**
     * The gross need of every ingredient, as if nothing were on hand and lots could be made in
     * fractions: what is asked for, and what the recipes take to make it, level by level.
     *
     * @param asked what is needed of ingredients of the book, in base units
     * @return in base units, in the book's downward order; exact but for divisions by what a lot
     *     gives, which carry 34 digits; ingredients that are not needed are left out
     */
    public static Map<String, BigDecimal> gross(RecipeBook book, Map<String, BigDecimal> asked) {
        Map<String, BigDecimal> needs = new LinkedHashMap<>();
        asked.forEach((id, amount) -> needs.put(book.ingredient(id).id(), amount));
        Map<String, BigDecimal> gross = new LinkedHashMap<>();
        for (Ingredient ingredient : book.downward()) {
            BigDecimal need = needs.getOrDefault(ingredient.id(), BigDecimal.ZERO);
            if (need.signum() == 0) {
                continue;
            }
            gross.put(ingredient.id(), Amounts.plain(need));
            book.recipe(ingredient.id())
                    .ifPresent(
                            recipe ->
                                    inputs(recipe, need)
                                            .forEach(
                                                    (id, more) ->
                                                            needs.merge(
                                                                    id, more, BigDecimal::add)));
        }
        return gross;
    }

    /** What it takes of each input to make this amount, in base units. */
    public static Map<String, BigDecimal> inputs(Recipe recipe, BigDecimal amount) {
        Map<String, BigDecimal> inputs = new LinkedHashMap<>();
        for (Recipe.Input input : recipe.inputs()) {
            BigDecimal each =
                    amount.multiply(input.amount()).divide(recipe.out(), MathContext.DECIMAL128);
            inputs.merge(input.ingredient(), each, BigDecimal::add);
        }
        return inputs;
    }
}
