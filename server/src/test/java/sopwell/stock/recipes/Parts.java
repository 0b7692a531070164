package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.LocalText;

/** Short ways to write parts of a book of recipes. */
final class Parts {
    private Parts() {}

    static Ingredient ingredient(String id, Unit base) {
        return new Ingredient(
                id,
                name(id),
                base,
                List.of(),
                Optional.empty(),
                0,
                List.of(),
                Ingredient.Place.ANYWHERE,
                List.of());
    }

    /** One that gives {@code out} of {@code makes} from ingredient and amount, in turn. */
    static Recipe recipe(String makes, String out, String... inputs) {
        return new Recipe(
                makes,
                inputs(inputs),
                List.of(),
                Optional.of(new BigDecimal(out)),
                new Recipe.Lot(name("lot"), 1, 1),
                List.of(step("make")),
                "make");
    }

    /** One that leaves these shares of its first input. */
    static Recipe losing(Recipe recipe, String... left) {
        List<Recipe.StageYield> yields = new ArrayList<>();
        for (String share : left) {
            String id = "stage-" + yields.size();
            yields.add(new Recipe.StageYield(id, name(id), new BigDecimal(share)));
        }
        return new Recipe(
                recipe.makes(),
                recipe.inputs(),
                yields,
                Optional.empty(),
                recipe.lot(),
                recipe.steps(),
                recipe.datedFrom());
    }

    static PrepStep step(String id) {
        return new PrepStep(id, name(id), 10, 0, 0, Optional.empty(), 0, true, true, 5, Watch.NONE);
    }

    static Use use(String ingredient, String item, String size, String option, String amount) {
        return new Use(ingredient, item, size, option, new BigDecimal(amount), 0);
    }

    static Use percent(String ingredient, String item, String option, int percent) {
        return new Use(ingredient, item, "", option, BigDecimal.ZERO, percent);
    }

    static RecipeBook book(List<Ingredient> ingredients, List<Recipe> recipes, Use... uses) {
        return new RecipeBook(
                "test",
                new RecipeParts(
                        ingredients,
                        recipes,
                        List.of(uses),
                        List.of(),
                        new KitchenHours(Map.of())));
    }

    static LocalText name(String id) {
        return new LocalText(id, id);
    }

    private static List<Recipe.Input> inputs(String... pairs) {
        List<Recipe.Input> inputs = new ArrayList<>();
        for (int n = 0; n < pairs.length; n += 2) {
            inputs.add(new Recipe.Input(pairs[n], new BigDecimal(pairs[n + 1])));
        }
        return inputs;
    }
}
