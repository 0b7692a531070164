package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sopwell.menu.Menu;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Use;
import sopwell.web.T;

/** The fields by which one ingredient of a book is edited, with what stands in them. Stateless. */
public final class RecipeForm {
    private RecipeForm() {}

    /**
     * One field. Immutable.
     *
     * @param name stays the same while what it is about stays in the book
     * @param group the group of fields that it stands in
     * @param value as people write it
     */
    public record Field(String name, String group, String label, String value) {}

    /** All fields of an ingredient, which must be in the book. */
    static List<Field> of(RecipeBook book, Menu menu, String id, T t) {
        Ingredient one = book.ingredient(id);
        List<Field> fields = new ArrayList<>();
        book.recipe(id).ifPresent(recipe -> recipe(fields, book, recipe, t));
        fields.add(number("life", "shelf", t.get("recipes.field.life"), one.shelfLifeDays()));
        one.supply().ifPresent(supply -> supply(fields, one, supply, t));
        RecipeNames names = new RecipeNames(book, menu, t);
        for (Use use : book.uses()) {
            if (use.ingredient().equals(id)) {
                fields.add(new Field(name(use), "uses", names.subject(use), written(use, one)));
            }
        }
        return fields;
    }

    private static void recipe(List<Field> fields, RecipeBook book, Recipe recipe, T t) {
        for (Recipe.Input input : recipe.inputs()) {
            Ingredient taken = book.ingredient(input.ingredient());
            fields.add(
                    new Field(
                            "in." + taken.id(),
                            "inputs",
                            t.local(taken.name()),
                            AmountText.written(input.amount(), taken.unit())));
        }
        for (Recipe.StageYield stage : recipe.yields()) {
            String left = stage.left().toPlainString();
            fields.add(new Field("yield." + stage.id(), "yields", t.local(stage.name()), left));
        }
        Ingredient made = book.ingredient(recipe.makes());
        for (BigDecimal out : recipe.statedOut().stream().toList()) {
            String written = AmountText.written(out, made.unit());
            fields.add(new Field("gives", "lot", t.get("recipes.field.gives"), written));
        }
        String lot = "lot";
        fields.add(number("per-pan", lot, t.get("recipes.field.per-pan"), recipe.lot().perPan()));
        fields.add(
                number("per-run", lot, t.get("recipes.field.per-run"), recipe.lot().perRunMax()));
        recipe.steps().forEach(step -> step(fields, step, t));
    }

    private static void step(List<Field> fields, PrepStep step, T t) {
        String name = t.local(step.name());
        Map<String, Integer> figures = new LinkedHashMap<>();
        figures.put("minutes", step.minutes());
        figures.put("hands", step.handsMinutes());
        figures.put("least", step.minWaitMinutes());
        figures.put("most", step.maxWaitMinutes());
        figures.forEach(
                (figure, minutes) -> {
                    String field = "step." + step.id() + "." + figure;
                    String label = t.of("recipes.field." + figure, name);
                    fields.add(number(field, "steps", label, minutes));
                });
    }

    private static void supply(List<Field> fields, Ingredient one, Supply supply, T t) {
        String group = "supply";
        fields.add(
                new Field("supplier", group, t.get("recipes.field.supplier"), supply.supplier()));
        String pack = AmountText.written(supply.packInBase(), one.unit());
        fields.add(new Field("pack", group, t.get("recipes.field.pack"), pack));
        String price = BigDecimal.valueOf(supply.packCents(), 2).toPlainString();
        fields.add(new Field("price", group, t.get("recipes.field.price"), price));
        fields.add(number("lead", group, t.get("recipes.field.lead"), supply.leadDays()));
        String by = supply.orderBy().toString();
        fields.add(new Field("order-by", group, t.get("recipes.field.order-by"), by));
        for (DayOfWeek day : DayOfWeek.values()) {
            String on = supply.deliveryDays().contains(day) ? "on" : "";
            fields.add(new Field(name(day), "days", RecipeNames.day(day, t), on));
        }
    }

    private static Field number(String name, String group, String label, int value) {
        return new Field(name, group, label, Integer.toString(value));
    }

    /** The field of a delivery day. */
    static String name(DayOfWeek day) {
        return "day." + day.name().toLowerCase(Locale.ROOT);
    }

    /** The field of a use. */
    static String name(Use use) {
        String kind = use.isPercent() ? "percent" : "amount";
        return String.join(".", "use", use.item(), use.size(), use.option(), kind);
    }

    private static String written(Use use, Ingredient one) {
        return use.isPercent()
                ? use.percent() + " %"
                : AmountText.written(use.amount(), one.unit());
    }
}
