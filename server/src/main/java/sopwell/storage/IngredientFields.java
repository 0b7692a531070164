package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import sopwell.stock.recipes.AmountText;
import sopwell.stock.recipes.Container;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Supply;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.UnitWords;

/** Ingredients in the document of a book of recipes. Stateless. */
final class IngredientFields {
    private IngredientFields() {}

    static Ingredient read(Fields fields, String id, Unit unit, RecipeReader reader) {
        return new Ingredient(
                id,
                fields.local("name"),
                unit,
                fields.objectsOr("containers", inner -> container(inner, unit, reader)),
                supply(fields, unit, reader),
                fields.wholeOr("shelfLifeDays", 0),
                fields.textsOr("allergens"),
                new Ingredient.Place(fields.localOr("shelf"), fields.wholeOr("walk", 0)),
                CautionFields.read(fields));
    }

    private static Container container(Fields fields, Unit unit, RecipeReader reader) {
        return new Container(
                fields.text("id"),
                fields.local("name"),
                reader.amount(fields, "holds", Optional.of(unit.dimension())));
    }

    private static Optional<Supply> supply(Fields fields, Unit unit, RecipeReader reader) {
        if (!fields.mayHave("supply")) {
            return Optional.empty();
        }
        Fields inner = fields.inner("supply");
        Supply supply =
                new Supply(
                        inner.text("supplier"),
                        MenuReader.days(inner),
                        inner.whole("leadDays"),
                        RecipeReader.time(inner, "orderBy"),
                        reader.amount(inner, "pack", Optional.of(unit.dimension())),
                        inner.cents("packCents"));
        inner.close();
        return Optional.of(supply);
    }

    static ObjectNode write(Ingredient one) {
        ObjectNode node = MenuWriter.named(one.id(), one.name());
        node.put("unit", UnitWords.written(one.unit()));
        containers(node, one.containers(), one.unit());
        one.supply().ifPresent(supply -> supply(node.putObject("supply"), supply, one.unit()));
        if (one.shelfLifeDays() != 0) {
            node.put("shelfLifeDays", one.shelfLifeDays());
        }
        MenuWriter.textsIfAny(node, "allergens", one.allergens());
        if (one.place().isNamed()) {
            MenuWriter.local(node, "shelf", one.place().shelf());
        }
        if (one.place().order() != 0) {
            node.put("walk", one.place().order());
        }
        CautionFields.write(node, one.cautions());
        return node;
    }

    private static void containers(ObjectNode node, List<Container> containers, Unit unit) {
        if (!containers.isEmpty()) {
            ArrayNode array = node.putArray("containers");
            for (Container one : containers) {
                ObjectNode inner = MenuWriter.named(one.id(), one.name());
                inner.put("holds", AmountText.written(one.inBase(), unit));
                array.add(inner);
            }
        }
    }

    private static void supply(ObjectNode node, Supply supply, Unit unit) {
        node.put("supplier", supply.supplier());
        MenuWriter.texts(
                node, "days", supply.deliveryDays().stream().map(MenuWriter::lower).toList());
        node.put("leadDays", supply.leadDays());
        node.put("orderBy", supply.orderBy().toString());
        node.put("pack", AmountText.written(supply.packInBase(), unit));
        node.put("packCents", supply.packCents());
    }
}
