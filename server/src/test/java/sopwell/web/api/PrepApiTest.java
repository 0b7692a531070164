package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** The plan of prep for programs. */
class PrepApiTest {
    @Test
    void everyQuantityCarriesItsArithmetic() {
        try (StandServer stand = StandServer.fresh()) {
            Got got = stand.get("/api/prep/plan?days=14");
            assertFalse(got.text().contains("E+"), "round amounts are written out: " + got.text());
            JsonNode plan = got.json();
            assertEquals("even-guess", plan.path("basis").path("ground").textValue());
            assertEquals(14, plan.path("days").intValue());
            assertFalse(plan.path("tasks").isEmpty());
            for (JsonNode task : plan.path("tasks")) {
                JsonNode why = task.path("why");
                assertTrue(why.path("low").doubleValue() <= why.path("mean").doubleValue());
                assertTrue(why.path("mean").doubleValue() <= why.path("high").doubleValue());
                assertTrue(at(task, "ready").compareTo(at(why, "by")) <= 0);
                JsonNode steps = task.path("steps");
                assertEquals(at(task, "start"), at(steps.path(0), "from"));
            }
            assertFalse(plan.path("orders").isEmpty());
            LocalDate from = LocalDate.parse(plan.path("from").textValue());
            String next = "/api/prep/plan?days=1&from=" + from.plusDays(1);
            for (JsonNode task : stand.get(next).json().path("tasks")) {
                LocalDate start =
                        LocalDate.ofInstant(at(task, "start"), ZoneId.of("America/Chicago"));
                assertEquals(from.plusDays(1), start);
            }
        }
    }

    private static Instant at(JsonNode node, String field) {
        return Instant.parse(node.path(field).textValue());
    }
}
