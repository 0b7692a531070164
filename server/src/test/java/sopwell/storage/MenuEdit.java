package sopwell.storage;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Spoils a JSON file in one place, as an owner with an editor might. */
final class MenuEdit {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final JsonNode root;

    MenuEdit(byte[] json) {
        try {
            root = MAPPER.readTree(json);
        } catch (IOException e) {
            throw new IllegalArgumentException(e);
        }
    }

    static MenuEdit demo() {
        return new MenuEdit(Samples.demoMenuBytes());
    }

    JsonNode root() {
        return root;
    }

    /** Puts a value in place of another; past the end of a list it is added. */
    MenuEdit set(String pointer, String json) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = root.at(at.head());
        String last = at.last().getMatchingProperty();
        if (parent instanceof ObjectNode object) {
            object.set(last, value(json));
        } else {
            ArrayNode array = (ArrayNode) parent;
            int index = Integer.parseInt(last);
            if (index < array.size()) {
                array.set(index, value(json));
            } else {
                array.add(value(json));
            }
        }
        return this;
    }

    MenuEdit remove(String pointer) {
        JsonPointer at = JsonPointer.compile(pointer);
        JsonNode parent = root.at(at.head());
        String last = at.last().getMatchingProperty();
        if (parent instanceof ObjectNode object) {
            object.remove(last);
        } else {
            ((ArrayNode) parent).remove(Integer.parseInt(last));
        }
        return this;
    }

    byte[] bytes() {
        return root.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static JsonNode value(String json) {
        try {
            return MAPPER.readTree(json.replace('\'', '"'));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(json, e);
        }
    }
}
