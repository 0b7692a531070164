package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.desk.StandCommand;
import sopwell.menu.LocalText;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Watch;

/** Ingredients and recipes added by page, changed as a whole, and taken out. */
class EntryPagesTest {
    private static final String NEW = "/recipes/new";
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

    private RecipeBook book() {
        return stand.recipes();
    }

    private HttpResponse<String> send(String path, Map<String, String> typed) {
        Map<String, String> form = PageForm.of(stand.get(path).body(), path);
        form.putAll(typed);
        return stand.post(path, form);
    }

    private static Map<String, String> pork() {
        Map<String, String> typed = new HashMap<>();
        typed.putAll(Map.of("name.en", "Pork shoulder", "name.es", "Paleta de cerdo"));
        typed.putAll(Map.of("unit", "LB", "how", "bought", "supplier", "Halloway Meats"));
        typed.putAll(Map.of("pack", "24 lb", "price", "61.20", "lead", "2", "order-by", "14:00"));
        typed.putAll(Map.of("day.tuesday", "on", "day.friday", "on", "life", "5", "walk", "12"));
        typed.putAll(Map.of("shelf.en", "Chill room, low", "shelf.es", "Cuarto frío, abajo"));
        typed.putAll(Map.of("box.0.en", "case", "box.0.es", "caja", "box.0.holds", "24 lb"));
        return typed;
    }

    private static Map<String, String> pulled(String raw) {
        Map<String, String> typed = new HashMap<>();
        typed.putAll(Map.of("name.en", "Pulled pork", "name.es", "Cerdo deshebrado"));
        typed.putAll(Map.of("unit", "LB", "how", "made", "life", "4"));
        typed.putAll(Map.of("in.0.what", raw, "in.0.amount", "8 lb"));
        typed.putAll(Map.of("yield.0.en", "trim", "yield.0.es", "limpiar", "yield.0.left", "0.9"));
        typed.putAll(Map.of("yield.1.en", "roast", "yield.1.es", "asar", "yield.1.left", "60 %"));
        typed.putAll(Map.of("lot.en", "shoulder", "lot.es", "paleta", "per-run", "6"));
        typed.putAll(Map.of("step.0.en", "Roast", "step.0.es", "Asar", "step.0.minutes", "5 h"));
        typed.putAll(Map.of("step.0.resource", "oven", "step.0.slots", "1", "step.0.start", "on"));
        typed.putAll(Map.of("step.0.end", "on", "step.0.watch", "COOK_ROAST"));
        typed.putAll(Map.of("step.1.en", "Pull", "step.1.es", "Deshebrar"));
        typed.putAll(Map.of("step.1.minutes", "1:15", "step.1.hands", "20 min", "dated", "0"));
        typed.putAll(Map.of("use.0.item", "beef/small", "use.0.much", "4 oz"));
        typed.putAll(Map.of("use.1.item", "beef", "use.1.option", "extra", "use.1.much", "150 %"));
        return typed;
    }

    @Test
    void anIngredientIsAddedWithItsWordsUnitContainersShelfAndSupplier() {
        HttpResponse<String> saved = send(NEW, pork());
        assertEquals(303, saved.statusCode());
        String to = saved.headers().firstValue("Location").orElseThrow();
        assertEquals("/recipes/pork-shoulder?saved=1", to);
        Ingredient pork = book().ingredient("pork-shoulder");
        assertEquals(new LocalText("Pork shoulder", "Paleta de cerdo"), pork.name());
        assertEquals(Unit.LB, pork.unit());
        assertEquals(new LocalText("case", "caja"), pork.containers().get(0).name());
        assertEquals(Unit.LB.toBase(new BigDecimal(24)), pork.containers().get(0).inBase());
        assertEquals(2, pork.supply().orElseThrow().leadDays());
        assertEquals(6_120, pork.supply().orElseThrow().packCents());
        assertEquals(5, pork.shelfLifeDays());
        String page = stand.get(to).body();
        assertTrue(page.contains("<p>Saved.</p>"), page);
        assertTrue(page.contains("<p>Nothing takes Pork shoulder.</p>"), page);
        String counts = stand.get("/prep/counts?at=pork-shoulder&lang=es").body();
        assertTrue(counts.contains("Cuarto frío, abajo"), counts);
    }

    @Test
    void aRecipeIsAddedWithStepsYieldsLotsAndWhatTakesIt() {
        send(NEW, pork());
        assertEquals(303, send(NEW, pulled("pork-shoulder")).statusCode());
        Recipe recipe = book().recipe("pulled-pork").orElseThrow();
        assertEquals(new BigDecimal("0.54"), recipe.left());
        assertEquals(6, recipe.lot().perRunMax());
        assertEquals(List.of(300, 75), recipe.steps().stream().map(s -> s.minutes()).toList());
        assertEquals("oven", recipe.steps().get(0).resource().orElseThrow());
        assertTrue(recipe.steps().get(0).endAttended());
        assertEquals(Watch.COOK_ROAST, recipe.steps().get(0).watch());
        assertEquals(20, recipe.steps().get(1).handsMinutes());
        assertEquals("roast", recipe.datedFrom());
        List<String> uses =
                book().uses().stream()
                        .filter(use -> use.ingredient().equals("pulled-pork"))
                        .map(use -> use.item() + "/" + use.size() + "/" + use.option())
                        .toList();
        assertEquals(List.of("beef/small/", "beef//extra"), uses);
    }

