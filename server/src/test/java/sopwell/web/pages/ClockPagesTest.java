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

/** The page of every clock that runs. */
class ClockPagesTest {
    private PageStand stand;
    private int keys;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
        byte[] json = ClockPagesTest.class.getResourceAsStream("/demo/recipes.json").readAllBytes();
        RecipeBook book = RecipeReader.read(json, PageStand.menu()).book().orElseThrow();
        stand.ask(new StandCommand.AdoptRecipes(book, RecipeBook.empty().revision()));
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private HttpResponse<String> press(String path, String... fields) {
        Map<String, String> form = new HashMap<>();
        for (int n = 0; n < fields.length; n += 2) {
            form.put(fields[n], fields[n + 1]);
        }
        form.put("key", "clock-" + keys++);
        return stand.post(path, form);
    }

    private String page(String path, String... headers) {
        HttpResponse<String> got = stand.get(path, headers);
        assertEquals(200, got.statusCode(), got.body());
        return got.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    @Test
    void aClockIsStartedMeasuredAndStopped() {
        assertTrue(page("/prep/clocks").contains("No clock runs."));
        press("/prep/clocks", "what", "relish, line", "degrees", "40", "long", "1");
        String running = page("/prep/clocks");
        assertTrue(running.contains("6 h 00 min relish, line Use it up by"), running);
        assertTrue(running.contains("40 °F at"), running);
        assertTrue(running.contains("FDA Food Code 2022, 3-501.19(C)"), running);
        assertTrue(running.contains("your local health department comes first"), running);
        assertTrue(running.contains("licensed trades"), running);
        press("/prep/clocks/chosen", "clock", "t1", "degrees", "71", "do", "measure");
        assertTrue(page("/prep/clocks").contains("too late relish, line Throw it away"));
        String part = stand.get("/prep/clocks", "HX-Request", "true").body();
        assertFalse(part.contains("<html"), part);
        assertTrue(part.contains("hx-trigger=\"every 5s\""), part);
        assertEquals(303, press("/prep/clocks/t1", "do", "discarded").statusCode());
        assertTrue(page("/prep/clocks?lang=es").contains("No corre ningún reloj."));
    }

    @Test
    void whatIsDueFirstStandsOnTopWhateverItIs() {
        press("/prep/clocks", "what", "jus, pass", "degrees", "140", "long", "0");
        press("/prep/batches", "makes", "jus", "lots", "1", "note", "");
        press("/prep/batches/b1", "do", "move", "step", "cool-jus");
        press("/prep/slicer/cleaned");
        stand.later(3_600);
        press("/prep/clocks", "what", "relish, line", "degrees", "40", "long", "1");
        String page = page("/prep/clocks");
        int cooling = page.indexOf("Ice bath");
        int pass = page.indexOf("jus, pass Use");
        int slicer = page.indexOf("Take it apart");
        int line = page.indexOf("relish, line Use");
        assertTrue(cooling > 0 && cooling < pass, "70 °F by two hours: " + page);
        assertTrue(pass < slicer && slicer < line, page);
        assertTrue(stand.get("/prep/clocks").body().contains("href=\"/prep/batches/b1\""));
        String spanish = page("/prep/clocks?lang=es");
        assertTrue(spanish.contains("Enfriándose tras la cocción"), spanish);
    }

    /** Or the next food's temperature would be written to the one before. */
    @Test
    void whatWasMeasuredLongestAgoIsNextAndWhatIsWrongStaysAtItsClock() {
        press("/prep/clocks", "what", "relish, line", "degrees", "40", "long", "1");
        stand.later(60);
        press("/prep/clocks", "what", "slaw", "degrees", "4,5", "long", "1");
        assertEquals("t1", next(stand.get("/prep/clocks").body()));
        HttpResponse<String> wrong =
                press("/prep/clocks/chosen", "clock", "t2", "degrees", "cold", "do", "measure");
        assertEquals(422, wrong.statusCode());
        assertEquals("t2", next(wrong.body()));
        assertEquals(1, wrong.body().split("value=\"cold\"", -1).length - 1, wrong.body());
        stand.later(60);
        press("/prep/clocks/chosen", "clock", "t1", "degrees", "41", "do", "measure");
        assertEquals("t2", next(stand.get("/prep/clocks").body()));
    }

    private static String next(String page) {
        return page.replaceAll("(?s).*<option value=\"(t[0-9]+)\" selected.*", "$1");
    }

    @Test
    void whatIsWrongIsSaidAndStaysTyped() {
        HttpResponse<String> wrong =
                press("/prep/clocks", "what", "relish", "degrees", "warm", "long", "0");
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("value=\"warm\""), wrong.body());
        assertTrue(wrong.body().contains("value=\"relish\""), wrong.body());
        assertEquals(404, press("/prep/clocks/t9", "do", "used").statusCode());
    }
}
