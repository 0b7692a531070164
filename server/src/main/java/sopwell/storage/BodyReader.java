package sopwell.storage;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the body of one event. Only Sopwell writes bodies, so their fields stand in a fixed order;
 * anything else is damage. Not thread-safe: for one body.
 */
final class BodyReader implements AutoCloseable {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonParser json;
    private String field;

    BodyReader(byte[] body) throws IOException {
        json = JSON.createParser(body);
        expect(json.nextToken(), JsonToken.START_OBJECT);
        field = json.nextFieldName();
    }

    /** A body that isn't what its name and version promise. */
    static final class Unreadable extends IOException {
        private static final long serialVersionUID = 1L;

        Unreadable(String sentence) {
            super(sentence);
        }
    }

    String text(String name) throws IOException {
        needed(name);
        return textValue();
    }

    String textOr(String name) throws IOException {
        return isNext(name) ? textValue() : "";
    }

    int whole(String name) throws IOException {
        needed(name);
        expect(json.nextToken(), JsonToken.VALUE_NUMBER_INT);
        int number = json.getIntValue();
        field = json.nextFieldName();
        return number;
    }

    long number(String name) throws IOException {
        needed(name);
        expect(json.nextToken(), JsonToken.VALUE_NUMBER_INT);
        long number = json.getLongValue();
        field = json.nextFieldName();
        return number;
    }

    long numberOr(String name) throws IOException {
        return isNext(name) ? number(name) : 0;
    }

    boolean flag(String name) throws IOException {
        if (!isNext(name)) {
            return false;
        }
        expect(json.nextToken(), JsonToken.VALUE_TRUE);
        field = json.nextFieldName();
        return true;
    }

    List<String> texts(String name) throws IOException {
        if (!isNext(name)) {
            return List.of();
        }
        List<String> texts = new ArrayList<>();
        expect(json.nextToken(), JsonToken.START_ARRAY);
        while (json.nextToken() != JsonToken.END_ARRAY) {
            expect(json.currentToken(), JsonToken.VALUE_STRING);
            texts.add(json.getText());
        }
        field = json.nextFieldName();
        return texts;
    }

    List<Integer> wholes(String name) throws IOException {
        needed(name);
        List<Integer> numbers = new ArrayList<>();
        expect(json.nextToken(), JsonToken.START_ARRAY);
        while (json.nextToken() != JsonToken.END_ARRAY) {
            expect(json.currentToken(), JsonToken.VALUE_NUMBER_INT);
            numbers.add(json.getIntValue());
        }
        field = json.nextFieldName();
        return numbers;
    }

    <T> List<T> objects(String name, Each<T> each) throws IOException {
        needed(name);
        List<T> entries = new ArrayList<>();
        expect(json.nextToken(), JsonToken.START_ARRAY);
        while (json.nextToken() != JsonToken.END_ARRAY) {
            expect(json.currentToken(), JsonToken.START_OBJECT);
            field = json.nextFieldName();
            entries.add(each.read(this));
            end();
        }
        field = json.nextFieldName();
        return entries;
    }

    /** The same, or none when the list is left out. */
    <T> List<T> objectsIfAny(String name, Each<T> each) throws IOException {
        return isNext(name) ? objects(name, each) : List.of();
    }

    /** The bytes of one object inside the body, as a reader of trees wants them. */
    JsonParser inner(String name) throws IOException {
        needed(name);
        expect(json.nextToken(), JsonToken.START_OBJECT);
        return json;
    }

    /** Goes on after {@link #inner} was read to its end. */
    void afterInner() throws IOException {
        expect(json.currentToken(), JsonToken.END_OBJECT);
        field = json.nextFieldName();
    }

    /** States that nothing more is there. */
    void end() throws IOException {
        if (field != null) {
            throw new Unreadable("\"" + field + "\" is not expected here");
        }
        expect(json.currentToken(), JsonToken.END_OBJECT);
    }

    @Override
    public void close() throws IOException {
        json.close();
    }

    /** Reads the fields of one entry of a list. */
    interface Each<T> {
        T read(BodyReader body) throws IOException;
    }

    private String textValue() throws IOException {
        expect(json.nextToken(), JsonToken.VALUE_STRING);
        String text = json.getText();
        field = json.nextFieldName();
        return text;
    }

    private boolean isNext(String name) {
        return name.equals(field);
    }

    private void needed(String name) throws IOException {
        if (!isNext(name)) {
            String found = field == null ? "the end" : "\"" + field + "\"";
            throw new Unreadable("\"" + name + "\" is expected where " + found + " is");
        }
    }

    private static void expect(JsonToken found, JsonToken wanted) throws IOException {
        if (found != wanted) {
            throw new Unreadable(wanted + " is expected where " + found + " is");
        }
    }
}