    @Test
    void whatIsWrongIsSaidAtItsFieldAndNothingTypedIsLost() {
        Map<String, String> typed = pulled("beef-raw");
        typed.put("name.es", "");
        typed.put("yield.1.left", "1.6");
        typed.put("in.0.amount", "8");
        typed.put("step.0.minutes", "a while");
        HttpResponse<String> refused = send(NEW, typed);
        assertEquals(422, refused.statusCode());
        String page = refused.body();
        assertTrue(fault(page, "name.es").startsWith("A name is missing."), page);
        assertTrue(fault(page, "in.0.amount").contains("does not say of what"), page);
        assertTrue(fault(page, "step.0.minutes").contains("“a while” is no length of time"), page);
        Map<String, String> shown = PageForm.of(page, NEW);
        typed.forEach((field, value) -> assertEquals(value, shown.get(field), field));
        Map<String, String> mended = new HashMap<>(typed);
        mended.putAll(Map.of("name.es", "Cerdo", "in.0.amount", "8 lb", "step.0.minutes", "5 h"));
        String range = send(NEW, mended).body();
        assertTrue(fault(range, "yield.1.left").contains("A yield of 1.6 can’t be"), range);
        Map<String, String> form = PageForm.of(stand.get(NEW).body(), NEW);
        form.putAll(typed);
        String spanish = stand.post(NEW + "?lang=es", form).body();
        assertTrue(fault(spanish, "name.es").startsWith("Falta un nombre."), spanish);
    }

    @Test
    void aRecipeThatDoesNotSayWhatALotGivesIsRefusedAtThatField() {
        Map<String, String> typed = pulled("beef-raw");
        typed.keySet().removeIf(field -> field.startsWith("yield."));
        String page = send(NEW, typed).body();
        assertTrue(fault(page, "gives").contains("does not say what a lot gives"), page);
        typed.put("gives", "5 lb");
        assertEquals(303, send(NEW, typed).statusCode());
    }

    @Test
    void aCircleIsRefusedWhereItIsClosed() {
        send(NEW, pork());
        send(NEW, pulled("pork-shoulder"));
        Map<String, String> typed = new HashMap<>();
        typed.putAll(Map.of("how", "made", "in.0.what", "water", "in.0.amount", "1 l"));
        typed.putAll(Map.of("in.1.what", "pulled-pork", "in.1.amount", "1 lb", "gives", "7 lb"));
        typed.putAll(Map.of("lot.en", "lot", "lot.es", "lote", "step.0.en", "Mix"));
        typed.putAll(Map.of("step.0.es", "Mezclar", "step.0.minutes", "10"));
        String page = send("/recipes/pork-shoulder/all", typed).body();
        assertTrue(fault(page, "in.1.what").contains("made of each other in a circle"), page);
        assertFalse(book().recipe("pork-shoulder").isPresent());
    }

    @Test
    void aNameThatIsTakenAndAMissingUnitAreSaid() {
        Map<String, String> typed = pork();
        typed.put("unit", "");
        assertEquals(303, send(NEW, pork()).statusCode());
        String page = send(NEW, typed).body();
        assertTrue(fault(page, "name.en").contains("There is an ingredient “Pork shoulder”"), page);
        assertTrue(fault(page, "unit").contains("does not say what it is counted in"), page);
    }

    @Test
    void aPressThatIsSentTwiceAddsOnce() {
        Map<String, String> form = PageForm.of(stand.get(NEW).body(), NEW);
        form.putAll(pork());
        assertEquals(303, stand.post(NEW, form).statusCode());
        assertEquals(303, stand.post(NEW, form).statusCode());
        long times =
                book().ingredients().stream()
                        .filter(one -> one.id().startsWith("pork-shoulder"))
                        .count();
        assertEquals(1, times);
    }

    @Test
    void whatIsThereIsShownAsItIsAndSavedUntouchedStaysTheSame() {
        for (Ingredient one : book().ingredients()) {
            RecipeBook before = book();
            String path = "/recipes/" + one.id() + "/all";
            assertEquals(303, send(path, Map.of()).statusCode(), one.id());
            assertEquals(before.ingredients(), book().ingredients(), one.id());
            assertEquals(before.recipes(), book().recipes(), one.id());
            assertEquals(
                    before.uses().stream().filter(u -> u.ingredient().equals(one.id())).toList(),
                    book().uses().stream().filter(u -> u.ingredient().equals(one.id())).toList());
        }
    }

