package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.menu.Faults;
import sopwell.menu.LocalText;
import sopwell.orders.Texts;

/**
 * Reads the fields of one JSON object, and notes everything that is missing, of the wrong type or
 * not known. What can't be read comes back empty, so that reading goes on to the next fault. Not
 * thread-safe: for one reading.
 */
final class Fields {
    private static final JsonNode NONE = MissingNode.getInstance();

    private final JsonNode object;
    private final String place;
    private final Faults faults;
    private final Set<String> known = new LinkedHashSet<>();

    Fields(JsonNode object, String place, Faults faults) {
        this.object = object;
        this.place = place;
        this.faults = faults;
        if (!object.isObject()) {
            wrongType(place, object, "an object");
        }
    }

    /** Where a field stands. */
    String at(String field) {
        return JsonTree.under(place, field);
    }

    Faults faults() {
        return faults;
    }

    boolean has(String field) {
        return object.has(field);
    }

    /** Whether a field is there that may be left out. */
    boolean mayHave(String field) {
        return !get(field).isMissingNode();
    }

    /** A number that must be there, with a point or without; 0 when it can't be read. */
    BigDecimal decimal(String field) {
        JsonNode node = needed(field);
        if (!node.isMissingNode() && !node.isNumber()) {
            wrongType(at(field), node, "a number");
        }
        return node.isNumber() ? node.decimalValue() : BigDecimal.ZERO;
    }

    /** A text that must be there and not be empty. */
    String text(String field) {
        return textOf(needed(field), at(field));
    }

    /** A text that may be left out; left out, it is empty. */
    String textOr(String field) {
        JsonNode node = get(field);
        if (node.isMissingNode() || (node.isTextual() && node.textValue().isEmpty())) {
            return "";
        }
        return textOf(node, at(field));
    }

    /** A text in both languages. */
    LocalText local(String field) {
        JsonNode node = needed(field);
        if (node.isMissingNode()) {
            return new LocalText("", "");
        }
        Fields languages = new Fields(node, at(field), faults);
        LocalText text = new LocalText(languages.text("en"), languages.text("es"));
        languages.close();
        return text;
    }

    /**
     * A text in both languages that may be left out; left out, it is empty. A text alone stands for
     * both languages: before there were two, it was written so.
     */
    LocalText localOr(String field) {
        JsonNode node = get(field);
        if (node.isMissingNode()) {
            return new LocalText("", "");
        }
        if (node.isTextual()) {
            String text = textOr(field);
            return new LocalText(text, text);
        }
        return local(field);
    }

