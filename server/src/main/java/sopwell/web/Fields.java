package sopwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sopwell.web.Json.BadJson;

/**
 * Reads the fields of one JSON object and minds those nobody asked for. Not thread-safe; belongs to
 * one request.
 */
public final class Fields {
    private final JsonNode object;
    private final String path;
    private final Set<String> asked = new HashSet<>();

    /**
     * The fields of an object.
     *
     * @param path where the object stands, as a JSON Pointer; empty for the body itself
     */
    public Fields(JsonNode object, String path) {
        this.object = object;
        this.path = path;
    }

    /** Whether a field is there and not null. */
    public boolean has(String field) {
        asked.add(field);
        return object.hasNonNull(field);
    }

    /** A text, or what is meant when the field is not there. */
    public String text(String field, String otherwise) throws BadJson {
        Optional<JsonNode> node = node(field);
        if (node.isEmpty()) {
            return otherwise;
        }
        if (!node.get().isTextual()) {
            throw wrong(field, "json.text");
        }
        return node.get().textValue();
    }

    /** A date that must be there, written as year-month-day. */
    public LocalDate date(String field) throws BadJson {
        try {
            return LocalDate.parse(text(field));
        } catch (DateTimeParseException notOne) {
            throw wrong(field, "json.date");
        }
    }

    /** A text that must be there. */
    public String text(String field) throws BadJson {
        if (!has(field)) {
            throw wrong(field, "json.text-missing");
        }
        return text(field, "");
    }

    /** A whole number that must be there. */
    public int number(String field) throws BadJson {
        JsonNode node = node(field).orElseThrow(() -> missingNumber(field));
        if (!node.isIntegralNumber() || !node.canConvertToInt()) {
            throw wrong(field, "json.number");
        }
        return node.intValue();
    }

    /** A whole number, or what is meant when the field is not there. */
    public int number(String field, int otherwise) throws BadJson {
        return has(field) ? number(field) : otherwise;
    }

    /** Cents that must be there. */
    public long cents(String field) throws BadJson {
        JsonNode node = node(field).orElseThrow(() -> missingNumber(field));
        if (!node.isIntegralNumber() || !node.canConvertToLong()) {
            throw wrong(field, "json.number");
        }
        return node.longValue();
    }

    /** A time as RFC 3339 has it, which must be there. */
    public Instant time(String field) throws BadJson {
        try {
            return OffsetDateTime.parse(text(field)).toInstant();
        } catch (DateTimeParseException notATime) {
            throw wrong(field, "json.time");
        }
    }

    /** One object, if it is there. */
    public Optional<Fields> inner(String field) throws BadJson {
        Optional<JsonNode> node = node(field);
        if (node.isPresent() && !node.get().isObject()) {
            throw wrong(field, "json.object");
        }
        return node.map(object -> new Fields(object, path + "/" + field));
    }

    /** True or false, or what is meant when the field is not there. */
    public boolean flag(String field, boolean otherwise) throws BadJson {
        Optional<JsonNode> node = node(field);
        if (node.isPresent() && !node.get().isBoolean()) {
            throw wrong(field, "json.flag");
        }
        return node.map(JsonNode::booleanValue).orElse(otherwise);
    }

    /** One of the words of an enum, in small letters. */
    public <E extends Enum<E>> E word(String field, Class<E> type) throws BadJson {
        String written = text(field);
        for (E one : type.getEnumConstants()) {
            if (one.name().toLowerCase(Locale.ROOT).equals(written)) {
                return one;
            }
        }
        String known =
                Arrays.stream(type.getEnumConstants())
                        .map(one -> one.name().toLowerCase(Locale.ROOT))
                        .collect(Collectors.joining(", "));
        throw new BadJson(ProblemKind.BAD_FIELD, "json.word", path + "/" + field, known);
    }

    /** A list of texts, empty when the field is not there. */
    public List<String> texts(String field) throws BadJson {
        List<String> texts = new ArrayList<>();
        for (JsonNode node : array(field)) {
            if (!node.isTextual()) {
                throw wrong(field, "json.texts");
            }
            texts.add(node.textValue());
        }
        return texts;
    }

    /** A list of objects, empty when the field is not there. */
    public List<Fields> objects(String field) throws BadJson {
        List<Fields> objects = new ArrayList<>();
        for (JsonNode node : array(field)) {
            if (!node.isObject()) {
                throw wrong(field, "json.objects");
            }
            objects.add(new Fields(node, path + "/" + field + "/" + objects.size()));
        }
        return objects;
    }

    /**
     * Call when all fields were read.
     *
     * @throws BadJson that names a field that nobody asked for
     */
    public void nothingElse() throws BadJson {
        Iterator<String> names = object.fieldNames();
        while (names.hasNext()) {
            String name = names.next();
            if (!asked.contains(name)) {
                List<String> known = asked.stream().sorted().toList();
                throw new BadJson(
                        ProblemKind.BAD_FIELD,
                        "json.unknown",
                        path + "/" + name,
                        known.isEmpty() ? "–" : String.join(", ", known));
            }
        }
    }

    private Iterable<JsonNode> array(String field) throws BadJson {
        Optional<JsonNode> node = node(field);
        if (node.isEmpty()) {
            return List.of();
        }
        if (!node.get().isArray()) {
            throw wrong(field, "json.list");
        }
        return node.get();
    }

    private Optional<JsonNode> node(String field) {
        return has(field) ? Optional.of(object.get(field)) : Optional.empty();
    }

    private BadJson missingNumber(String field) {
        return wrong(field, "json.number-missing");
    }

    private BadJson wrong(String field, String sentence) {
        return new BadJson(ProblemKind.BAD_FIELD, sentence, path + "/" + field);
    }
}
