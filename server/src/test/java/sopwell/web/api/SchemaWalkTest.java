package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;

/** Shows that the walk over the schemas can fail. */
class SchemaWalkTest {
    private static final String PERSON =
            """
            {"type": "object", "required": ["name"], "additionalProperties": false,
             "properties": {"name": {"type": "string", "pattern": "[a-z]+"},
                            "age": {"type": "integer", "minimum": 1, "maximum": 9},
                            "born": {"type": "string", "format": "date"},
                            "kind": {"enum": ["a", "b"]},
                            "pets": {"type": "array", "items": {"$ref": "#/defs/Pet"}}}}\
            """;
    private static final String DOCUMENT =
            "{\"defs\": {\"Pet\": {\"oneOf\": [{\"const\": \"cat\"}, {\"type\": \"integer\"}]}}}";

    @Test
    void passesWhatIsDescribed() {
        assertEquals(
                List.of(),
                faults(
                        PERSON,
                        """
                        {"name": "bo", "age": 9, "born": "2026-01-31", "kind": "a",
                         "pets": ["cat", 1]}\
                        """));
    }

    @Test
    void findsWhatIsNot() {
        assertEquals(List.of(": lacks name"), faults(PERSON, "{}"));
        assertEquals(List.of(": [] is not an object"), faults(PERSON, "[]"));
        assertEquals(
                List.of("/more: is not described"),
                faults(PERSON, "{\"name\": \"a\", \"more\": 1}"));
        assertEquals(List.of("/name: 7 is not a text"), faults(PERSON, "{\"name\": 7}"));
        assertEquals(1, faults(PERSON, "{\"name\": \"A\"}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"age\": 0}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"age\": 10}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"age\": 1.5}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"born\": \"31.1.2026\"}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"kind\": \"c\"}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"pets\": [\"dog\"]}").size());
        assertEquals(1, faults(PERSON, "{\"name\": \"a\", \"pets\": \"cat\"}").size());
    }

    @Test
    void findsSchemasThatItCannotHold() {
        assertEquals(List.of(": unknown keyword not"), faults("{\"not\": {}}", "1"));
        assertEquals(1, faults("{\"type\": \"text\"}", "1").size());
        assertEquals(1, faults("{\"$ref\": \"#/defs/Nobody\"}", "1").size());
        assertEquals(1, faults("{\"type\": \"object\"}", "{}").size());
    }

    private static List<String> faults(String schema, String value) {
        return new SchemaWalk(StandServer.tree(DOCUMENT))
                .faults(StandServer.tree(schema), StandServer.tree(value));
    }
}