    /** A whole number that must be there. */
    int whole(String field) {
        return (int) number(needed(field), at(field), Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    /** A whole number that may be left out. */
    int wholeOr(String field, int leftOut) {
        JsonNode node = get(field);
        return node.isMissingNode()
                ? leftOut
                : (int) number(node, at(field), Integer.MIN_VALUE, Integer.MAX_VALUE);
    }

    /** Cents, which must be there. */
    long cents(String field) {
        return number(needed(field), at(field), Long.MIN_VALUE, Long.MAX_VALUE);
    }

    /** A text that nobody reads, of any length; empty when it is not there. */
    String secret(String field) {
        JsonNode node = needed(field);
        if (!node.isMissingNode() && !node.isTextual()) {
            wrongType(at(field), node, "a text");
        }
        return node.asText("");
    }

    /** A moment in milliseconds, which must be there. */
    long moment(String field) {
        return number(needed(field), at(field), 0, Long.MAX_VALUE);
    }

    /** True or false, which must be there. */
    boolean yes(String field) {
        JsonNode node = needed(field);
        if (!node.isMissingNode() && !node.isBoolean()) {
            wrongType(at(field), node, "true or false");
        }
        return node.asBoolean(false);
    }

    /** A list of whole numbers that may be left out. */
    List<Long> wholesOr(String field) {
        return list(
                get(field),
                at(field),
                (node, here) -> number(node, here, Long.MIN_VALUE, Long.MAX_VALUE));
    }

    /** A list of texts that may be left out. */
    List<String> textsOr(String field) {
        return list(get(field), at(field), this::textOf);
    }

    /** A list of texts that must be there. */
    List<String> texts(String field) {
        return list(needed(field), at(field), this::textOf);
    }

    /** A list of objects that must be there. */
    <T> List<T> objects(String field, Function<Fields, T> reader) {
        return list(needed(field), at(field), (node, here) -> object(node, here, reader));
    }

    /** A list of objects that may be left out. */
    <T> List<T> objectsOr(String field, Function<Fields, T> reader) {
        return list(get(field), at(field), (node, here) -> object(node, here, reader));
    }

    /** One object that must be there. */
    Fields inner(String field) {
        JsonNode node = needed(field);
        JsonNode safe = node.isMissingNode() ? JsonNodeFactory.instance.objectNode() : node;
        return new Fields(safe, at(field), node.isMissingNode() ? new Faults() : faults);
    }

    /** An object whose field names are free and whose values are whole numbers. */
    Map<String, Integer> numbers(String field) {
        Map<String, Integer> numbers = new TreeMap<>();
        JsonNode node = needed(field);
        if (!node.isMissingNode() && !node.isObject()) {
            wrongType(at(field), node, "an object");
        }
        tooMany(at(field), node.size());
        for (Map.Entry<String, JsonNode> next : node.properties()) {
            String here = JsonTree.under(at(field), next.getKey());
            long number = number(next.getValue(), here, Integer.MIN_VALUE, Integer.MAX_VALUE);
            numbers.put(next.getKey(), (int) number);
        }
        return numbers;
    }

    /** Notes every field that nobody asked for. */
    void close() {
        for (Iterator<String> names = object.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                faults.unknown(at(name), "field", name, known);
            }
        }
    }

    /** How a list's entry is read. */
    private interface Entry<T> {
        T read(JsonNode node, String place);
    }

    private <T> List<T> list(JsonNode node, String where, Entry<T> entry) {
        List<T> list = new ArrayList<>();
        if (node.isMissingNode()) {
            return list;
        }
        if (!node.isArray()) {
            wrongType(where, node, "a list");
            return list;
        }
        if (!tooMany(where, node.size())) {
            for (int n = 0; n < node.size(); n++) {
                list.add(entry.read(node.get(n), where + "/" + n));
            }
        }
        return list;
    }

    private <T> T object(JsonNode node, String here, Function<Fields, T> reader) {
        Fields fields = new Fields(node, here, faults);
        T read = reader.apply(fields);
        fields.close();
        return read;
    }

    private boolean tooMany(String where, int count) {
        if (count <= Limits.MENU_ENTRIES_MAX) {
            return false;
        }
        faults.add(
                where, "There are " + count + ".", "The most is " + Limits.MENU_ENTRIES_MAX + ".");
        return true;
    }

    private JsonNode get(String field) {
        known.add(field);
        JsonNode node = object.get(field);
        return node == null ? NONE : node;
    }

    private JsonNode needed(String field) {
        JsonNode node = get(field);
        if (node.isMissingNode() && object.isObject()) {
            faults.add(
                    at(field),
                    "The field \"" + field + "\" is missing.",
                    "Every entry of this kind has one.");
        }
        return node;
    }

    private String textOf(JsonNode node, String where) {
        if (node.isMissingNode()) {
            return "";
        }
        if (!node.isTextual()) {
            wrongType(where, node, "a text");
            return "";
        }
        String text = node.textValue();
        if (text.isBlank()) {
            faults.add(where, "The text is empty.", "Write something that people can read.");
        } else if (text.length() > Limits.WORD_CHARS_MAX) {
            faults.add(
                    where,
                    "The text has " + text.length() + " characters.",
                    "The most is " + Limits.WORD_CHARS_MAX + ".");
        } else if (!Texts.isClear(text)) {
            faults.add(where, "The text has a character that can't be shown.", "Type it anew.");
        }
        return text;
    }

    private long number(JsonNode node, String where, long min, long max) {
        if (node.isMissingNode()) {
            return 0;
        }
        if (!node.isIntegralNumber()) {
            wrongType(where, node, "a whole number");
            return 0;
        }
        if (!node.canConvertToLong() || node.longValue() < min || node.longValue() > max) {
            faults.add(where, "The number is far out of range.", "Write a smaller one.");
            return 0;
        }
        return node.longValue();
    }

    private void wrongType(String where, JsonNode node, String wanted) {
        String found =
                switch (node.getNodeType()) {
                    case ARRAY -> "a list";
                    case OBJECT, POJO -> "an object";
                    case BOOLEAN -> "true or false";
                    case NUMBER -> node.isIntegralNumber() ? "a whole number" : "a broken number";
                    case STRING, BINARY -> "a text";
                    case NULL, MISSING -> "nothing (null)";
                };
        faults.add(where, "This is " + found + ".", "It should be " + wanted + ".");
    }
}
