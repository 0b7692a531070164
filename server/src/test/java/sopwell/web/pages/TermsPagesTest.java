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
import sopwell.desk.StandCommand;
import sopwell.stock.recipes.RecipeBook;
import sopwell.storage.RecipeReader;

/** The page of the plan's settings; its clock stands on 2026-11-27, a Friday. */
class TermsPagesTest {
    private PageStand stand;
    private int keys;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
        byte[] json = TermsPagesTest.class.getResourceAsStream("/demo/recipes.json").readAllBytes();
        RecipeBook book = RecipeReader.read(json, PageStand.menu()).book().orElseThrow();
        stand.ask(new StandCommand.AdoptRecipes(book, RecipeBook.empty().revision()));
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private HttpResponse<String> press(String what, String... fields) {
        Map<String, String> form = new HashMap<>(Map.of("do", what));
        for (int n = 0; n < fields.length; n += 2) {
            form.put(fields[n], fields[n + 1]);
        }
        form.put("key", "terms-" + keys++);
        return stand.post("/prep/terms", form);
    }

    private String text(String path) {
        HttpResponse<String> got = stand.get(path);
        assertEquals(200, got.statusCode(), got.body());
        return flat(got.body());
    }

    private static String flat(String html) {
        return html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    @Test
    void itIsReachedFromThePlanAndWhatIsSetStandsThereAndInThePlan() {
        assertTrue(stand.get("/prep").body().contains("href=\"/prep/terms\""));
        assertTrue(text("/prep").contains("costs $0.50 beside the margin"));
        HttpResponse<String> set =
                press("costs", "goodwill", "1.25", "without", "20", "night", "2");
        assertEquals("/prep/terms#costs", set.headers().firstValue("Location").orElseThrow());
        assertTrue(stand.get("/prep/terms").body().contains("value=\"1.25\""));
        assertTrue(text("/prep").contains("costs $1.25 beside the margin"));
        press("opening", "date", "2026-12-04");
        assertTrue(stand.get("/prep/terms").body().contains("value=\"2026-12-04\""));
        press("each", "ingredient", "roll", "short", "2.50", "waste", "");
        assertTrue(text("/prep/terms").contains("set by you"));
    }

    @Test
    void anOvenThatIsOutIsListedAndComesBack() {
        press("out", "resource", "oven", "from", "2026-11-28T08:00", "until", "2026-11-29T12:00");
        String line = "oven: all of it, Sat, Nov 28 08:00 to Sun, Nov 29 12:00";
        assertTrue(text("/prep/terms").contains(line), text("/prep/terms"));
        String spanish = text("/prep/terms?lang=es");
        assertTrue(spanish.contains("horno: completo"), spanish);
        press("in-order", "resource", "oven", "from", "2026-11-28T08:00");
        assertFalse(text("/prep/terms").contains(line));
    }

    @Test
    void kitchenHoursAreTheBooksUntilTheyAreSet() {
        assertTrue(text("/prep/terms").contains("These are the hours of the book of recipes."));
        press("hours", "from2", "8:00", "to2", "16:00");
        String page = stand.get("/prep/terms").body();
        assertFalse(flat(page).contains("These are the hours"), page);
        assertTrue(page.contains("value=\"08:00\"") && page.contains("value=\"16:00\""), page);
        press("hours-book");
        assertTrue(text("/prep/terms").contains("These are the hours of the book of recipes."));
    }

    @Test
    void whatIsWrongIsSaidInBothLanguagesAndStaysTyped() {
        HttpResponse<String> negative =
                press("day", "guess", "-5", "opens", "10:30", "delivered", "9:00", "hands", "");
        assertEquals(422, negative.statusCode());
        assertTrue(
                flat(negative.body())
                        .contains(
                                "Pieces on the first days: “-5” does not fit. Give a whole number"
                                        + " from 0 to 20000."),
                negative.body());
        assertTrue(negative.body().contains("value=\"-5\""), negative.body());
        String before = "2026-11-28T08:00";
        String turned =
                flat(press("out", "resource", "oven", "from", before, "until", before).body());
        assertTrue(
                turned.contains("can’t break on 2026-11-28 08:00 and be in order again"), turned);
        String long13 = flat(press("review", "makes", "hot-relish", "days", "13").body());
        assertTrue(long13.contains("“13” does not fit. Give a whole number from 1 to 12"), long13);
        String hours = flat(press("hours", "from1", "22:00", "to1", "7:00").body());
        assertTrue(hours.contains("at “22:00” and end at “7:00” on Monday"), hours);
        assertEquals(400, stand.post("/prep/terms", Map.of("do", "away")).statusCode());
    }
}
