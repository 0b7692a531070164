package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand;
import sopwell.prep.past.KeepPlan;
import sopwell.prep.past.KeptTask;
import sopwell.stock.recipes.RecipeBook;
import sopwell.storage.RecipeReader;

/** The plan of prep on a screen: of a stand that begins today, with the demo's recipes. */
class PrepPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private void adopt() throws Exception {
        byte[] json = PrepPagesTest.class.getResourceAsStream("/demo/recipes.json").readAllBytes();
        RecipeBook book = RecipeReader.read(json, PageStand.menu()).book().orElseThrow();
        stand.ask(new StandCommand.AdoptRecipes(book, RecipeBook.empty().revision()));
    }

    /** A look that takes too long is answered that it is being counted, and asked again. */
    private HttpResponse<String> counted(String path) {
        HttpResponse<String> got = stand.get(path);
        for (int n = 0; n < 60 && got.body().contains("still being counted"); n++) {
            got = stand.get(path);
        }
        return got;
    }

    private String page(String path) {
        HttpResponse<String> got = counted(path);
        assertEquals(200, got.statusCode(), got.body());
        return got.body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    @Test
    void withoutRecipesItSaysWhatIsMissing() {
        String page = page("/prep");
        assertTrue(page.contains("There is no book of recipes yet"), page);
        assertFalse(page.contains("Assumed"), "nothing was planned: " + page);
        assertTrue(page("/prep?lang=es").contains("Todavía no hay recetario"));
    }

    @Test
    void theFirstDayStandsOnAGuessAndSaysSo() throws Exception {
        adopt();
        String page = page("/prep");
        assertTrue(page.contains("a guess of 200 pieces a day"), page);
        assertTrue(page.contains("Never counted: 39 ingredients"), page);
        assertTrue(page.contains("costs $0.50 beside the margin"), page);
        assertTrue(page.contains("suppliers have come by 09:00"), page);
        assertTrue(page.contains("Today, Fri, Nov 27"), page);
        assertTrue(page.contains("in nine of ten cases"), page);
        assertTrue(page.contains("what your local health department"), page);
        assertTrue(page.contains("Order by Fri, Nov 27"), page);
        String spanish = page("/prep?lang=es");
        assertTrue(spanish.contains("una suposición de 200 piezas al día"), spanish);
        assertFalse(spanish.contains("Needed"), spanish);
    }

    @Test
    void aTaskStartsABatchWithThePlannedAmount() throws Exception {
        adopt();
        String body = stand.get("/prep").body();
        Matcher form =
                Pattern.compile(
                                "name=\"key\" value=\"([^\"]*)\">\\s*<input type=\"hidden\""
                                        + " name=\"makes\" value=\"([^\"]*)\">\\s*<input"
                                        + " type=\"hidden\" name=\"lots\" value=\"(\\d+)\">\\s*"
                                        + "<input type=\"hidden\" name=\"note\" value=\"([^\"]*)\"")
                        .matcher(body);
        assertTrue(form.find(), body);
        HttpResponse<String> started =
                stand.post(
                        "/prep/batches",
                        Map.of(
                                "key",
                                form.group(1),
                                "makes",
                                form.group(2),
                                "lots",
                                form.group(3),
                                "note",
                                form.group(4)));
        assertEquals(303, started.statusCode());
        String batch = page(started.headers().firstValue("Location").orElseThrow());
        assertTrue(batch.contains("by the plan: start"), batch);
    }

    @Test
    void datesThatAreNotPlannedAreRefusedWithWhatWouldBeRight() throws Exception {
        adopt();
        for (String asked : new String[] {"from=2026-11-26", "days=0", "days=x", "from=soon"}) {
            HttpResponse<String> got = stand.get("/prep?" + asked);
            assertEquals(422, got.statusCode(), asked);
            assertTrue(got.body().contains("a date from 2026-11-27 to 2026-12-10"), got.body());
        }
        assertTrue(page("/prep?from=2026-11-29&days=1").contains("Sun, Nov 29"));
    }

    @Test
    void thePlanIsMadeAnewWhenSomethingWasCounted() throws Exception {
        adopt();
        stand.press(
                "/prep/counts",
                "count-1",
                Map.of("do", "count", "ingredient", "roll", "amount", "500", "unit", "each"));
        assertTrue(page("/prep").contains("Never counted: 38 ingredients"));
    }

    @Test
    void yesterdayIsLearnedBeforeTheStandOpens() throws Exception {
        adopt();
        stand.place("2 beef dipped hot, fries", "");
        assertTrue(page("/prep").contains("a guess of 200 pieces a day"), "the day is not over");
        stand.at(Instant.parse("2026-11-28T12:00:00Z"));
        String morning = page("/prep");
        assertTrue(morning.contains("stands on 1 day only, Fri, Nov 27"), morning);
    }

    @Test
    void theSheetHasLinesToWriteOnAndCautionsInBothLanguages() throws Exception {
        adopt();
        String day = day(stand.get("/prep").body());
        String sheet = page("/prep/sheet?both=1&day=" + day);
        assertTrue(sheet.contains("Temp."), sheet);
        assertTrue(sheet.contains("It gave / Dio"), sheet);
        assertTrue(sheet.contains("The recipes name no allergen"), sheet);
        assertTrue(sheet.contains("Las recetas no nombran"), sheet);
        assertTrue(sheet.contains("what your local health department"), sheet);
        String one = page("/prep/sheet?lang=es&day=" + day);
        assertFalse(one.contains("The recipes name"), one);
        assertEquals(422, stand.get("/prep/sheet?day=2026-11-26").statusCode());
        assertEquals(422, stand.get("/prep/sheet?day=soon").statusCode());
    }

    /** The first date on which something is to be started. */
    private static String day(String plan) {
        Matcher section =
                Pattern.compile("/prep/sheet\\?day=([0-9-]+)\"(?:(?!</section>).)*<time>", 32)
                        .matcher(plan);
        assertTrue(section.find(), plan);
        return section.group(1);
    }

    @Test
    void ofADayWithoutAKeptPlanNobodyKnowsWhatWasPlanned() throws Exception {
        adopt();
        assertTrue(page("/prep/past").contains("No day was opened yet"));
        stand.place("2 beef dipped hot, fries", "");
        String past = page("/prep/past");
        assertTrue(past.contains("Business days of the last eight weeks: 1."), past);
        assertTrue(past.contains("not kept"), past);
        assertEquals(422, counted("/prep/past?to=2026-11-28").statusCode());
        assertEquals(422, counted("/prep/past?to=soon").statusCode());
    }

    @Test
    void theFirstPlanOfAnOpenDayIsKeptAndHeldAgainstWhatWasMade() throws Exception {
        adopt();
        KeptTask task = new KeptTask("hot-relish", 2, 15_600_000, 0, 0, LocalDate.of(2026, 12, 1));
        LocalDate today = LocalDate.of(2026, 11, 27);
        stand.ask(new StandCommand.ForPlan(new KeepPlan(today, List.of(task))));
        stand.place("2 beef dipped hot, fries", "");
        assertTrue(page("/prep/past").contains("not kept"), "no day was open");
        stand.ask(new StandCommand.ForPlan(new KeepPlan(today, List.of(task))));
        stand.ask(new StandCommand.ForPlan(new KeepPlan(today, List.of())));
        String past = page("/prep/past");
        assertTrue(past.contains("when the day was opened: 1;"), past);
        assertTrue(past.contains("2 × crock, 15.6 kg for Tue, Dec 1"), past);
    }
}
