package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** An order's way from the call to the mix, over HTTP. */
class WalkTest {
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
    void takesAnOrderFromTheCallToTheGuest() {
        JsonNode read = stand.post("/api/calls", "{\"call\": \"2 beef dipped hot, fries\"}").json();
        Got placed =
                stand.post(
                        "/api/orders",
                        "{\"call\": \"2 beef dipped hot, fries\", \"name\": \"Ines\"}");
        assertEquals(201, placed.status());
        JsonNode order = placed.json();
        String id = order.path("order").textValue();
        assertEquals(read.path("readBack"), order.path("readBack"));
        assertEquals(read.path("totalCents"), order.path("totalCents"));
        assertEquals(
                order.path("totalCents").longValue(),
                order.path("subtotalCents").longValue() + order.path("taxCents").longValue());
        assertEquals("Ines", order.path("name").textValue());
        assertTrue(order.path("quote").path("toSeconds").intValue() > 0);

        String beef = partOn("line", id);
        String fries = partOn("fryer", id);
        assertEquals(state("/api/parts/" + beef + "/started"), "started");
        assertEquals(state("/api/parts/" + beef + "/up"), "up");
        Got early = stand.post("/api/orders/" + id + "/handed", "");
        assertEquals(409, early.status());
        assertEquals("not-whole", early.json().path("code").textValue());
        assertEquals(state("/api/parts/" + fries + "/up"), "up");
        assertEquals("up", stand.get("/api/orders/" + id).json().path("state").textValue());
        assertEquals(List.of(id), rowsOn("pass", id));
        assertEquals(state("/api/orders/" + id + "/handed"), "handed");
        assertEquals(List.of(), openOrders(id));
        assertEquals(state("/api/orders/" + id + "/brought-back"), "brought-back");
        assertEquals(List.of(id), openOrders(id));
        assertEquals(state("/api/orders/" + id + "/handed"), "handed");
        JsonNode handed = stand.get("/api/orders/" + id).json();
        assertEquals("handed", handed.path("state").textValue());
        assertTrue(handed.has("handedAt"), handed::toString);
    }

    @Test
    void countsWhatWasSoldInTheMixAndTheWaits() {
        JsonNode before = stand.get("/api/days/today/mix").json();
        String id = stand.place("3 sausage sweet").path("order").textValue();
        Got early = stand.post("/api/parts/" + partOn("line", id) + "/up", "");
        assertEquals("waits-for", early.json().path("code").textValue());
        state("/api/parts/" + partOn("grill", id) + "/up");
        state("/api/parts/" + partOn("line", id) + "/up");
        JsonNode after = stand.get("/api/days/today/mix").json();
        assertEquals(before.path("orders").intValue() + 1, after.path("orders").intValue());
        assertEquals(pieces(before, "sausage") + 3, pieces(after, "sausage"));
        String date = after.path("date").textValue();
        assertEquals(after, stand.get("/api/days/" + date + "/mix").json());
        JsonNode waits = stand.get("/api/days/today/waits").json();
        assertTrue(waits.path("placedToUp").path("orders").intValue() >= 1, waits::toString);
    }

    @Test
    void takesLinesAsWellAsACall() {
        String lines =
                "{\"lines\": [{\"item\": \"beef\", \"size\": \"regular\", \"quantity\": 2,"
                        + " \"modifiers\": [\"dipped\", \"hot\"]}, {\"item\": \"beef\","
                        + " \"modifiers\": [\"both-peppers\"], \"without\": [\"provolone\"]}]}";
        JsonNode asLines = stand.post("/api/calls", lines).json();
        String call = "{\"call\": \"2 regular beef dipped hot, beef both no provolone\"}";
        assertEquals(asLines, stand.post("/api/calls", call).json());
        assertEquals(201, stand.post("/api/orders", lines).status());
    }

    @Test
    void changesAnOrderAndTheStationSaysSeen() {
        JsonNode order = stand.place("beef dipped");
        String id = order.path("order").textValue();
        String part = partOn("line", id);
        state("/api/parts/" + part + "/started");
        Got changed =
                stand.post(
                        "/api/orders/" + id + "/changes",
                        "{\"version\": 1, \"call\": \"beef dry\", \"reason\": \"misheard\"}");
        assertEquals(200, changed.status(), changed::text);
        assertEquals(2, changed.json().path("version").intValue());
        Got unseen = stand.post("/api/parts/" + part + "/up", "");
        assertEquals("change-unseen", unseen.json().path("code").textValue());
        assertEquals(state("/api/parts/" + part + "/seen"), "seen");
        assertEquals(state("/api/parts/" + part + "/up"), "up");
        assertEquals(state("/api/parts/" + part + "/brought-back"), "started");
        Got gone = stand.post("/api/orders/" + id + "/voids", "{\"reason\": \"left\"}");
        assertEquals("void", gone.json().path("state").textValue());
        assertEquals("left", stand.get("/api/orders/" + id).json().path("voidReason").textValue());
    }

    @Test
    void meansThePathAndNotAParameterOfTheSameName() {
        String first = stand.place("fries").path("order").textValue();
        String second = stand.place("fries").path("order").textValue();
        JsonNode got = stand.get("/api/orders/" + first + "?order=" + second).json();
        assertEquals(first, got.path("order").textValue());
        assertEquals(
                "line", stand.get("/api/boards/line?board=pass").json().path("board").textValue());
    }

    @Test
    void answersInTheLanguageThatIsAskedFor() {
        Got got =
                stand.send(
                        stand.request("/api/calls")
                                .header("Content-Type", "application/json")
                                .header("Accept-Language", "es-MX, en;q=0.5")
                                .POST(BodyPublishers.ofString("{\"call\": \"una res seca\"}"))
                                .build());
        assertEquals("res mediano, seco.", got.json().path("readBack").textValue());
    }

    private static String state(String path) {
        Got got = stand.post(path, "");
        assertEquals(200, got.status(), got::text);
        return got.json().path("state").textValue();
    }

    private static String partOn(String station, String order) {
        for (JsonNode part : stand.get("/api/orders/" + order).json().path("parts")) {
            if (part.path("station").textValue().equals(station)) {
                return part.path("part").textValue();
            }
        }
        throw new AssertionError("no part of " + order + " at " + station);
    }

    private static List<String> rowsOn(String board, String order) {
        return found(stand.get("/api/boards/" + board).json().path("rows"), order);
    }

    private static List<String> openOrders(String order) {
        return found(stand.get("/api/orders?open=true").json().path("orders"), order);
    }

    private static List<String> found(JsonNode rows, String order) {
        List<String> found = new ArrayList<>();
        for (JsonNode row : rows) {
            if (row.path("order").textValue().equals(order)) {
                found.add(order);
            }
        }
        return found;
    }

    private static int pieces(JsonNode mix, String item) {
        int pieces = 0;
        for (JsonNode row : mix.path("items")) {
            if (row.path("item").textValue().equals(item)) {
                pieces += row.path("pieces").intValue();
            }
        }
        return pieces;
    }
}
