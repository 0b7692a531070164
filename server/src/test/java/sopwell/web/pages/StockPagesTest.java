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
import sopwell.stock.larder.Books;
import sopwell.stock.recipes.RecipeBook;

/** Counting, stock and batches on the screens; see {@link Books} for what there is. */
class StockPagesTest {
    private PageStand stand;
    private int keys;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
        stand.ask(new StandCommand.AdoptRecipes(Books.small(), RecipeBook.empty().revision()));
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void aCountGoesOnToTheNextShelfAndSaysWhatItFound() {
        String first = flat(stand.get("/prep/counts").body());
        assertTrue(first.contains("walk-in · 1 of 5"), first);
        assertTrue(first.contains("Never counted"), first);
        String next = count("sliced-beef", "2", "pan").body();
        assertTrue(next.contains("sliced-beef: 2 pan counted."), next);
        assertTrue(next.contains("walk-in · 2 of 5"), next);
        stand.place("2 beef dry", "");
        assertTrue(flat(stand.get("/prep/counts").body()).contains("The books have 8700 g"));
        String again = count("sliced-beef", "8.5", "kg").body();
        assertTrue(again.contains("8.5 kg counted, −200 g against the books today."), again);
    }

    @Test
    void theWalkEndsWithTheLastShelf() {
        String last = flat(stand.get("/prep/counts?at=rolls").body());
        assertTrue(last.contains("5 of 5"), last);
        assertTrue(last.contains("href=\"/prep/stock\" rel=\"next\""), last);
        String end = count("rolls", "3", "tray").body();
        assertTrue(end.contains("All shelves are walked."), end);
    }

