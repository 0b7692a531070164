package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import sopwell.menu.Allergens;
import sopwell.menu.Caution;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.stock.recipes.Container;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeCheck;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeFault.Kind;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Use;

/**
 * A book with one whole entry as it was typed: an ingredient, how it is made or who brings it, and
 * what takes it. Not thread-safe: for one request.
 */
final class EntryParts {
    /** How an ingredient comes to be here. */
    enum How {
        BOUGHT,
        MADE,
        FREE;

        String written() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final RecipeBook book;
    private final RecipeTyped read;
    private final Map<String, String> typed;
    private final String id;
    private final boolean isNew;
    private final Unit unit;
    private final RecipeParts parts;

    /**
     * Reads what was typed.
     *
     * @param id the ingredient that is there already; empty for a new one
     */
    EntryParts(RecipeBook book, String id, Map<String, String> typed) {
        this.book = book;
        this.typed = typed;
        this.read = new RecipeTyped(typed);
        this.isNew = id.isEmpty();
        this.id = isNew ? EntryIds.of(read.text("name.en")) : id;
        this.unit = unit();
        this.parts = edited();
    }

    /** The ingredient's id. */
    String id() {
        return id;
    }

    /** The edited parts; only good without faults. */
    RecipeParts parts() {
        return parts;
    }

    /** Whether the book has exactly this entry already: a press that was sent twice. */
    boolean isThere() {
        return isNew && book.hasIngredient(id) && book.parts().equals(parts);
    }

    /** What is wrong, by the field where it can be mended; the name is empty for what has none. */
    Map<String, RecipeFault> faults(Menu menu) {
        if (isNew && book.hasIngredient(id)) {
            read.wrong("name.en", Kind.NAME_TAKEN, read.text("name.en"));
        }
        if (isNew && read.text("unit").isEmpty()) {
            read.wrong("unit", Kind.NO_UNIT);
        }
        if (read.faults().isEmpty()) {
            read.place(RecipeCheck.of(parts, menu).faults());
        }
        return read.faults();
    }

    /** Only one of the same kind of measure for what is there: amounts would mean another thing. */
    private Unit unit() {
        Unit otherwise = isNew ? Unit.EACH : book.ingredient(id).unit();
        return Stream.of(Unit.values())
                .filter(one -> one.name().equals(read.text("unit")))
                .filter(one -> isNew || one.dimension() == otherwise.dimension())
                .findFirst()
                .orElse(otherwise);
    }

    private How how() {
        return Stream.of(How.values())
                .filter(one -> one.written().equals(read.text("how")))
                .findFirst()
                .orElse(How.BOUGHT);
    }

    private RecipeParts edited() {
        List<Ingredient> ingredients = new ArrayList<>(book.ingredients());
        int at = ingredients.stream().map(Ingredient::id).toList().indexOf(id);
        String place = "/ingredients/" + (at < 0 ? ingredients.size() : at);
        put(ingredients, at, ingredient(place));
        List<Recipe> recipes = new ArrayList<>(book.recipes());
        int made = recipes.stream().map(Recipe::makes).toList().indexOf(id);
        if (how() == How.MADE) {
            String here = "/recipes/" + (made < 0 ? recipes.size() : made);
            put(recipes, made, new EntryRecipe(book, read, typed, unit).recipe(id, here));
            circle(recipes);
        } else if (made >= 0) {
            recipes.remove(made);
        }
        return new RecipeParts(ingredients, recipes, uses(), book.resources(), book.hours());
    }

    private static <E> void put(List<E> list, int at, E one) {
        if (at < 0) {
            list.add(one);
        } else {
            list.set(at, one);
        }
    }

    /** A circle is mended where the ingredient that leads back is taken. */
    private void circle(List<Recipe> recipes) {
        for (int row : EntryRows.INPUTS.filled(typed)) {
            String field = EntryRows.INPUTS.at(row) + ".what";
            if (leadsBack(recipes, read.text(field), new HashSet<>())) {
                read.at("/recipes", field);
            }
        }
    }

