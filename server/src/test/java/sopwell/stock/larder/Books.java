package sopwell.stock.larder;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Caution;
import sopwell.menu.LocalText;
import sopwell.stock.recipes.Container;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Use;
import sopwell.stock.recipes.Watch;

/**
 * A small invented book for the demo's menu: beef is roasted, cooled and sliced, a relish is put
 * under oil, rolls and celery are bought. A regular beef takes 150 g of sliced beef and a roll.
 */
public final class Books {
    private Books() {}

    /** The book. */
    public static RecipeBook small() {
        return new RecipeBook(
                "small",
                new RecipeParts(
                        ingredients(),
                        List.of(beef(new BigDecimal("5500")), relish()),
                        List.of(
                                new Use("sliced-beef", "beef", "", "", new BigDecimal("150"), 0),
                                new Use("sliced-beef", "", "", "extra", BigDecimal.ZERO, 150),
                                new Use("rolls", "beef", "", "", BigDecimal.ONE, 0),
                                new Use("relish", "", "", "hot", new BigDecimal("28.35"), 0)),
                        List.of(),
                        new KitchenHours(
                                Map.of(
                                        DayOfWeek.WEDNESDAY,
                                        new KitchenHours.Span(
                                                LocalTime.of(7, 0), LocalTime.of(20, 0))))));
    }

    /** The book without one of its recipes; the ingredient is bought from then on. */
    static RecipeBook without(String recipe) {
        RecipeParts all = small().parts();
        return new RecipeBook(
                "small-without-" + recipe,
                new RecipeParts(
                        all.ingredients(),
                        all.recipes().stream().filter(one -> !one.makes().equals(recipe)).toList(),
                        all.uses(),
                        all.resources(),
                        all.hours()));
    }

    /** The book where every beef takes so many grams of another ingredient too. */
    static RecipeBook sprinkling(String ingredient, String grams) {
        RecipeParts all = small().parts();
        List<Use> uses = new ArrayList<>(all.uses());
        uses.add(new Use(ingredient, "beef", "", "", new BigDecimal(grams), 0));
        return new RecipeBook(
                "small-sprinkling-" + ingredient,
                new RecipeParts(
                        all.ingredients(), all.recipes(), uses, all.resources(), all.hours()));
    }

    /** The book whose roasts weigh so many kilograms raw. */
    public static RecipeBook smallWithRoasts(String kilograms) {
        RecipeParts all = small().parts();
        BigDecimal grams = new BigDecimal(kilograms).movePointRight(3);
        return new RecipeBook(
                "small-roasts-" + kilograms,
                new RecipeParts(
                        all.ingredients(),
                        List.of(beef(grams), relish()),
                        all.uses(),
                        all.resources(),
                        all.hours()));
    }

    /** The book with one of its ingredients by weight. */
    static RecipeBook weighing(String ingredient) {
        RecipeParts all = small().parts();
        return new RecipeBook(
                "small-weighing-" + ingredient,
                new RecipeParts(
                        all.ingredients().stream()
                                .map(
                                        one ->
                                                one.id().equals(ingredient)
                                                        ? ingredient(
                                                                one.id(), Unit.G, 0, 5, List.of())
                                                        : one)
                                .toList(),
                        all.recipes(),
                        all.uses(),
                        all.resources(),
                        all.hours()));
    }

    private static List<Ingredient> ingredients() {
        return List.of(
                ingredient("raw-beef", Unit.G, 0, 4, List.of()),
                ingredient("sliced-beef", Unit.G, 3, 1, List.of(Caution.SLICER)),
                ingredient("celery", Unit.G, 0, 3, List.of()),
                ingredient("relish", Unit.G, 10, 2, List.of(Caution.UNDER_OIL)),
                ingredient("rolls", Unit.EACH, 0, 5, List.of()));
    }

    private static Ingredient ingredient(
            String id, Unit base, int days, int order, List<Caution> cautions) {
        List<Container> containers =
                base == Unit.G
                        ? List.of(new Container("pan", name("pan"), new BigDecimal("4500")))
                        : List.of(new Container("tray", name("tray"), new BigDecimal("48")));
        return new Ingredient(
                id,
                name(id),
                base,
                containers,
                Optional.empty(),
                days,
                List.of(),
                new Ingredient.Place(name("walk-in"), order),
                cautions);
    }

    /** One lot is 5,500 g raw, of which 66 % are left. */
    private static Recipe beef(BigDecimal grams) {
        return new Recipe(
                "sliced-beef",
                List.of(new Recipe.Input("raw-beef", grams)),
                List.of(new Recipe.StageYield("all", name("all"), new BigDecimal("0.66"))),
                Optional.empty(),
                new Recipe.Lot(name("roast"), 1, 4),
                List.of(
                        step("trim", Watch.NONE),
                        step("roast", Watch.COOK_ROAST),
                        step("cool", Watch.COOL),
                        step("chill", Watch.COLD_HOLD),
                        step("slice", Watch.NONE)),
                "cool");
    }

    private static Recipe relish() {
        return new Recipe(
                "relish",
                List.of(
                        new Recipe.Input("celery", new BigDecimal("3000")),
                        new Recipe.Input("sliced-beef", new BigDecimal("10"))),
                List.of(),
                Optional.of(new BigDecimal("4000")),
                new Recipe.Lot(name("crock"), 1, 2),
                List.of(step("cut", Watch.NONE), step("chill", Watch.CHILL)),
                "cut");
    }

    private static PrepStep step(String id, Watch watch) {
        return new PrepStep(id, name(id), 60, 0, 0, Optional.empty(), 0, true, true, 5, watch);
    }

    private static LocalText name(String id) {
        return new LocalText(id, id);
    }
}
