package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** Money over HTTP, from the float to the count. */
class TillApiTest {
    private StandServer stand;

    @BeforeEach
    void open() {
        stand = StandServer.fresh();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void takesADaysMoneyFromTheFloatToTheCount() {
        done("/api/till/opened", "{\"cashier\": \"Ana\", \"floatCents\": 10000}");
        String id = stand.place("2 beef dipped hot, fries").path("order").textValue();
        JsonNode less =
                done(
                        "/api/orders/" + id + "/discounts",
                        "{\"cents\": 425, \"reason\": \"waited\"}");
        assertEquals(1500, less.path("subtotalCents").intValue() - 425);
        assertEquals(1624, less.path("totalCents").intValue());
        assertEquals(1624, order(id).path("dueCents").intValue());
        JsonNode part =
                done("/api/orders/" + id + "/payments", "{\"means\": \"card\", \"cents\": 624}");
        assertEquals(1000, part.path("dueCents").intValue());
        JsonNode rest =
                done(
                        "/api/orders/" + id + "/payments",
                        "{\"means\": \"cash\", \"tenderedCents\": 2000, \"tipCents\": 100}");
        assertEquals(900, rest.path("changeCents").intValue());
        assertEquals("Ana", rest.path("cashier").textValue());
        assertEquals(
                "[{\"cents\":500,\"note\":true,\"pieces\":1},"
                        + "{\"cents\":100,\"note\":true,\"pieces\":4}]",
                rest.path("change").toString());
        assertEquals(0, order(id).path("dueCents").intValue());
        done("/api/orders/" + id + "/voids", "{\"reason\": \"gone\"}");
        assertEquals(-1624, order(id).path("dueCents").intValue());
        done("/api/orders/" + id + "/refunds", "{\"means\": \"card\", \"reason\": \"void\"}");
        JsonNode back =
                done(
                        "/api/orders/" + id + "/refunds",
                        "{\"means\": \"cash\", \"reason\": \"void\"}");
        assertEquals(1000, back.path("cents").intValue());
        done("/api/till/paid-in", "{\"cents\": 500, \"reason\": \"coins\"}");
        done("/api/till/paid-out", "{\"cents\": 250, \"reason\": \"ice\"}");
        JsonNode now = stand.get("/api/till").json();
        assertEquals(10_000 + 100 + 250, now.at("/open/0/expectedCents").intValue());
        JsonNode closed =
                done(
                        "/api/till/closed",
                        "{\"cashier\": \"Ana\", \"counts\": [{\"cents\": 10000, \"pieces\": 1},"
                                + " {\"cents\": 100, \"pieces\": 3}]}");
        assertEquals(-50, closed.path("overCents").intValue());
        JsonNode report = stand.get("/api/days/today/till").json();
        assertEquals(1, report.path("voids").intValue());
        assertEquals(0, report.path("totalCents").intValue());
        assertEquals(
                1624,
                report.at("/takings/cashBackCents").intValue()
                        + report.at("/takings/cardBackCents").intValue());
        assertEquals(-50, report.at("/tills/0/overCents").intValue());
        assertEquals(4, report.path("moves").size());
    }

    @Test
    void aRepeatedPaymentIsTakenOnceAndAnsweredTheSame() {
        String id = stand.place("beef").path("order").textValue();
        String body = "{\"means\": \"cash\", \"tenderedCents\": 1000}";
        Got first = stand.post("/api/orders/" + id + "/payments", "pay-1", body);
        stand.restart();
        Got again = stand.post("/api/orders/" + id + "/payments", "pay-1", body);
        assertEquals(200, again.status());
        assertEquals(first.text(), again.text());
        assertEquals("true", again.header("Idempotent-Replayed"));
        assertEquals(0, order(id).path("dueCents").intValue());
        assertEquals(855, stand.get("/api/till").json().at("/apart/cashCents").intValue());
    }

    @Test
    void theSheetIsOneThatASpreadsheetReadsAndDoesNotCompute() {
        done("/api/till/opened", "{\"cashier\": \"=Ana\", \"floatCents\": 10000}");
        String why = "=1+2, \\\"quoted\\\"";
        done("/api/till/paid-in", "{\"cents\": 500, \"reason\": \"" + why + "\"}");
        done("/api/till/paid-out", "{\"cents\": 250, \"reason\": \"@ice\"}");
        Got csv = stand.get("/api/days/today/till?as=csv");
        assertEquals("text/csv; charset=utf-8; header=present", csv.header("Content-Type"));
        assertTrue(csv.header("Content-Disposition").startsWith("attachment; filename=\"till-"));
        List<String> lines = List.of(csv.text().split("\r\n", -1));
        assertEquals("date,figure,cashier,time,order,means,reason,count,amount", lines.get(0));
        assertEquals("", lines.get(lines.size() - 1), "the last line ends too");
        String in = line(lines, ",\"one paid in\",");
        assertTrue(in.contains(",\"'=Ana\","), in);
        assertTrue(in.endsWith(",\"\",\"cash\",\"'=1+2, \"\"quoted\"\"\",,5.00"), in);
        assertTrue(line(lines, ",\"one paid out\",").endsWith(",\"cash\",\"'@ice\",,-2.50"));
        assertTrue(line(lines, ",\"expected\",").endsWith(",,102.50"));
        Got accepted =
                stand.send(
                        stand.request("/api/days/today/till")
                                .header("Accept", "text/csv")
                                .GET()
                                .build());
        assertEquals(csv.text(), accepted.text());
    }

    @Test
    void saysWhatIsWrongWithAPayment() {
        String id = stand.place("beef").path("order").textValue();
        String path = "/api/orders/" + id + "/payments";
        Got short1 = stand.post(path, "{\"means\": \"cash\", \"tenderedCents\": 500}");
        assertEquals(422, short1.status());
        assertEquals(
                "$5.00 is not enough for $8.55. Take more, or take it as a part and the rest"
                        + " another way.",
                short1.json().path("detail").textValue());
        Got over = stand.post(path, "{\"means\": \"card\", \"cents\": 900}");
        assertEquals(409, over.status());
        assertEquals(
                "$9.00 is more than the $8.55 that is due. Take $8.55, or say what is over as a"
                        + " tip.",
                over.json().path("detail").textValue());
        Got means = stand.post(path, "{\"means\": \"cheque\"}");
        assertEquals(400, means.status());
        assertEquals(
                "The field \"/means\" must be one of these: cash, card.",
                means.json().path("detail").textValue());
        Got both =
                stand.post(
                        "/api/orders/" + id + "/discounts",
                        "{\"cents\": 1, \"milliPercent\": 1, \"reason\": \"x\"}");
        assertEquals(400, both.status());
    }

    private static String line(List<String> lines, String has) {
        return lines.stream().filter(line -> line.contains(has)).findFirst().orElseThrow();
    }

    private JsonNode order(String id) {
        return stand.get("/api/orders/" + id).json();
    }

    private JsonNode done(String path, String body) {
        Got got = stand.post(path, body);
        assertEquals(200, got.status(), path + ": " + got.text());
        return got.json();
    }
}