    @Test
    void moreRowsKeepWhatWasTyped() {
        Map<String, String> typed = pulled("beef-raw");
        typed.put("more", "rows.step");
        HttpResponse<String> more = send(NEW, typed);
        assertEquals(200, more.statusCode());
        Map<String, String> shown = PageForm.of(more.body(), NEW);
        assertEquals("Pulled pork", shown.get("name.en"));
        assertTrue(shown.containsKey("step.3.minutes"), shown.keySet().toString());
        assertFalse(book().hasIngredient("pulled-pork"));
    }

    @Test
    void onlyWhatNothingTakesIsTakenOut() {
        send(NEW, pork());
        send(NEW, pulled("pork-shoulder"));
        HttpResponse<String> used = retire("pork-shoulder");
        assertEquals(422, used.statusCode());
        assertTrue(used.body().contains("it goes into Pulled pork."), used.body());
        assertTrue(retire("pulled-pork").body().contains("it goes into beef, small"));
        send(
                "/recipes/pulled-pork/all",
                Map.of(
                        "use.0.much",
                        "",
                        "use.0.item",
                        "",
                        "use.1.much",
                        "",
                        "use.1.item",
                        "",
                        "use.1.option",
                        ""));
        HttpResponse<String> gone = retire("pulled-pork");
        assertEquals(303, gone.statusCode());
        assertFalse(book().hasIngredient("pulled-pork"));
        assertTrue(book().recipe("pulled-pork").isEmpty());
        String list = stand.get(gone.headers().firstValue("Location").orElseThrow()).body();
        assertTrue(list.contains("pulled-pork is no more in the book."), list);
        assertEquals(303, retire("pork-shoulder").statusCode());
        assertEquals(303, retire("pork-shoulder").statusCode(), "pressed twice");
        assertEquals(404, stand.post("/recipes/No/retired", Map.of("key", "k")).statusCode());
    }

    /** Otherwise the log would hold what nobody can read again. */
    @Test
    void aNameWithASignThatOnlySteersIsRefusedAtItsField() {
        for (String name : List.of("Pulled\u00adpork", "x".repeat(61))) {
            Map<String, String> pork = new HashMap<>(pork());
            pork.put("name.en", name);
            HttpResponse<String> refused = send(NEW, pork);
            assertEquals(422, refused.statusCode());
            assertTrue(fault(refused.body(), "name.en").contains("at most 60"), refused.body());
        }
    }

    @Test
    void whoSavesOverAnothersChangeIsToldWhatThatWouldUndo() {
        String path = "/recipes/beef-raw/all";
        Map<String, String> mine = PageForm.of(stand.get(path).body(), path);
        assertEquals(303, send(path, Map.of("life", "4")).statusCode());
        HttpResponse<String> late = stand.post(path, mine);
        assertEquals(412, late.statusCode());
        assertTrue(late.body().contains("Somebody changed the recipes"), late.body());
        assertTrue(late.body().contains("Good for how many days: 4 → 6"), late.body());
        assertFalse(late.body().contains("Temperatures watched:"), "what is the same: " + late);
        assertEquals(303, stand.post(path, PageForm.of(late.body(), path)).statusCode());
        assertEquals(6, book().ingredient("beef-raw").shelfLifeDays());
    }

    @Test
    void aKitchenGetsItsOvensAndHours() {
        String path = "/recipes/kitchen";
        Map<String, String> more =
                Map.of(
                        "place.4.en",
                        "Small oven",
                        "place.4.es",
                        "Horno chico",
                        "place.4.slots",
                        "2",
                        "place.4.turn",
                        "10 min",
                        "from.monday",
                        "06:00");
        String half = send(path, more).body();
        assertTrue(fault(half, "to.monday").contains("is no time of day"), half);
        Map<String, String> whole = new HashMap<>(more);
        whole.put("to.monday", "05:00");
        String crossed = send(path, whole).body();
        assertTrue(fault(crossed, "to.monday").contains("opens at 06:00 and closes at 05:00"));
        whole.put("to.monday", "14:00");
        assertEquals(303, send(path, whole).statusCode());
        assertEquals(2, book().resource("small-oven").slots());
        assertEquals(7, book().hours().days().size());
        String gone =
                send(
                                path,
                                Map.of(
                                        "place.0.en",
                                        "",
                                        "place.0.es",
                                        "",
                                        "place.0.slots",
                                        "",
                                        "place.0.turn",
                                        ""))
                        .body();
        assertTrue(gone.contains("still needs what you took out"), gone);
    }

    private HttpResponse<String> retire(String id) {
        String path = "/recipes/" + id + "/retired";
        HttpResponse<String> page = stand.get("/recipes/" + id);
        return stand.post(
                path,
                page.statusCode() == 200
                        ? PageForm.of(page.body(), path)
                        : Map.of("key", "late", "revision", "any"));
    }

    private static String fault(String page, String field) {
        String mark = "id=\"" + field + "-fault\">";
        int at = page.indexOf(mark);
        assertTrue(at >= 0, field + " has no fault: " + page);
        return page.substring(at + mark.length(), page.indexOf("</p>", at));
    }
}
