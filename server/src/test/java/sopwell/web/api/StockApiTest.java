package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** What is kept and made, by the program interface and with the demo's recipes. */
class StockApiTest {
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
    void anOrderTakesFromTheBooksWhatTheRecipesSay() {
        post("/api/prep/counts", "{'ingredient': 'roll', 'amount': '4', 'unit': 'bag'}", 200);
        stand.place("3 beef dry");
        post("/api/prep/waste", "{'ingredient': 'roll', 'amount': '1', 'unit': 'each'}", 422);
        post(
                "/api/prep/waste",
                "{'ingredient': 'roll', 'amount': '1', 'unit': 'each', 'reason': 'dropped'}",
                200);
        JsonNode roll = ingredient("roll");
        assertEquals(96_000, roll.path("countedThousandths").longValue(), "a bag holds 24");
        assertEquals(3_000, roll.path("usedThousandths").longValue());
        assertEquals(92_000, roll.path("expectedThousandths").longValue());
        post("/api/prep/counts", "{'ingredient': 'roll', 'amount': '90', 'unit': 'each'}", 200);
        JsonNode compared = stand.get("/api/prep/stock").json().path("compared").path(0);
        assertEquals(-2_000, compared.path("differenceThousandths").longValue());
    }

    @ParameterizedTest(name = "{0} {1} of {2}: {3}")
    @CsvSource({
        "-1,each,roll,stock-amount,422", "1,lb,roll,unknown-measure,422",
        "1,each,gravel,unknown-ingredient,404", "1.2345,each,roll,stock-amount,422"
    })
    void whatIsNoCountIsRefusedWithItsCode(
            String amount, String unit, String ingredient, String code, int status) {
        long seq = stand.seq();
        String body =
                "{'ingredient': '%s', 'amount': '%s', 'unit': '%s'}"
                        .formatted(ingredient, amount, unit);
        Got got = post("/api/prep/counts", body, status);
        assertEquals(code, got.json().path("code").textValue());
        assertTrue(got.json().path("detail").textValue().length() > 20, got::text);
        assertEquals(seq, stand.seq());
    }

    @Test
    void aBatchGoesFromItsFirstStepToItsLabelAndSurvivesARestart() {
        String key = StandServer.key();
        String body = "{\"makes\": \"jus\", \"note\": \"for lunch\"}";
        Got first = stand.post("/api/prep/batches", key, body);
        assertEquals(201, first.status(), first::text);
        assertArrayEquals(
                first.response().body(),
                stand.post("/api/prep/batches", key, body).response().body());
        String path = "/api/prep/batches/" + first.json().path("batch").textValue();
        post(path + "/moves", "{'step': 'serve'}", 409);
        post(path + "/moves", "{'step': 'cool-jus'}", 200);
        post(path + "/temperatures", "{'degrees': '59', 'unit': 'c', 'by': 'Ana'}", 200);
        stand.restart();
        JsonNode batch = stand.get("/api/prep/batches").json().path("batches").path(0);
        assertEquals("cool-middle", batch.path("clock").path("advice").textValue());
        assertEquals(700, batch.path("clock").path("targetTenthsF").intValue());
        assertEquals(1_382, batch.path("readings").path(0).path("tenthsF").intValue());
        Got made = post(path + "/yield", "{'amount': '15', 'unit': 'l'}", 200);
        assertEquals(false, made.json().path("limitsMet").booleanValue(), "70 °F was not shown");
        post(path + "/used-up", "{}", 200);
        post(path + "/used-up", "{}", 404);
    }

    private static JsonNode ingredient(String id) {
        for (JsonNode one : stand.get("/api/prep/stock").json().path("ingredients")) {
            if (one.path("ingredient").textValue().equals(id)) {
                return one;
            }
        }
        throw new AssertionError("no " + id);
    }

    private static Got post(String path, String body, int status) {
        Got got = stand.post(path, body.replace('\'', '"'));
        assertEquals(status, got.status(), got::text);
        return got;
    }
}
