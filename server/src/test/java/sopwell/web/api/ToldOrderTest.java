package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** Orders whose price was told while the stand could not be asked, over HTTP. */
class ToldOrderTest {
    private final StandServer stand = StandServer.fresh();

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void goesInAtThePriceToldAfterTheMenuChangedAndSaysSo() {
        JsonNode read = stand.post("/api/calls", "{\"call\": \"2 fries, cola\"}").json();
        String body = body("2 fries, cola", read.path("menuRevision").textValue(), read, 9);
        stand.restart(menu -> menu.replace("\"priceCents\": 345", "\"priceCents\": 995"));

        Got placed = stand.post("/api/orders", "told-1", body);
        assertEquals(201, placed.status(), placed::text);
        assertEquals(read.path("totalCents"), placed.json().path("totalCents"));
        String id = placed.json().path("order").textValue();
        JsonNode order = stand.get("/api/orders/" + id).json();
        assertEquals(read.path("menuRevision"), order.path("toldMenuRevision"));
        assertTrue(Instant.parse(order.path("takenAt").textValue()).isBefore(placedAt(order)));
        JsonNode mix = stand.get("/api/days/today/mix").json();
        assertEquals(1, mix.path("toldPrices").intValue());
        assertEquals(1, mix.path("takenBefore").intValue());

        assertEquals(placed.text(), stand.post("/api/orders", "told-1", body).text());
        stand.restart();
        assertEquals(placed.text(), stand.post("/api/orders", "told-1", body).text());
        assertEquals(order, stand.get("/api/orders/" + id).json(), "read again from the log");
    }

    @Test
    void whatWasToldJustNowLeavesNoMark() {
        JsonNode read = stand.post("/api/calls", "{\"call\": \"fries\"}").json();
        Got placed =
                stand.post(
                        "/api/orders",
                        body("fries", read.path("menuRevision").textValue(), read, 0));
        String id = placed.json().path("order").textValue();
        JsonNode order = stand.get("/api/orders/" + id).json();
        assertFalse(order.has("takenAt") || order.has("toldMenuRevision"), order::toString);
    }

    @Test
    void aPriceOrAMenuOfOnesOwnIsRefused() {
        JsonNode read = stand.post("/api/calls", "{\"call\": \"fries\"}").json();
        String revision = read.path("menuRevision").textValue();
        JsonNode cheap = StandServer.tree("{\"totalCents\": 1}");
        refused("told-price", body("fries", revision, cheap, 1));
        refused("told-unknown", body("fries", "0123456789abcdef", read, 1));
        refused("told-time", body("fries", revision, read, 60 * 25));
        assertEquals(0, stand.get("/api/orders").json().path("of").intValue());
    }

    @Test
    void whatCanNotBeReadIsNamed() {
        for (String told :
                List.of(
                        "1",
                        "{}",
                        "{\"menuRevision\": \"a\", \"totalCents\": 1}",
                        "{\"menuRevision\": \"a\", \"totalCents\": 1, \"takenAt\": \"noon\"}",
                        "{\"menuRevision\": \"a\", \"totalCents\": \"1\"}")) {
            Got got = stand.post("/api/orders", "{\"call\": \"fries\", \"told\": " + told + "}");
            assertEquals(400, got.status(), told);
            assertEquals("bad-field", got.json().path("code").textValue());
            assertTrue(got.json().path("detail").textValue().contains("/told"), got::text);
        }
    }

    private void refused(String code, String body) {
        Got got = stand.post("/api/orders", body);
        assertEquals(422, got.status(), got::text);
        assertEquals(code, got.json().path("code").textValue());
    }

    private static Instant placedAt(JsonNode order) {
        return Instant.parse(order.path("placedAt").textValue());
    }

    private static String body(String call, String revision, JsonNode read, int minutesAgo) {
        Instant taken = Instant.now().minus(minutesAgo, ChronoUnit.MINUTES);
        return "{\"call\": \""
                + call
                + "\", \"told\": {\"menuRevision\": \""
                + revision
                + "\", \"totalCents\": "
                + read.path("totalCents")
                + ", \"takenAt\": \""
                + taken
                + "\"}}";
    }
}
