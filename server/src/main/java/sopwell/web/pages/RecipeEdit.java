package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import sopwell.menu.Menu;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
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
 * A book with what was typed into the fields of one ingredient. A field that was not sent leaves
 * what it stands for as it is. Not thread-safe: for one request.
 */
final class RecipeEdit {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final RecipeBook book;
    private final String id;
    private final Map<String, String> typed;
    private final Map<String, RecipeFault> faults = new LinkedHashMap<>();
    private final Map<String, String> fieldAt = new LinkedHashMap<>();
    private final RecipeParts parts;

    RecipeEdit(RecipeBook book, String id, Map<String, String> typed) {
        this.book = book;
        this.id = id;
        this.typed = typed;
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
        if (faults.isEmpty()) {
            for (RecipeFault fault : RecipeCheck.of(parts, menu).faults()) {
                faults.putIfAbsent(fieldAt.getOrDefault(fault.place(), ""), fault);
            }
        }
        return faults;
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
                whole("life", place + "/shelfLifeDays", one.shelfLifeDays()),
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
        fieldAt.put(place + "/days", RecipeForm.name(DayOfWeek.MONDAY));
        String supplier = typed.getOrDefault("supplier", supply.supplier()).strip();
        return new Supply(
                supplier.isEmpty() ? supply.supplier() : supplier,
                typed.containsKey("days") ? days : supply.deliveryDays(),
                whole("lead", place + "/leadDays", supply.leadDays()),
                time(supply.orderBy()),
                amount("pack", place + "/pack", unit).orElse(supply.packInBase()),
                price(place, supply.packCents()));
    }

    private Recipe recipe(Recipe recipe, String place) {
        List<Recipe.StageYield> yields = new ArrayList<>();
        for (Recipe.StageYield stage : recipe.yields()) {
            String here = place + "/yields/" + yields.size() + "/left";
            BigDecimal left = share("yield." + stage.id(), here, stage.left());
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
                recipe.statedOut().map(out -> amount("gives", place + "/gives", made).orElse(out)),
                new Recipe.Lot(
                        recipe.lot().name(),
                        whole("per-pan", place + "/lot/perPan", recipe.lot().perPan()),
                        whole("per-run", place + "/lot/perRunMax", recipe.lot().perRunMax())),
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
        fieldAt.put(place, "add");
        return inputs;
    }

    private void add(List<Recipe.Input> inputs, String place, String field, String ingredient) {
        String here = place + "/" + inputs.size();
        fieldAt.put(here, field);
        fieldAt.put(here + "/ingredient", field);
        Unit unit = book.ingredient(ingredient).unit();
        BigDecimal amount = amount(field, here + "/amount", unit).orElse(BigDecimal.ZERO);
        inputs.add(new Recipe.Input(ingredient, amount));
    }

    private PrepStep step(PrepStep step, String place) {
        String start = "step." + step.id() + ".";
        return new PrepStep(
                step.id(),
                step.name(),
                whole(start + "minutes", place + "/minutes", step.minutes()),
                whole(start + "least", place + "/waitAtLeast", step.minWaitMinutes()),
                whole(start + "most", place + "/waitAtMost", step.maxWaitMinutes()),
                step.resource(),
                step.slotsPerLot(),
                step.startAttended(),
                step.endAttended(),
                whole(start + "hands", place + "/handsMinutes", step.handsMinutes()),
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
            fieldAt.put(place + at, field);
        }
        BigDecimal amount = BigDecimal.ZERO;
        int percent = 0;
        if (text.endsWith("%")) {
            percent = number(field, text.substring(0, text.length() - 1).strip(), use.percent());
        } else {
            Unit unit = book.ingredient(id).unit();
            amount = amount(field, place + "/amount", unit).orElse(BigDecimal.ONE);
        }
        return new Use(use.ingredient(), use.item(), use.size(), use.option(), amount, percent);
    }

    private Optional<BigDecimal> amount(String field, String place, Unit unit) {
        fieldAt.put(place, field);
        if (!typed.containsKey(field)) {
            return Optional.empty();
        }
        AmountText.Read read = AmountText.read(typed.get(field), Optional.of(unit.dimension()));
        read.fault().ifPresent(fault -> faults.put(field, fault.at(place)));
        return read.amount();
    }

    private int whole(String field, String place, int otherwise) {
        fieldAt.put(place, field);
        String text = typed.getOrDefault(field, Integer.toString(otherwise));
        return number(field, text.strip(), otherwise);
    }

    private int number(String field, String text, int otherwise) {
        if (text.matches("[0-9]{1,9}")) {
            return Integer.parseInt(text);
        }
        faults.put(field, new RecipeFault("", Kind.NO_WHOLE_NUMBER, List.of(text)));
        return otherwise;
    }

    private BigDecimal share(String field, String place, BigDecimal otherwise) {
        fieldAt.put(place, field);
        String text = typed.getOrDefault(field, otherwise.toPlainString()).strip();
        if (text.matches("[0-9]{0,3}\\.?[0-9]{1,6}")) {
            return new BigDecimal(text);
        }
        if (text.matches("[0-9]{1,3}(\\.[0-9]{1,4})? ?%")) {
            return new BigDecimal(text.replace("%", "").strip()).divide(HUNDRED);
        }
        faults.put(field, new RecipeFault(place, Kind.NO_SHARE, List.of(text)));
        return otherwise;
    }

    private LocalTime time(LocalTime otherwise) {
        String text = typed.getOrDefault("order-by", otherwise.toString()).strip();
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException wrong) {
            faults.put("order-by", new RecipeFault("", Kind.NO_TIME, List.of(text)));
            return otherwise;
        }
    }

    private long price(String place, long otherwise) {
        fieldAt.put(place + "/packCents", "price");
        if (!typed.containsKey("price")) {
            return otherwise;
        }
        OptionalLong cents = Amounts.cents(typed.get("price").strip());
        if (cents.isEmpty()) {
            faults.put("price", new RecipeFault("", Kind.NO_PRICE, List.of(typed.get("price"))));
        }
        return cents.orElse(otherwise);
    }
}