    @Test
    void whatIsNoCountIsSaidAndStaysOnItsShelf() {
        HttpResponse<String> refused = count("relish", "-3", "lb");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("“-3” is no amount here."), refused.body());
        assertTrue(refused.body().contains("<h2>relish</h2>"), refused.body());
        assertEquals(404, count("gravel", "3", "lb").statusCode());
    }

    @Test
    void stockSaysWhatIsLeftAndWhatRunsOut() {
        count("rolls", "12", "each");
        for (int n = 0; n < 4; n++) {
            stand.later(600);
            stand.place("beef dry", "");
        }
        String page = flat(stand.get("/prep/stock").body());
        assertTrue(page.contains("8 each"), page);
        // Four in the 30 minutes since the first: 8 last an hour. 18:40 UTC is 12:40 in Chicago.
        assertTrue(page.contains("out about 13:40"), page);
        assertTrue(page.contains("class=\"short\""), page);
        assertTrue(page.contains("never counted"), page);
        String spanish = flat(stand.get("/prep/stock?lang=es").body());
        assertTrue(spanish.contains("se acaba hacia las 13:40"), spanish);
    }

    @Test
    void deliveriesAndWasteStayWithTheIngredient() {
        count("rolls", "10", "each");
        String in =
                press(
                                "/prep/counts",
                                "ingredient",
                                "rolls",
                                "amount",
                                "1",
                                "unit",
                                "tray",
                                "do",
                                "deliver")
                        .body();
        assertTrue(in.contains("rolls: 1 tray came in."), in);
        assertTrue(in.contains("The books have 58 each"), in);
        HttpResponse<String> why =
                press(
                        "/prep/counts",
                        "ingredient",
                        "rolls",
                        "amount",
                        "2",
                        "unit",
                        "each",
                        "do",
                        "waste");
        assertEquals(422, why.statusCode());
        String out =
                press(
                                "/prep/counts",
                                "ingredient",
                                "rolls",
                                "amount",
                                "2",
                                "unit",
                                "each",
                                "do",
                                "waste",
                                "reason",
                                "dropped")
                        .body();
        assertTrue(out.contains("The books have 56 each"), out);
    }

    @Test
    void aBatchSaysWhatToDoBeforeItIsTooLate() {
        String id = start("sliced-beef");
        String path = "/prep/batches/" + id;
        assertTrue(flat(stand.get(path).body()).contains("Next: roast"));
        press(path, "do", "move", "step", "roast");
        String roast = flat(stand.get(path).body());
        assertTrue(roast.contains("still 250 °F or more, with fan 250 °F or more"), roast);
        assertTrue(roast.contains("FDA Food Code 2022, 3-401.11(B)"), roast);
        press(path, "do", "measure", "degrees", "158");
        press(path, "do", "move", "step", "cool");
        press(path, "do", "measure", "degrees", "138");
        stand.later(95 * 60);
        String late = flat(press(path, "do", "measure", "degrees", "95.5").body());
        assertTrue(late.contains("class=\"clock urgent\""), late);
        assertTrue(late.contains("Ice bath, or split into shallower pans: 70 °F by 14:00."), late);
        assertTrue(late.contains("25 min"), late);
        assertTrue(late.contains("95.5 °F at 13:35"), late);
        assertTrue(flat(stand.get(path + "?lang=es").body()).contains("Baño de hielo"));
        stand.later(30 * 60);
        String list = flat(stand.get("/prep/batches").body());
        assertTrue(list.contains("Throw it away: the limit was not met in time."), list);
        assertTrue(list.contains("class=\"urgent\""), list);
        assertFalse(list.contains("Limits not shown to be met"), "it is still in that step");
    }

    @Test
    void aBatchThatIsMadeGetsItsLabelAndGoesWhenItIsUsedUp() {
        String path = "/prep/batches/" + start("relish");
        HttpResponse<String> made = press(path, "do", "yield", "amount", "4", "unit", "kg");
        assertEquals("/prep/batches", made.headers().firstValue("HX-Redirect").orElseThrow());
        String kept = flat(stand.get("/prep/batches").body());
        assertTrue(kept.contains("b1 · relish"), kept);
        assertTrue(kept.contains("prepared Fri, Nov 27, use by Mon, Nov 30"), kept);
        assertTrue(kept.contains("use within 4 days"), "the caution of what is under oil: " + kept);
        press(path, "do", "used-up");
        assertFalse(flat(stand.get("/prep/batches").body()).contains("b1 · relish"));
    }

    @Test
    void whatIsThrownAwayOfABatchIsWhatIsStillThere() {
        count("relish", "0", "g");
        String path = "/prep/batches/" + start("relish");
        press(path, "do", "yield", "amount", "4", "unit", "kg");
        Map<String, String> form = new HashMap<>(Map.of("key", "away", "do", "discard"));
        form.putAll(Map.of("amount", "some", "unit", "kg", "reason", "mould"));
        HttpResponse<String> wrong = stand.post(path, form);
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("“some” is no amount here."), wrong.body());
        form.put("amount", "1.5");
        stand.post(path, form);
        assertFalse(flat(stand.get("/prep/batches").body()).contains("b1 · relish"));
        assertTrue(flat(stand.get("/prep/counts?at=relish").body()).contains("have 2500 g"));
    }

    @Test
    void aRefusedPressShowsItsSentenceAndKeepsWhatWasTyped() {
        String path = "/prep/batches/" + start("relish");
        press(path, "do", "move", "step", "chill");
        String degrees = press(path, "do", "measure", "degrees", "warm").body();
        assertTrue(degrees.contains("value=\"warm\""), degrees);
        String yield = press(path, "do", "yield", "amount", "a lot", "unit", "lb").body();
        assertTrue(yield.contains("value=\"a lot\""), yield);
        assertTrue(yield.matches("(?s).*value=\"lb\"\\s+selected.*"), yield);
        Map<String, String> form = new HashMap<>(Map.of("key", "many", "makes", "sliced-beef"));
        form.putAll(Map.of("lots", "9999", "note", "for Saturday"));
        String start = stand.post("/prep/batches", form).body();
        assertTrue(start.contains("value=\"for Saturday\""), start);
        assertTrue(start.contains("value=\"9999\""), start);
    }

    @Test
    void aMoveOfABatchThatIsMadeMeanwhileSaysWhy() {
        String path = "/prep/batches/" + start("relish");
        press(path, "do", "yield", "amount", "4", "unit", "kg");
        HttpResponse<String> late = press(path, "do", "move", "step", "chill");
        assertEquals(409, late.statusCode());
        assertTrue(late.headers().firstValue("HX-Redirect").isEmpty(), "it would be lost");
        assertTrue(late.body().contains("role=\"status\""), late.body());
        assertTrue(late.body().contains("b1"), late.body());
    }

    @Test
    void aMoveFromTheLastStepSaysThatThereIsNoNext() {
        String path = "/prep/batches/" + start("relish");
        press(path, "do", "move", "step", "chill");
        String said = flat(press(path, "do", "move", "step", "cut").body());
        assertTrue(said.contains("it is at its last step. Say what it gave"), said);
        assertFalse(said.contains("“”"), said);
        Map<String, String> form = new HashMap<>(Map.of("key", "es", "do", "move", "step", "cut"));
        assertTrue(stand.post(path + "?lang=es", form).body().contains("está en su último paso"));
    }

    /** Two roasts of 6 kg are two roasts, not one of 12 kg: the limit is that of each. */
    @Test
    void theOvensLimitGoesByTheRoastThatTheBatchWasBegunWith() {
        String path = "/prep/batches/" + start("sliced-beef");
        press(path, "do", "move", "step", "roast");
        assertTrue(flat(stand.get(path).body()).contains("still 250 °F or more"));
        RecipeBook lighter = Books.smallWithRoasts("4");
        stand.ask(new StandCommand.AdoptRecipes(lighter, Books.small().revision()));
        assertTrue(flat(stand.get(path).body()).contains("still 250 °F or more"), "as begun");
        String two =
                press("/prep/batches", "makes", "sliced-beef", "lots", "2")
                        .headers()
                        .firstValue("Location")
                        .orElseThrow();
        press(two, "do", "move", "step", "roast");
        String small = flat(stand.get(two).body());
        assertTrue(small.contains("still 350 °F or more, with fan 325 °F or more"), small);
    }

    /** Enter in a form presses its first button: behind a reason that must be the bin's. */
    @Test
    void enterBehindAReasonThrowsAwayAndDoesNotUseUp() {
        press("/prep/batches/" + start("relish"), "do", "yield", "amount", "4", "unit", "kg");
        String page = flat(stand.get("/prep/batches").body());
        String form = page.substring(page.lastIndexOf("<form", page.indexOf("name=\"reason\"")));
        int button = form.indexOf("<button");
        assertTrue(form.startsWith("name=\"do\" value=\"discard\"", button + 8), form);
    }

    @Test
    void theSlicersTimeStartsWhenSomebodySaysItIsClean() {
        assertTrue(flat(stand.get("/prep/batches").body()).contains("Nobody said yet"));
        press("/prep/slicer/cleaned");
        String page = flat(stand.get("/prep/batches").body());
        assertTrue(page.contains("Take it apart and clean it by 16:00."), page);
    }

    @Test
    void aPressWithoutAKeyOrOfNoBatchIsRefused() {
        assertEquals(400, stand.post("/prep/counts", Map.of("amount", "1")).statusCode());
        assertEquals(400, stand.post("/prep/batches", Map.of("makes", "relish")).statusCode());
        HttpResponse<String> bought = press("/prep/batches", "makes", "rolls", "lots", "1");
        assertEquals(422, bought.statusCode());
        assertEquals(303, stand.get("/prep/batches/b99").statusCode());
    }

    private String start(String makes) {
        HttpResponse<String> started = press("/prep/batches", "makes", makes, "lots", "1");
        String to = started.headers().firstValue("Location").orElseThrow();
        return to.substring(to.lastIndexOf('/') + 1);
    }

    private HttpResponse<String> count(String ingredient, String amount, String unit) {
        return press(
                "/prep/counts",
                "ingredient",
                ingredient,
                "amount",
                amount,
                "unit",
                unit,
                "do",
                "count");
    }

    private HttpResponse<String> press(String path, String... fields) {
        Map<String, String> form = new HashMap<>();
        for (int n = 0; n < fields.length; n += 2) {
            form.put(fields[n], fields[n + 1]);
        }
        return stand.press(path, "stock-" + keys++, form);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
