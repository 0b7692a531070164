package sopwell.web.api;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sopwell.menu.MenuFault;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Use;
import sopwell.web.T;

/**
 * What two books of recipes say differently, so that a program knows what to look at. Stateless.
 */
final class RecipeChanges {
    private RecipeChanges() {}

    /**
     * Every ingredient of which two books say something else: of itself, of how it is made, or of
     * what takes it; then places and hours.
     *
     * @param sent the book that was sent, into which the places point
     */
    static List<MenuFault> between(RecipeBook inForce, RecipeBook sent, T text) {
        List<String> order = sent.ingredients().stream().map(Ingredient::id).toList();
        Set<String> all = new LinkedHashSet<>(order);
        inForce.ingredients().forEach(one -> all.add(one.id()));
        List<MenuFault> found = new ArrayList<>();
        for (String id : all) {
            if (!isSame(inForce, sent, id)) {
                int at = order.indexOf(id);
                found.add(told("/ingredients" + (at < 0 ? "" : "/" + at), id, text));
            }
        }
        if (!inForce.resources().equals(sent.resources())) {
            found.add(told("/resources", "resources", text));
        }
        if (!inForce.hours().equals(sent.hours())) {
            found.add(told("/hours", "hours", text));
        }
        return found;
    }

    private static boolean isSame(RecipeBook one, RecipeBook other, String id) {
        return one.hasIngredient(id)
                && other.hasIngredient(id)
                && one.ingredient(id).equals(other.ingredient(id))
                && one.recipe(id).equals(other.recipe(id))
                && uses(one, id).equals(uses(other, id));
    }

    private static List<Use> uses(RecipeBook book, String id) {
        return book.uses().stream().filter(use -> use.ingredient().equals(id)).toList();
    }

    private static MenuFault told(String place, String id, T text) {
        return new MenuFault(
                place, text.of("recipes.differs.wrong", id), text.get("recipes.differs.right"));
    }
}
