package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;
import sopwell.web.api.OpenApi.Operation;

/**
 * No field of any request takes what looks like a payment card's number, whatever the field is for;
 * the fields are found in the interface's description, so that a new one is tried too. The number
 * is a card scheme's published test number.
 */
class CardNumbersTest {
    private static final String NUMBER = "4111 1111 1111 1111";
    private static final String DIGITS = "4111111111111111";
    private static StandServer stand;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @Test
    void noFieldTakesTheNumberOfACard() {
        Heard heard = new Heard();
        Logger root = Logger.getLogger("");
        Level before = root.getLevel();
        root.addHandler(heard);
        root.setLevel(Level.ALL);
        int tried = 0;
        try {
            for (Operation operation : OpenApi.operations()) {
                for (Map.Entry<String, JsonNode> example : operation.bodies()) {
                    JsonNode body = example.getValue().path("value");
                    for (JsonNode spoiled : spoiled(operation, body)) {
                        refused(operation, spoiled);
                        tried++;
                    }
                }
            }
        } finally {
            root.removeHandler(heard);
            root.setLevel(before);
        }
        assertTrue(tried > 40, tried + " fields were tried");
        assertEquals(List.of(), heard.said);
    }

    private static void refused(Operation operation, JsonNode body) {
        String path = operation.path().replaceAll("\\{\\w+}", "20260114-0001");
        for (String sent : List.of(body.toString(), body.toString().replace(NUMBER, DIGITS))) {
            Got got =
                    operation.method().equals("PUT")
                            ? stand.put(path, sent, "\"none\"")
                            : stand.post(path, sent);
            assertEquals(422, got.status(), operation + " " + sent + got.text());
            assertEquals("card-number", got.json().path("code").textValue());
            assertFalse(got.text().replaceAll("[^0-9]", "").contains(DIGITS), got.text());
        }
    }

    /** The body, each time with the number in another text, or in a field's name. */
    private static List<JsonNode> spoiled(Operation operation, JsonNode body) {
        List<JsonNode> all = new ArrayList<>();
        JsonNode schema =
                OpenApi.WALK.resolved(
                        operation.node().at("/requestBody/content/application~1json/schema"));
        for (Map.Entry<String, JsonNode> field : schema.path("properties").properties()) {
            JsonNode own = OpenApi.WALK.resolved(field.getValue());
            if (own.path("type").asText().equals("string")) {
                ObjectNode spoiled = body.deepCopy();
                all.add(spoiled.put(field.getKey(), "for " + NUMBER + " please"));
            } else if (own.at("/items/type").asText().equals("object")) {
                ObjectNode spoiled = body.deepCopy();
                spoiled.putArray(field.getKey()).addObject().put("item", NUMBER);
                all.add(spoiled);
            }
        }
        ObjectNode named = body.deepCopy();
        all.add(named.put(NUMBER, 1));
        return all;
    }

    @Test
    void aNumberThatOnlyLooksAlikeIsTaken() {
        Got got =
                stand.post(
                        "/api/orders", "{\"call\": \"beef\", \"name\": \"4111 1111 1111 1112\"}");
        assertEquals(201, got.status(), got.text());
    }

    @Test
    void aNumberInAPathDoesNotComeBack() {
        Got order = stand.get("/api/orders/" + DIGITS);
        assertEquals(404, order.status());
        assertFalse(order.text().contains(DIGITS), order.text());
        Got date = stand.get("/api/days/" + DIGITS + "/till");
        assertEquals(422, date.status());
        assertFalse(date.text().contains(DIGITS), date.text());
    }

    /** Remembers what is logged with the number in it. */
    private static final class Heard extends Handler {
        private final List<String> said = new ArrayList<>();

        @Override
        public synchronized void publish(LogRecord logged) {
            String all = logged.getMessage() + java.util.Arrays.toString(logged.getParameters());
            Throwable thrown = logged.getThrown();
            String text = thrown == null ? all : all + thrown;
            if (text.replaceAll("[^0-9]", "").contains(DIGITS)) {
                said.add(text);
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
