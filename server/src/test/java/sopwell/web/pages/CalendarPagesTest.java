package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The owner's calendar as a page; the stand's clock stands on Friday 2026-11-27. */
class CalendarPagesTest {
    private PageStand stand;
    private int keys;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void anOccasionStandsInItsSquareUntilItIsRemoved() {
        HttpResponse<String> added =
                press("add", "2026-12-05", "name", "river festival", "percent", "+40");
        assertEquals(303, added.statusCode());
        String to = added.headers().firstValue("Location").orElseThrow();
        assertEquals("/prep/calendar?day=2026-12-05#day", to);
        String page = flat(stand.get("/prep/calendar?day=2026-12-05").body());
        assertTrue(page.contains("<span class=\"line\">river festival +40 %</span>"), page);
        assertTrue(page.contains("Saturday, December 5, 2026"), page);
        assertTrue(page.contains("Remove river festival"), page);
        String spanish = flat(stand.get("/prep/calendar?day=2026-12-05&lang=es").body());
        assertTrue(spanish.contains("Quitar river festival"), spanish);
        press("remove", "2026-12-05", "name", "river festival");
        assertFalse(stand.get("/prep/calendar").body().contains("river festival +40"));
    }

    @Test
    void aDayIsClosedOpenedAgainAndGivenOtherHours() {
        press("close", "2026-12-25");
        String closed = flat(stand.get("/prep/calendar?day=2026-12-25").body());
        assertTrue(closed.contains("<td class=\"closed\">"), closed);
        assertTrue(closed.contains("Open after all"), closed);
        press("hours", "2026-12-25", "opens", "11:00", "closes", "15:30");
        String open = flat(stand.get("/prep/calendar?day=2026-12-25").body());
        assertFalse(open.contains("<td class=\"closed\">"), open);
        assertTrue(open.contains("<span class=\"line\">11:00–15:30</span>"), open);
    }

    @Test
    void whatIsWrongIsSaidAndWhatWasTypedStays() {
        HttpResponse<String> much =
                press("add", "2026-12-05", "name", "river festival", "percent", "+4000 %");
        assertEquals(422, much.statusCode());
        String page = flat(much.body());
        assertTrue(page.contains("“+4000 %” is no guess at what an occasion makes"), page);
        assertTrue(page.contains("value=\"+4000 %\""), page);
        String hours =
                flat(press("hours", "2026-12-05", "opens", "20:00", "closes", "10:30").body());
        assertTrue(hours.contains("can’t open at “20:00” and close at “10:30”"), hours);
        String gone = flat(press("close", "2026-11-26").body());
        assertTrue(gone.contains("Give one from 2026-11-27 to 2028-01-01"), gone);
        assertEquals(400, stand.post("/prep/calendar", Map.of("do", "close")).statusCode());
    }

    @Test
    void guessesAreListedByTheirNames() {
        press("guess", "", "item", "beef", "pieces", "150");
        assertTrue(flat(stand.get("/prep/calendar").body()).contains("<li>beef: 150 a day</li>"));
        String wrong = flat(press("guess", "", "item", "beef", "pieces", "lots").body());
        assertTrue(wrong.contains("“lots” is no guess at pieces a day."), wrong);
    }

    @Test
    void laterWeeksAreOneTapAwayAndNoDateThatIsNoneBreaksIt() {
        String first = flat(stand.get("/prep/calendar?day=soon").body());
        assertTrue(first.contains("href=\"/prep/calendar?day=2027-01-03\" rel=\"next\""), first);
        assertFalse(first.contains("rel=\"prev\""), first);
        String later = flat(stand.get("/prep/calendar?day=2027-01-03").body());
        assertTrue(later.contains("rel=\"prev\""), later);
        assertTrue(later.contains("Sunday, January 3, 2027"), later);
    }

    private HttpResponse<String> press(String what, String date, String... fields) {
        Map<String, String> form = new HashMap<>(Map.of("do", what, "date", date));
        for (int n = 0; n < fields.length; n += 2) {
            form.put(fields[n], fields[n + 1]);
        }
        form.put("key", "calendar-" + keys++);
        return stand.post("/prep/calendar", form);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
