package sopwell.stock.recipes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Check;

/**
 * A checked book of recipes, with look-ups by id. Immutable, thread-safe.
 *
 * <p>Only parts that were checked and found without fault become a {@code RecipeBook}; look-ups of
 * ids that the book itself mentions therefore never fail.
 */
public final class RecipeBook {
    private static final String NO_REVISION = "none";

    private final String revision;
    private final RecipeParts parts;
    private final Map<String, Ingredient> ingredients = new LinkedHashMap<>();
    private final Map<String, Recipe> recipes = new LinkedHashMap<>();
    private final Map<String, Resource> resources = new HashMap<>();
    private final List<Ingredient> downward;

    /**
     * A book from parts without fault.
     *
     * @param revision names this content; another content has another revision
     */
    public RecipeBook(String revision, RecipeParts parts) {
        this.revision = revision;
        this.parts = parts;
        parts.ingredients().forEach(one -> ingredients.put(one.id(), one));
        parts.recipes().forEach(one -> recipes.put(one.makes(), one));
        parts.resources().forEach(one -> resources.put(one.id(), one));
        Map<String, Integer> levels = Levels.of(parts);
        List<Ingredient> ordered = new ArrayList<>(parts.ingredients());
        ordered.sort(Comparator.comparing(one -> levels.get(one.id())));
        this.downward = List.copyOf(ordered);
    }

    /** A book in which nothing stands, in force before any was adopted. */
    public static RecipeBook empty() {
        return new RecipeBook(NO_REVISION, RecipeParts.none());
    }

    /** Whether no book was ever adopted. */
    public boolean isEmpty() {
        return revision.equals(NO_REVISION);
    }

    public String revision() {
        return revision;
    }

    public RecipeParts parts() {
        return parts;
    }

    public List<Ingredient> ingredients() {
        return parts.ingredients();
    }

    public List<Recipe> recipes() {
        return parts.recipes();
    }

    public List<Use> uses() {
        return parts.uses();
    }

    public List<Resource> resources() {
        return parts.resources();
    }

    public KitchenHours hours() {
        return parts.hours();
    }

    /**
     * All ingredients in an order in which whatever is made comes before everything it is made of:
     * what is needed of an ingredient is known in full when its turn comes. Net in this order.
     */
    public List<Ingredient> downward() {
        return downward;
    }

    public boolean hasIngredient(String id) {
        return ingredients.containsKey(id);
    }

    public Ingredient ingredient(String id) {
        return known(ingredients.get(id));
    }

    /** How an ingredient is made; empty for what is bought. */
    public Optional<Recipe> recipe(String ingredient) {
        return Optional.ofNullable(recipes.get(ingredient));
    }

    public Resource resource(String id) {
        return known(resources.get(id));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RecipeBook book
                && revision.equals(book.revision)
                && parts.equals(book.parts);
    }

    @Override
    public int hashCode() {
        return revision.hashCode();
    }

    @Override
    public String toString() {
        return "recipes " + revision;
    }

    private static <T> T known(T found) {
        Check.that(found != null, "the book of recipes knows every id that is asked of it");
        return found;
    }
}
