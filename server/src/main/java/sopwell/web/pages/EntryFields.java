package sopwell.web.pages;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.LocalText;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.Container;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Use;

/** What would have been typed to make an entry as it stands in a book. For one request. */
final class EntryFields {
    private final RecipeBook book;
    private final Ingredient one;
    private final Map<String, String> fields = new LinkedHashMap<>();

    private EntryFields(RecipeBook book, String id) {
        this.book = book;
        this.one = book.ingredient(id);
    }

    /** The fields of an ingredient that is in the book. */
    static Map<String, String> of(RecipeBook book, String id) {
        EntryFields all = new EntryFields(book, id);
        all.ingredient();
        all.one.supply().ifPresent(all::supply);
        book.recipe(id).ifPresent(all::recipe);
        all.uses();
        return all.fields;
    }

    private void ingredient() {
        name("name", one.name());
        put("unit", one.unit().name());
        name("shelf", one.place().shelf());
        number("walk", one.place().order());
        number("life", one.shelfLifeDays());
        one.allergens().forEach(allergen -> put("allergen." + allergen, "on"));
        one.cautions().forEach(caution -> put("caution." + caution.name(), "on"));
        put("how", EntryParts.How.FREE.written());
        int row = 0;
        for (Container container : one.containers()) {
            String at = EntryRows.CONTAINERS.at(row++);
            put(at + ".id", container.id());
            name(at, container.name());
            amount(at + ".holds", container.inBase(), one.unit());
        }
    }

    private void supply(Supply supply) {
        put("how", EntryParts.How.BOUGHT.written());
        put("supplier", supply.supplier());
        amount("pack", supply.packInBase(), one.unit());
        put("price", BigDecimal.valueOf(supply.packCents(), 2).toPlainString());
        put("lead", Integer.toString(supply.leadDays()));
        put("order-by", supply.orderBy().toString());
        supply.deliveryDays().forEach(day -> put(RecipeForm.name(day), "on"));
    }

    private void recipe(Recipe recipe) {
        put("how", EntryParts.How.MADE.written());
        int row = 0;
        for (Recipe.Input input : recipe.inputs()) {
            String at = EntryRows.INPUTS.at(row++);
            put(at + ".what", input.ingredient());
            Unit unit = book.ingredient(input.ingredient()).unit();
            amount(at + ".amount", input.amount(), unit);
        }
        row = 0;
        for (Recipe.StageYield stage : recipe.yields()) {
            String at = EntryRows.YIELDS.at(row++);
            put(at + ".id", stage.id());
            name(at, stage.name());
            put(at + ".left", stage.left().toPlainString());
        }
        recipe.statedOut().ifPresent(out -> amount("gives", out, one.unit()));
        name("lot", recipe.lot().name());
        number("per-pan", recipe.lot().perPan());
        number("per-run", recipe.lot().perRunMax());
        List<PrepStep> steps = recipe.steps();
        for (int n = 0; n < steps.size(); n++) {
            step(steps.get(n), EntryRows.STEPS.at(n));
            if (steps.get(n).id().equals(recipe.datedFrom())) {
                put("dated", Integer.toString(n));
            }
        }
    }

    private void step(PrepStep step, String at) {
        put(at + ".id", step.id());
        name(at, step.name());
        minutes(at + ".minutes", step.minutes());
        minutes(at + ".hands", step.handsMinutes());
        minutes(at + ".least", step.minWaitMinutes());
        minutes(at + ".most", step.maxWaitMinutes());
        step.resource().ifPresent(resource -> put(at + ".resource", resource));
        number(at + ".slots", step.slotsPerLot());
        if (step.startAttended()) {
            put(at + ".start", "on");
        }
        if (step.endAttended()) {
            put(at + ".end", "on");
        }
        put(at + ".watch", step.watch().name());
    }

    private void uses() {
        int row = 0;
        for (Use use : book.uses()) {
            if (use.ingredient().equals(one.id())) {
                String at = EntryRows.USES.at(row++);
                put(
                        at + ".item",
                        use.size().isEmpty() ? use.item() : use.item() + "/" + use.size());
                put(at + ".option", use.option());
                if (use.isPercent()) {
                    put(at + ".much", use.percent() + " %");
                } else {
                    amount(at + ".much", use.amount(), one.unit());
                }
            }
        }
    }

    private void put(String field, String value) {
        fields.put(field, value);
    }

    private void name(String field, LocalText name) {
        put(field + ".en", name.en());
        put(field + ".es", name.es());
    }

    private void number(String field, int number) {
        if (number != 0) {
            put(field, Integer.toString(number));
        }
    }

    private void minutes(String field, int minutes) {
        if (minutes != 0) {
            put(field, StepTime.written(minutes));
        }
    }

    private void amount(String field, BigDecimal base, Unit unit) {
        put(field, AmountText.written(base, unit));
    }
}
