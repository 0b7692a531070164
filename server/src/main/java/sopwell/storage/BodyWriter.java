package sopwell.storage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.ByteArrayBuilder;
import java.io.IOException;
import java.util.List;

/**
 * Writes the body of one event: one JSON object whose fields stand in a fixed order. What says
 * nothing (an empty text or list, a false, a zero where none is usual) is left out. Not
 * thread-safe: for one body.
 */
final class BodyWriter {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator json;

    private BodyWriter(JsonGenerator json) {
        this.json = json;
    }

    /** Fills a body's fields. */
    interface Fill {
        void fill(BodyWriter body) throws IOException;
    }

    /** The body that is filled so, in UTF-8. */
    static byte[] bytes(Fill fill) throws IOException {
        ByteArrayBuilder bytes = new ByteArrayBuilder(512);
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            json.writeStartObject();
            fill.fill(new BodyWriter(json));
            json.writeEndObject();
        }
        return bytes.toByteArray();
    }

    void text(String field, String text) throws IOException {
        json.writeStringField(field, text);
    }

    void textIfAny(String field, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(field, text);
        }
    }

    void number(String field, long number) throws IOException {
        json.writeNumberField(field, number);
    }

    void numberIfAny(String field, long number) throws IOException {
        if (number != 0) {
            json.writeNumberField(field, number);
        }
    }

    void flag(String field, boolean yes) throws IOException {
        if (yes) {
            json.writeBooleanField(field, true);
        }
    }

    void texts(String field, List<String> texts) throws IOException {
        if (texts.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    void wholes(String field, List<Integer> numbers) throws IOException {
        json.writeArrayFieldStart(field);
        for (int number : numbers) {
            json.writeNumber(number);
        }
        json.writeEndArray();
    }

    /** A list of objects, each filled by the same writer. */
    <T> void objects(String field, List<T> entries, Each<T> each) throws IOException {
        json.writeArrayFieldStart(field);
        for (T entry : entries) {
            json.writeStartObject();
            each.write(this, entry);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A value that is JSON already. */
    void raw(String field, String written) throws IOException {
        json.writeFieldName(field);
        json.writeRawValue(written);
    }

    /** Fills the fields of one entry of a list. */
    interface Each<T> {
        void write(BodyWriter body, T entry) throws IOException;
    }
}
