package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.RecipeParts;
import sopwell.stock.recipes.Resource;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Use;

/**
 * Writes a book of recipes as JSON, always in the same form: the same content gives the same bytes,
 * and so the same revision. Stateless.
 */
public final class RecipeWriter {
    private RecipeWriter() {}

    /** A book of these parts under the revision of their content. */
    public static RecipeBook book(RecipeParts parts) {
        byte[] canonical = tree(parts).toString().getBytes(StandardCharsets.UTF_8);
        return new RecipeBook(MenuWriter.revision(canonical), parts);
    }

    /** The whole book; every ingredient that it names is in it. */
    public static ObjectNode tree(RecipeParts parts) {
        Map<String, Unit> units = new HashMap<>();
        parts.ingredients().forEach(one -> units.put(one.id(), one.unit()));
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode ingredients = root.putArray("ingredients");
        parts.ingredients().forEach(one -> ingredients.add(IngredientFields.write(one)));
        ArrayNode recipes = root.putArray("recipes");
        parts.recipes().forEach(recipe -> recipes.add(RecipeFields.write(recipe, units)));
        ArrayNode uses = root.putArray("uses");
        parts.uses().forEach(use -> uses.add(use(use, units.get(use.ingredient()))));
        ArrayNode resources = root.putArray("resources");
        parts.resources().forEach(resource -> resources.add(resource(resource)));
        ObjectNode hours = root.putObject("hours");
        parts.hours().days().forEach((day, span) -> span(hours, MenuWriter.lower(day), span));
        return root;
    }

    private static ObjectNode use(Use use, Unit unit) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("ingredient", use.ingredient());
        textIfAny(node, "item", use.item());
        textIfAny(node, "size", use.size());
        textIfAny(node, "option", use.option());
        if (use.isPercent()) {
            node.put("percent", use.percent());
        } else {
            node.put("amount", AmountText.written(use.amount(), unit));
        }
        return node;
    }

    private static ObjectNode resource(Resource resource) {
        ObjectNode node = MenuWriter.named(resource.id(), resource.name());
        node.put("slots", resource.slots());
        node.put("turnaroundMinutes", resource.turnaroundMinutes());
        return node;
    }

    private static void span(ObjectNode hours, String day, KitchenHours.Span span) {
        ObjectNode node = hours.putObject(day);
        node.put("from", span.from().toString());
        node.put("to", span.to().toString());
    }

    private static void textIfAny(ObjectNode node, String field, String text) {
        if (!text.isEmpty()) {
            node.put(field, text);
        }
    }
}
