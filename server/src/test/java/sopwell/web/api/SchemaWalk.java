package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Holds JSON to the schemas of the interface's description. Knows the keywords that the description
 * uses and fails on any other, so that nothing is passed over in silence. Every field that an
 * answer has must be described.
 */
final class SchemaWalk {
    private static final Set<String> KEYWORDS =
            Set.of(
                    "$ref",
                    "description",
                    "type",
                    "properties",
                    "required",
                    "additionalProperties",
                    "items",
                    "enum",
                    "const",
                    "oneOf",
                    "pattern",
                    "format",
                    "minimum",
                    "maximum");

    private final JsonNode document;

    SchemaWalk(JsonNode document) {
        this.document = document;
    }

    /** What a value does that its schema does not allow; each with its JSON Pointer. */
    List<String> faults(JsonNode schema, JsonNode value) {
        List<String> faults = new ArrayList<>();
        walk(schema, value, "", faults);
        return faults;
    }

    /** Follows a reference, if it is one. */
    JsonNode resolved(JsonNode node) {
        return node.has("$ref")
                ? resolved(document.at(node.path("$ref").textValue().substring(1)))
                : node;
    }

    private void walk(JsonNode named, JsonNode value, String at, List<String> faults) {
        JsonNode schema = resolved(named);
        if (schema.isMissingNode()) {
            faults.add(at + ": no such schema: " + named);
            return;
        }
        schema.fieldNames()
                .forEachRemaining(
                        keyword -> {
                            if (!KEYWORDS.contains(keyword)) {
                                faults.add(at + ": unknown keyword " + keyword);
                            }
                        });
        if (schema.has("oneOf")) {
            oneOf(schema.path("oneOf"), value, at, faults);
        }
        if (schema.has("const") && !schema.path("const").equals(value)) {
            faults.add(at + ": is " + value + ", not " + schema.path("const"));
        }
        if (schema.has("enum") && !contains(schema.path("enum"), value)) {
            faults.add(at + ": is " + value + ", none of " + schema.path("enum"));
        }
        switch (schema.path("type").asText()) {
            case "object" -> object(schema, value, at, faults);
            case "array" -> array(schema, value, at, faults);
            case "string" -> string(schema, value, at, faults);
            case "integer", "number" -> number(schema, value, at, faults);
            case "boolean" -> check(value.isBoolean(), at, value, "true or false", faults);
            case "" -> {}
            default -> faults.add(at + ": unknown type " + schema.path("type"));
        }
    }

    private void oneOf(JsonNode choices, JsonNode value, String at, List<String> faults) {
        int fitting = 0;
        List<String> seen = new ArrayList<>();
        for (JsonNode choice : choices) {
            List<String> these = new ArrayList<>();
            walk(choice, value, at, these);
            fitting += these.isEmpty() ? 1 : 0;
            seen.addAll(these);
        }
        if (fitting != 1) {
            faults.add(at + ": fits " + fitting + " of the choices: " + seen);
        }
    }

    private void object(JsonNode schema, JsonNode value, String at, List<String> faults) {
        if (!check(value.isObject(), at, value, "an object", faults)) {
            return;
        }
        for (JsonNode required : schema.path("required")) {
            if (!value.has(required.textValue())) {
                faults.add(at + ": lacks " + required.textValue());
            }
        }
        JsonNode more = schema.path("additionalProperties");
        if (more.isMissingNode()) {
            faults.add(at + ": the schema does not say whether there may be more");
        }
        for (Map.Entry<String, JsonNode> field : value.properties()) {
            String place = at + "/" + field.getKey();
            JsonNode own = schema.path("properties").path(field.getKey());
            if (!own.isMissingNode()) {
                walk(own, field.getValue(), place, faults);
            } else if (more.isObject()) {
                walk(more, field.getValue(), place, faults);
            } else if (!more.booleanValue()) {
                faults.add(place + ": is not described");
            }
        }
    }

    private void array(JsonNode schema, JsonNode value, String at, List<String> faults) {
        if (check(value.isArray(), at, value, "a list", faults)) {
            for (int i = 0; i < value.size(); i++) {
                walk(schema.path("items"), value.get(i), at + "/" + i, faults);
            }
        }
    }

    private static void string(JsonNode schema, JsonNode value, String at, List<String> faults) {
        if (!check(value.isTextual(), at, value, "a text", faults)) {
            return;
        }
        String text = value.textValue();
        if (schema.has("pattern") && !text.matches(schema.path("pattern").textValue())) {
            faults.add(at + ": " + text + " does not match " + schema.path("pattern"));
        }
        if (schema.has("format") && !isOf(schema.path("format").textValue(), text)) {
            faults.add(at + ": " + text + " is no " + schema.path("format").textValue());
        }
    }

    private static void number(JsonNode schema, JsonNode value, String at, List<String> faults) {
        boolean whole = schema.path("type").textValue().equals("integer");
        if (!check(
                whole ? value.isIntegralNumber() : value.isNumber(),
                at,
                value,
                "a number",
                faults)) {
            return;
        }
        if (schema.has("minimum") && value.doubleValue() < schema.path("minimum").doubleValue()) {
            faults.add(at + ": " + value + " is below " + schema.path("minimum"));
        }
        if (schema.has("maximum") && value.doubleValue() > schema.path("maximum").doubleValue()) {
            faults.add(at + ": " + value + " is above " + schema.path("maximum"));
        }
    }

    private static boolean check(
            boolean right, String at, JsonNode value, String what, List<String> faults) {
        if (!right) {
            faults.add(at + ": " + value + " is not " + what);
        }
        return right;
    }

    private static boolean isOf(String format, String text) {
        try {
            return switch (format) {
                case "date-time" -> text.endsWith("Z") && Instant.parse(text) != null;
                case "date" -> LocalDate.parse(text) != null;
                default -> false;
            };
        } catch (DateTimeException wrong) {
            return false;
        }
    }

    private static boolean contains(JsonNode list, JsonNode value) {
        for (JsonNode one : list) {
            if (one.equals(value)) {
                return true;
            }
        }
        return false;
    }
}