    private boolean leadsBack(List<Recipe> recipes, String what, Set<String> seen) {
        if (what.equals(id)) {
            return true;
        }
        return seen.add(what)
                && recipes.stream()
                        .filter(recipe -> recipe.makes().equals(what))
                        .flatMap(recipe -> recipe.inputs().stream())
                        .anyMatch(input -> leadsBack(recipes, input.ingredient(), seen));
    }

    private Ingredient ingredient(String place) {
        read.at(place + "/id", "name.en");
        LocalText shelf = new LocalText(read.text("shelf.en"), read.text("shelf.es"));
        if (!shelf.en().isEmpty() || !shelf.es().isEmpty()) {
            shelf = read.name("shelf");
        }
        return new Ingredient(
                id,
                read.name("name"),
                unit,
                containers(place + "/containers"),
                how() == How.BOUGHT ? Optional.of(supply(place + "/supply")) : Optional.empty(),
                read.wholeOrBlank("life", place + "/shelfLifeDays", 0),
                chosen(Ingredient::allergens, Allergens.names(), "allergen."),
                new Ingredient.Place(shelf, read.wholeOrBlank("walk", place + "/walk", 0)),
                chosen(Ingredient::cautions, List.of(Caution.values()), "caution."));
    }

    /** What is ticked, what was so before first and in its order. */
    private <E> List<E> chosen(
            Function<Ingredient, List<E>> before, Collection<E> all, String prefix) {
        Set<E> ordered = new LinkedHashSet<>();
        if (!isNew) {
            ordered.addAll(before.apply(book.ingredient(id)));
        }
        ordered.addAll(all);
        return ordered.stream().filter(one -> read.isOn(prefix + one)).toList();
    }

    private List<Container> containers(String place) {
        EntryIds ids = new EntryIds();
        List<Container> containers = new ArrayList<>();
        for (int row : EntryRows.CONTAINERS.filled(typed)) {
            String field = EntryRows.CONTAINERS.at(row);
            String here = place + "/" + containers.size();
            read.at(here + "/id", field + ".en");
            LocalText name = read.name(field);
            containers.add(
                    new Container(
                            ids.of(read.text(field + ".id"), name.en()),
                            name,
                            amount(field + ".holds", here + "/holds")));
        }
        return containers;
    }

    private Supply supply(String place) {
        List<DayOfWeek> days =
                Stream.of(DayOfWeek.values())
                        .filter(day -> read.isOn(RecipeForm.name(day)))
                        .toList();
        read.at(place + "/days", RecipeForm.name(DayOfWeek.MONDAY));
        if (read.text("supplier").isEmpty()) {
            read.wrong("supplier", Kind.NO_SUPPLIER);
        }
        return new Supply(
                read.text("supplier"),
                days,
                read.wholeOrBlank("lead", place + "/leadDays", 0),
                read.time("order-by", LocalTime.NOON),
                amount("pack", place + "/pack"),
                read.price(place, 0));
    }

    /** An amount of this ingredient; of one that could not be read the fault is there already. */
    private BigDecimal amount(String field, String place) {
        return read.amount(field, place, unit).orElse(BigDecimal.ONE);
    }

    private List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        boolean done = false;
        for (Use use : book.uses()) {
            if (!use.ingredient().equals(id)) {
                uses.add(use);
            } else if (!done) {
                done = true;
                own(uses);
            }
        }
        if (!done) {
            own(uses);
        }
        return uses;
    }

    private void own(List<Use> uses) {
        for (int row : EntryRows.USES.filled(typed)) {
            String field = EntryRows.USES.at(row);
            String place = "/uses/" + uses.size();
            for (String at : List.of("", "/item", "/size")) {
                read.at(place + at, field + ".item");
            }
            read.at(place + "/option", field + ".option");
            read.at(place + "/percent", field + ".much");
            String[] item = read.text(field + ".item").split("/", 2);
            String much = read.text(field + ".much");
            BigDecimal amount = BigDecimal.ZERO;
            int percent = 0;
            if (much.endsWith("%")) {
                percent = read.number(field + ".much", much.substring(0, much.length() - 1), 1);
            } else {
                amount = amount(field + ".much", place + "/amount");
            }
            String size = item.length > 1 ? item[1] : "";
            uses.add(new Use(id, item[0], size, read.text(field + ".option"), amount, percent));
        }
    }
}
