package sopwell.storage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Optional;
import sopwell.Limits;
import sopwell.menu.Faults;

/**
 * Reads JSON that people write by hand into a tree, and says where it is no JSON or names a field
 * twice. Stateless.
 */
final class JsonTree {
    private static final int DEPTH_MAX = 20;
    private static final int TEXT_CHARS_MAX = 4_096;
    private static final int NUMBER_CHARS_MAX = 20;
    private static final int FIELD_CHARS_MAX = 120;

    private static final JsonFactory JSON =
            new JsonFactoryBuilder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(DEPTH_MAX)
                                    .maxStringLength(TEXT_CHARS_MAX)
                                    .maxNumberLength(NUMBER_CHARS_MAX)
                                    .maxNameLength(FIELD_CHARS_MAX)
                                    .maxDocumentLength(Limits.MENU_BYTES_MAX)
                                    .build())
                    .build();

    private JsonTree() {}

    /** The tree, if these bytes are JSON at all; faults go to the list. */
    static Optional<JsonNode> read(byte[] bytes, Faults faults) {
        if (bytes.length > Limits.MENU_BYTES_MAX) {
            faults.add(
                    "",
                    "The file has " + bytes.length + " bytes.",
                    "The most is " + Limits.MENU_BYTES_MAX + ".");
            return Optional.empty();
        }
        try (JsonParser parser = JSON.createParser(bytes)) {
            if (parser.nextToken() == null) {
                faults.add("", "The file is empty.", "It holds one JSON object.");
                return Optional.empty();
            }
            JsonNode root = value(parser, "", faults);
            if (parser.nextToken() != null) {
                JsonLocation at = parser.currentTokenLocation();
                faults.add(
                        "",
                        "Something follows the end, at " + place(at) + ".",
                        "The file holds one JSON object and nothing else.");
            }
            return Optional.of(root);
        } catch (StreamConstraintsException e) {
            faults.add(
                    "",
                    "The file is nested too deeply, or a text or number in it is too long.",
                    "At most "
                            + DEPTH_MAX
                            + " brackets stand in one another, and a text has at most "
                            + TEXT_CHARS_MAX
                            + " characters.");
            return Optional.empty();
        } catch (JsonProcessingException e) {
            faults.add(
                    "",
                    "This is no JSON at "
                            + place(e.getLocation())
                            + ": "
                            + e.getOriginalMessage()
                            + ".",
                    "Look for a missing comma, quote or bracket there or just before.");
            return Optional.empty();
        } catch (NumberFormatException tooLarge) {
            faults.add("", "A number in the file is too large.", "Write it in full.");
            return Optional.empty();
        } catch (IOException e) {
            faults.add("", "The text can't be read: " + e.getMessage() + ".", "Save it as UTF-8.");
            return Optional.empty();
        }
    }

    /** The object that a parser stands at the start of; the parser then stands at its end. */
    static JsonNode rest(JsonParser parser, Faults faults) throws IOException {
        return value(parser, "", faults);
    }

    private static JsonNode value(JsonParser parser, String place, Faults faults)
            throws IOException {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, place, faults);
            case START_ARRAY -> array(parser, place, faults);
            case VALUE_STRING -> nodes.textNode(parser.getText());
            case VALUE_NUMBER_INT -> nodes.numberNode(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDecimalValue());
            case VALUE_TRUE -> nodes.booleanNode(true);
            case VALUE_FALSE -> nodes.booleanNode(false);
            default -> nodes.nullNode();
        };
    }

    private static JsonNode object(JsonParser parser, String place, Faults faults)
            throws IOException {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            String here = under(place, name);
            JsonLocation at = parser.currentTokenLocation();
            parser.nextToken();
            JsonNode value = value(parser, here, faults);
            if (object.has(name)) {
                faults.add(
                        here,
                        "The field \"" + name + "\" is here twice, again at " + place(at) + ".",
                        "Keep one of the two.");
            } else {
                object.set(name, value);
            }
        }
        return object;
    }

    private static JsonNode array(JsonParser parser, String place, Faults faults)
            throws IOException {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(parser, place + "/" + array.size(), faults));
        }
        return array;
    }

    /** The JSON Pointer of a field, escaped as RFC 6901 asks. */
    static String under(String place, String field) {
        return place + "/" + field.replace("~", "~0").replace("/", "~1");
    }

    private static String place(JsonLocation at) {
        return "line " + at.getLineNr() + ", column " + at.getColumnNr();
    }
}
