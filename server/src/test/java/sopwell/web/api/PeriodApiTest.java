package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** Tables of several days come as JSON and as CSV, and what can't be looked up is said. */
class PeriodApiTest {
    private static StandServer stand;
    private static LocalDate today;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
        stand.place("2 beef dipped hot, fries");
        today = LocalDate.parse(stand.get("/api/days/today/mix").json().path("date").textValue());
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @Test
    void theRowsOfAPeriodAreThoseOfItsDays() {
        String period = "?from=" + today.minusDays(30) + "&to=" + today;
        JsonNode rows = stand.get("/api/mix" + period).json().path("rows");
        assertEquals(2, rows.size());
        assertEquals("beef", rows.path(0).path("item").textValue());
        assertEquals(2, rows.path(0).path("pieces").intValue());
        assertEquals(
                "dip=dipped peppers=hot cheese=none amount=none",
                rows.path(0).path("ways").textValue());
        Got csv = stand.get("/api/mix" + period + "&as=csv");
        assertEquals("text/csv; charset=utf-8; header=present", csv.header("Content-Type"));
        List<String> lines = List.of(csv.text().split("\r\n", -1));
        assertEquals("date,half hour,item,name,size,ways,staff,pieces,cents", lines.get(0));
        assertEquals(rows.size() + 2, lines.size(), "a head, and an end of line after the last");
        String name = "filename=\"mix-" + today.minusDays(30) + "-to-" + today + ".csv\"";
        assertTrue(csv.header("Content-Disposition").contains(name), csv::toString);
        assertEquals(csv.text(), stand.get("/api/days/" + today + "/mix?as=csv").text());
    }

    @Test
    void otherWeekdaysAndOtherHoursAreLeftOut() {
        int other = today.getDayOfWeek().getValue() % 7 + 1;
        String period = "?from=" + today + "&to=" + today;
        assertEquals(0, rows("/api/mix" + period + "&weekday=" + other).size());
        int own = today.getDayOfWeek().getValue();
        assertEquals(2, rows("/api/mix" + period + "&weekday=" + own).size());
        JsonNode waits = rows("/api/waits" + period + "&weekday=" + own);
        assertTrue(waits.size() > 4, waits::toString);
        assertEquals("all", waits.path(0).path("of").textValue());
        assertTrue(waits.path(0).path("median").isNull(), "nothing was begun");
        assertEquals(0, rows("/api/waits" + period + "&weekday=" + other).size());
    }

    @Test
    void daysWithoutSalesHaveNoRows() {
        String none = "?from=" + today.minusDays(40) + "&to=" + today.minusDays(20);
        assertEquals(0, rows("/api/mix" + none).size());
        assertEquals(0, rows("/api/waits" + none).size());
    }

    @ParameterizedTest
    @CsvSource({
        "from=2026-13-01, is not a date",
        "from=2026-02-30, is not a date",
        "from=2020-05-02&to=2020-05-01, end before they begin",
        "from=2999-01-01&to=2999-01-02, has not begun",
        "from=1926-01-01&to=2026-01-01, more than 3",
        "from=2019-01-01&to=2020-01-02, more than 366 days",
        "from=2020-01-01&to=2020-02-01&weekday=8, is not a weekday",
        "from=2020-01-01&to=2020-02-01&begin=noon, is not a time",
        "from=2020-01-01&to=2020-02-01&begin=13:00&end=12:00, ends before it begins"
    })
    void whatCantBeLookedUpIsSaid(String query, String sentence) {
        for (String path : List.of("/api/mix?", "/api/waits?")) {
            Got got = stand.get(path + query);
            assertEquals(422, got.status(), got::text);
            assertEquals("period-wrong", got.json().path("code").textValue());
            assertTrue(got.json().path("detail").textValue().contains(sentence), got::text);
        }
    }

    private static JsonNode rows(String path) {
        Got got = stand.get(path);
        assertEquals(200, got.status(), got::text);
        return got.json().path("rows");
    }
}
