package sopwell.stock.recipes;

import java.util.List;
import java.util.Map;

/**
 * What a book of recipes consists of, checked or not. Immutable.
 *
 * @param ingredients everything that is kept
 * @param recipes at most one for each ingredient
 * @param uses what sold pieces take
 * @param resources what prep steps share
 * @param hours when somebody is in the kitchen
 */
public record RecipeParts(
        List<Ingredient> ingredients,
        List<Recipe> recipes,
        List<Use> uses,
        List<Resource> resources,
        KitchenHours hours) {
    public RecipeParts {
        ingredients = List.copyOf(ingredients);
        recipes = List.copyOf(recipes);
        uses = List.copyOf(uses);
        resources = List.copyOf(resources);
    }

    /** A book in which nothing stands yet. */
    public static RecipeParts none() {
        return new RecipeParts(
                List.of(), List.of(), List.of(), List.of(), new KitchenHours(Map.of()));
    }
}
