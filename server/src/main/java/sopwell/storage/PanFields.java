package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sopwell.menu.LocalText;
import sopwell.menu.Pan;

/** Pans in a menu's JSON. Stateless. */
final class PanFields {
    private PanFields() {}

    static Pan read(Fields fields) {
        return new Pan(
                fields.text("id"),
                fields.local("name"),
                fields.text("station"),
                fields.local("unit"),
                fields.whole("full"),
                fields.whole("reheatMinutes"),
                fields.objects("uses", PanFields::use),
                CautionFields.read(fields));
    }

    private static Pan.Use use(Fields fields) {
        return new Pan.Use(
                fields.textOr("item"),
                fields.textOr("size"),
                fields.textOr("option"),
                fields.wholeOr("amount", 0),
                fields.wholeOr("percent", 0));
    }

    static ObjectNode write(Pan pan) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("id", pan.id());
        local(node.putObject("name"), pan.name());
        node.put("station", pan.station());
        local(node.putObject("unit"), pan.unit());
        node.put("full", pan.full());
        node.put("reheatMinutes", pan.reheatMinutes());
        ArrayNode uses = node.putArray("uses");
        pan.uses().forEach(use -> write(uses.addObject(), use));
        CautionFields.write(node, pan.cautions());
        return node;
    }

    private static void write(ObjectNode node, Pan.Use use) {
        textIfAny(node, "item", use.item());
        textIfAny(node, "size", use.size());
        textIfAny(node, "option", use.option());
        if (use.amount() != 0) {
            node.put("amount", use.amount());
        }
        if (use.percent() != 0) {
            node.put("percent", use.percent());
        }
    }

    private static void textIfAny(ObjectNode node, String field, String text) {
        if (!text.isEmpty()) {
            node.put(field, text);
        }
    }

    private static void local(ObjectNode node, LocalText text) {
        node.put("en", text.en());
        node.put("es", text.es());
    }
}
