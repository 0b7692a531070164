package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Watch;

/** Recipes in the document of a book of recipes. Stateless. */
final class RecipeFields {
    private static final List<String> WATCHES =
            Stream.of(Watch.values()).map(RecipeFields::written).toList();
    private static final String START = "start";
    private static final String END = "end";

    private RecipeFields() {}

    static Recipe recipe(Fields fields, RecipeReader reader) {
        String makes = fields.text("makes");
        List<Recipe.Input> inputs = fields.objects("inputs", inner -> input(inner, reader));
        List<Recipe.StageYield> yields = fields.objectsOr("yields", RecipeFields::stage);
        Optional<BigDecimal> out =
                fields.has("gives")
                        ? Optional.of(reader.amount(fields, "gives", makes))
                        : Optional.empty();
        Recipe.Lot lot = lot(fields.inner("lot"));
        List<PrepStep> steps = fields.objects("steps", RecipeFields::step);
        String last = steps.isEmpty() ? "" : steps.get(steps.size() - 1).id();
        return new Recipe(
                makes,
                inputs,
                yields,
                out,
                lot,
                steps,
                fields.mayHave("datedFrom") ? fields.text("datedFrom") : last);
    }

    private static Recipe.Input input(Fields fields, RecipeReader reader) {
        String ingredient = fields.text("ingredient");
        return new Recipe.Input(ingredient, reader.amount(fields, "amount", ingredient));
    }

    private static Recipe.StageYield stage(Fields fields) {
        return new Recipe.StageYield(
                fields.text("id"), fields.local("name"), fields.decimal("left"));
    }

    private static Recipe.Lot lot(Fields fields) {
        Recipe.Lot lot =
                new Recipe.Lot(
                        fields.local("name"),
                        fields.wholeOr("perPan", 1),
                        fields.whole("perRunMax"));
        fields.close();
        return lot;
    }

    private static PrepStep step(Fields fields) {
        List<String> attended = attended(fields);
        return new PrepStep(
                fields.text("id"),
                fields.local("name"),
                fields.whole("minutes"),
                fields.wholeOr("waitAtLeast", 0),
                fields.wholeOr("waitAtMost", 0),
                Optional.of(fields.textOr("resource")).filter(id -> !id.isEmpty()),
                fields.wholeOr("slots", 0),
                attended.contains(START),
                attended.contains(END),
                fields.wholeOr("handsMinutes", 0),
                watch(fields));
    }

    private static List<String> attended(Fields fields) {
        List<String> attended = fields.textsOr("attended");
        for (int n = 0; n < attended.size(); n++) {
            if (!List.of(START, END).contains(attended.get(n))) {
                fields.faults()
                        .unknown(
                                fields.at("attended") + "/" + n,
                                "end of a step",
                                attended.get(n),
                                List.of(START, END));
            }
        }
        return attended;
    }

    private static Watch watch(Fields fields) {
        String word = fields.textOr("watch");
        Optional<Watch> watch =
                Stream.of(Watch.values()).filter(one -> written(one).equals(word)).findFirst();
        if (watch.isEmpty() && !word.isEmpty()) {
            fields.faults().unknown(fields.at("watch"), "kind of watch", word, WATCHES);
        }
        return watch.orElse(Watch.NONE);
    }

    private static String written(Watch watch) {
        return MenuWriter.lower(watch).replace('_', '-');
    }

    static ObjectNode write(Recipe recipe, Map<String, Unit> units) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("makes", recipe.makes());
        ArrayNode inputs = node.putArray("inputs");
        for (Recipe.Input input : recipe.inputs()) {
            ObjectNode inner = inputs.addObject();
            inner.put("ingredient", input.ingredient());
            inner.put("amount", AmountText.written(input.amount(), units.get(input.ingredient())));
        }
        if (!recipe.yields().isEmpty()) {
            ArrayNode yields = node.putArray("yields");
            for (Recipe.StageYield stage : recipe.yields()) {
                yields.add(MenuWriter.named(stage.id(), stage.name()).put("left", stage.left()));
            }
        }
        recipe.statedOut()
                .ifPresent(
                        out ->
                                node.put(
                                        "gives",
                                        AmountText.written(out, units.get(recipe.makes()))));
        ObjectNode lot = node.putObject("lot");
        MenuWriter.local(lot, "name", recipe.lot().name());
        lot.put("perPan", recipe.lot().perPan());
        lot.put("perRunMax", recipe.lot().perRunMax());
        ArrayNode steps = node.putArray("steps");
        recipe.steps().forEach(step -> steps.add(step(step)));
        node.put("datedFrom", recipe.datedFrom());
        return node;
    }

    private static ObjectNode step(PrepStep step) {
        ObjectNode node = MenuWriter.named(step.id(), step.name());
        node.put("minutes", step.minutes());
        numberIfAny(node, "waitAtLeast", step.minWaitMinutes());
        numberIfAny(node, "waitAtMost", step.maxWaitMinutes());
        step.resource().ifPresent(id -> node.put("resource", id));
        numberIfAny(node, "slots", step.slotsPerLot());
        List<String> attended = new ArrayList<>();
        if (step.startAttended()) {
            attended.add(START);
        }
        if (step.endAttended()) {
            attended.add(END);
        }
        MenuWriter.textsIfAny(node, "attended", attended);
        numberIfAny(node, "handsMinutes", step.handsMinutes());
        if (step.watch() != Watch.NONE) {
            node.put("watch", written(step.watch()));
        }
        return node;
    }

    private static void numberIfAny(ObjectNode node, String field, int number) {
        if (number != 0) {
            node.put(field, number);
        }
    }
}
