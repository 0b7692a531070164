package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.desk.StandCommand;
import sopwell.stock.recipes.RecipeBook;

class RecipePagesTest {
    private static final String BEEF = "/recipes/beef-sliced";
    private PageStand stand;

    @BeforeEach
    void open() throws jakarta.servlet.ServletException {
        stand = new PageStand();
        RecipeBook demo = Script.demoRecipes().get(0);
        stand.ask(new StandCommand.AdoptRecipes(demo, RecipeBook.empty().revision()));
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void aMadeThingSaysWhatItTakesGivesAndGoesInto() {
        String page = stand.get("/recipes").body();
        assertTrue(page.contains("From 5.5 kg raw beef piece"), page);
        assertTrue(page.contains("trim 0.95 · roast 0.72 · slice 0.97"), page);
        assertTrue(page.contains("One piece gives 3.65 kg, 2 to a pan, up to 6 at once"), page);
        assertTrue(page.contains("Roast 3 h, oven"), page);
        assertTrue(page.contains("Cool 2 h, then 22 h to 72 h"), page);
        assertTrue(page.contains("beef, large 200 g"), page);
        assertTrue(page.contains("extra 150 %"), page);
        String own = stand.get(BEEF).body();
        assertTrue(own.contains("Slicer: 18 and over only"), own);
        String spanish = stand.get("/recipes?lang=es").body();
        assertTrue(spanish.contains("De 5.5 kg pieza de res cruda"), spanish);
    }

    @Test
    void anAmountInTheOwnersUnitIsSavedAndSaidWhatItWasBefore() {
        String page = stand.get(BEEF).body();
        HttpResponse<String> saved = stand.post(BEEF, form(page, "in.beef-raw", "12 lb 3 oz"));
        assertEquals(200, saved.statusCode());
        assertTrue(saved.body().contains("raw beef piece: 5.5 kg → 195 oz"), saved.body());
        assertTrue(stand.get(BEEF).body().contains("value=\"195 oz\""));
        String same = stand.post(BEEF, form(saved.body(), "life", "5")).body();
        assertTrue(same.contains("Nothing was changed."), same);
    }

    @Test
    void usesSharesPricesAndDeliveryDaysAreEditedToo() {
        String page = stand.get(BEEF).body();
        Map<String, String> form = form(page, "yield.roast", "71.5 %");
        form.put("use...easy.percent", "65 %");
        form.put("use.combo...amount", "");
        String saved = stand.post(BEEF, form).body();
        assertTrue(saved.contains("roast: 0.72 → 0.715"), saved);
        assertTrue(saved.contains("easy: 70 % → 65 %"), saved);
        assertTrue(saved.contains("combo: 100 g → nothing"), saved);
        Map<String, String> raw = form(stand.get("/recipes/beef-raw").body(), "price", "112.50");
        raw.put("days", "1");
        raw.put("day.monday", "on");
        String bought = stand.post("/recipes/beef-raw", raw).body();
        assertTrue(bought.contains("107.80 → 112.50"), bought);
        assertTrue(bought.contains("Mon: nothing → ✓"), bought);
        assertTrue(bought.contains("Tue: ✓ → nothing"), bought);
    }

    @Test
    void inputsAreAddedAndTakenOut() {
        String page = stand.get("/recipes/jus").body();
        Map<String, String> form = form(page, "in.jus-base", "");
        form.put("add", "celery");
        form.put("add-amount", "900 g");
        String saved = stand.post("/recipes/jus", form).body();
        assertTrue(saved.contains("celery: nothing → 900 g"), saved);
        assertTrue(saved.contains("jus base: 640 g → nothing"), saved);
    }

    @Test
    void aFaultStandsAtItsFieldAndWhatWasTypedStays() {
        String page = stand.get(BEEF).body();
        Map<String, String> form = form(page, "in.beef-raw", "5,5 kg");
        form.put("yield.roast", "most of it");
        form.put("life", "<b>4</b>");
        HttpResponse<String> refused = stand.post(BEEF, form);
        assertEquals(422, refused.statusCode());
        String body = refused.body();
        assertTrue(body.contains("value=\"5,5 kg\""), body);
        assertTrue(body.contains("A comma in “5,5 kg” may mean two things."), body);
        assertTrue(body.contains("“most of it” is no share"), body);
        assertFalse(body.contains("<b>4</b>"), body);
        assertTrue(body.contains("aria-describedby=\"life-fault\""), body);
        assertTrue(stand.get(BEEF).body().contains("value=\"5.5 kg\""));
    }

    @Test
    void theWholeBookIsCheckedAndItsFaultStandsAtTheField() {
        String page = stand.get(BEEF).body();
        Map<String, String> form = form(page, "yield.trim", "1.2");
        form.put("step.roast.hands", "900");
        form.put("step.cool.most", "10");
        String body = stand.post(BEEF, form).body();
        assertTrue(body.contains("id=\"yield.trim-fault\">A yield of 1.2"), body);
        assertTrue(body.contains("id=\"step.roast.hands-fault\">900 is out of range."), body);
        assertTrue(body.contains("id=\"step.cool.most-fault\">It waits at least 1320"), body);
        Map<String, String> round = form(page, "add", "beef-sliced");
        round.put("add-amount", "1 kg");
        String circle = stand.post(BEEF, round).body();
        assertTrue(circle.contains("in a circle: beef-sliced → beef-sliced"), circle);
    }

    @Test
    void whoSavesOverAnothersChangeIsToldAndKeepsWhatTheyTyped() {
        String mine = stand.get(BEEF).body();
        String theirs = stand.get(BEEF).body();
        assertEquals(200, stand.post(BEEF, form(theirs, "life", "4")).statusCode());
        HttpResponse<String> late = stand.post(BEEF, form(mine, "per-run", "4"));
        assertEquals(412, late.statusCode());
        assertTrue(late.body().contains("Somebody changed the recipes"), late.body());
        assertTrue(late.body().contains("name=\"per-run\" value=\"4\""), late.body());
        assertEquals(200, stand.post(BEEF, form(late.body(), "per-run", "4")).statusCode());
    }

    /** A browser sends every field, also those that somebody else has changed since. */
    @Test
    void whatSavingAgainWouldUndoIsTold() {
        String mine = stand.get(BEEF).body();
        String theirs = stand.get(BEEF).body();
        assertEquals(200, stand.post(BEEF, form(theirs, "life", "4")).statusCode());
        Map<String, String> all = form(mine, "per-run", "4");
        all.put("life", "5");
        String late = stand.post(BEEF, all).body();
        assertTrue(late.contains("<p>Days: 4 → 5</p>"), late);
        assertTrue(late.contains("<p>Lots at once, at most: 6 → 4</p>"), late);
        assertFalse(late.contains("<p>Lots to a pan: "), late);
    }

    @Test
    void thereIsAPageForWhatIsInTheBookAndNoOther() {
        assertEquals(404, stand.get("/recipes/unicorn").statusCode());
        assertEquals(200, stand.get("/recipes/wrap?lang=es").statusCode());
        assertTrue(stand.get("/").body().contains("href=\"/recipes\""));
    }

    /** The hidden fields of a page, and one that was typed. */
    private static Map<String, String> form(String page, String field, String typed) {
        Map<String, String> form = new HashMap<>();
        Matcher hidden =
                Pattern.compile("type=\"hidden\" name=\"(key|revision)\" value=\"([^\"]+)\"")
                        .matcher(page);
        while (hidden.find()) {
            form.put(hidden.group(1), hidden.group(2));
        }
        form.put(field, typed);
        return form;
    }
}
