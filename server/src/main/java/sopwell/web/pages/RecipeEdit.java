package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sopwell.menu.Menu;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeCheck;
import sopwell.stock.recipes.RecipeFault;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Use;

/**
 * A book with what was typed into the fields of one ingredient. A field that was not sent leaves
 * what it stands for as it is. Not thread-safe: for one request.
 */
final class RecipeEdit {
    private final RecipeBook book;
    private final String id;
    private final Map<String, String> typed;
    private final RecipeTyped read;
    private final RecipeParts parts;

    RecipeEdit(RecipeBook book, String id, Map<String, String> typed) {
        this.book = book;
        this.id = id;
        this.typed = typed;
        this.read = new RecipeTyped(typed);
        this.parts = edited();
    }

    /** The edited parts; only good without faults. */
    RecipeParts parts() {
        return parts;
    }

    /**
     * What is wrong, by the name of the field where it can be mended; the name is empty for what
     * belongs to none.
     */
    Map<String, RecipeFault> faults(Menu menu) {
        if (read.faults().isEmpty()) {
            read.place(RecipeCheck.of(parts, menu).faults());
        }
        return read.faults();
    }

    private RecipeParts edited() {
        List<Ingredient> ingredients = new ArrayList<>();
        for (Ingredient one : book.ingredients()) {
            String place = "/ingredients/" + ingredients.size();
            ingredients.add(one.id().equals(id) ? ingredient(one, place) : one);
        }
        List<Recipe> recipes = new ArrayList<>();
        for (Recipe recipe : book.recipes()) {
            String place = "/recipes/" + recipes.size();
            recipes.add(recipe.makes().equals(id) ? recipe(recipe, place) : recipe);
        }
        return new RecipeParts(ingredients, recipes, uses(), book.resources(), book.hours());
    }

    private Ingredient ingredient(Ingredient one, String place) {
        return new Ingredient(
                one.id(),
                one.name(),
                one.unit(),
                one.containers(),
                one.supply().map(supply -> supply(supply, place + "/supply", one.unit())),
                read.whole("life", place + "/shelfLifeDays", one.shelfLifeDays()),
                one.allergens(),
                one.place(),
                one.cautions());
    }

    private Supply supply(Supply supply, String place, Unit unit) {
        List<DayOfWeek> days = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            if (!typed.getOrDefault(RecipeForm.name(day), "").isEmpty()) {
                days.add(day);
            }
        }
        read.at(place + "/days", RecipeForm.name(DayOfWeek.MONDAY));
        String supplier = typed.getOrDefault("supplier", supply.supplier()).strip();
        return new Supply(
                supplier.isEmpty() ? supply.supplier() : supplier,
                typed.containsKey("days") ? days : supply.deliveryDays(),
                read.whole("lead", place + "/leadDays", supply.leadDays()),
                read.time("order-by", supply.orderBy()),
                read.amount("pack", place + "/pack", unit).orElse(supply.packInBase()),
                read.price(place, supply.packCents()));
    }

    private Recipe recipe(Recipe recipe, String place) {
        List<Recipe.StageYield> yields = new ArrayList<>();
        for (Recipe.StageYield stage : recipe.yields()) {
            String here = place + "/yields/" + yields.size() + "/left";
            BigDecimal left = read.share("yield." + stage.id(), here, stage.left());
            yields.add(new Recipe.StageYield(stage.id(), stage.name(), left));
        }
        Unit made = book.ingredient(recipe.makes()).unit();
        List<PrepStep> steps = new ArrayList<>();
        for (PrepStep step : recipe.steps()) {
            steps.add(step(step, place + "/steps/" + steps.size()));
        }
        return new Recipe(
                recipe.makes(),
                inputs(recipe, place + "/inputs"),
                yields,
                recipe.statedOut()
                        .map(out -> read.amount("gives", place + "/gives", made).orElse(out)),
                new Recipe.Lot(
                        recipe.lot().name(),
                        read.whole("per-pan", place + "/lot/perPan", recipe.lot().perPan()),
                        read.whole("per-run", place + "/lot/perRunMax", recipe.lot().perRunMax())),
                steps,
                recipe.datedFrom());
    }

    private List<Recipe.Input> inputs(Recipe recipe, String place) {
        List<Recipe.Input> inputs = new ArrayList<>();
        for (Recipe.Input input : recipe.inputs()) {
            String field = "in." + input.ingredient();
            if (!typed.containsKey(field)) {
                inputs.add(input);
            } else if (!typed.get(field).isBlank()) {
                add(inputs, place, field, input.ingredient());
            }
        }
        String more = typed.getOrDefault("add", "");
        if (book.hasIngredient(more)) {
            add(inputs, place, "add-amount", more);
        }
        read.at(place, "add");
        return inputs;
    }

    private void add(List<Recipe.Input> inputs, String place, String field, String ingredient) {
        String here = place + "/" + inputs.size();
        read.at(here, field);
        read.at(here + "/ingredient", field);
        Unit unit = book.ingredient(ingredient).unit();
        BigDecimal amount = read.amount(field, here + "/amount", unit).orElse(BigDecimal.ZERO);
        inputs.add(new Recipe.Input(ingredient, amount));
    }

    private PrepStep step(PrepStep step, String place) {
        String start = "step." + step.id() + ".";
        return new PrepStep(
                step.id(),
                step.name(),
                read.whole(start + "minutes", place + "/minutes", step.minutes()),
                read.whole(start + "least", place + "/waitAtLeast", step.minWaitMinutes()),
                read.whole(start + "most", place + "/waitAtMost", step.maxWaitMinutes()),
                step.resource(),
                step.slotsPerLot(),
                step.startAttended(),
                step.endAttended(),
                read.whole(start + "hands", place + "/handsMinutes", step.handsMinutes()),
                step.watch());
    }

    private List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (Use use : book.uses()) {
            String field = RecipeForm.name(use);
            String text = typed.getOrDefault(field, "").strip();
            if (!use.ingredient().equals(id) || !typed.containsKey(field)) {
                uses.add(use);
            } else if (!text.isEmpty()) {
                uses.add(use(use, field, text, "/uses/" + uses.size()));
            }
        }
        return uses;
    }

    private Use use(Use use, String field, String text, String place) {
        for (String at : List.of("", "/item", "/size", "/option", "/percent", "/amount")) {
            read.at(place + at, field);
        }
        BigDecimal amount = BigDecimal.ZERO;
        int percent = 0;
        if (text.endsWith("%")) {
            percent =
                    read.number(field, text.substring(0, text.length() - 1).strip(), use.percent());
        } else {
            Unit unit = book.ingredient(id).unit();
            amount = read.amount(field, place + "/amount", unit).orElse(BigDecimal.ONE);
        }
        return new Use(use.ingredient(), use.item(), use.size(), use.option(), amount, percent);
    }
}
