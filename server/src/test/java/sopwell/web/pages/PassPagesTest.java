package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.menu.Lang;
import sopwell.web.api.JsonFrames;
import sopwell.web.live.Frame;

/** The pass and the guests' screen over HTTP. */
class PassPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private String whole(String name) {
        String order = stand.place("2 beef dipped hot, fries", name);
        up(order, 1, "line");
        up(order, 2, "fryer");
        return order;
    }

    private void up(String order, int line, String station) {
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(order, line, station))));
    }

    private HttpResponse<String> press(String order, String what, Map<String, String> fields) {
        return stand.press(
                "/pass/orders/" + order + "/" + what, "k" + what + fields.hashCode(), fields);
    }

    @Test
    void aCallAndTheBagsAreSaidOnTheRowAndAtTheHandOver() {
        String order = whole("Ines");
        assertEquals(200, press(order, "called", Map.of()).statusCode());
        assertEquals(200, press(order, "bags", Map.of("bags", "2")).statusCode());
        String page = stand.get("/pass").body();
        assertTrue(page.contains(">called</b>"), page);
        assertTrue(page.contains("aria-pressed=\"true\""), page);
        assertTrue(page.contains("class=\"with\">2 bags</span>"), page);
        assertTrue(stand.get("/pass?lang=es").body().contains("2 bolsas"));
        assertEquals(200, press(order, "handed", Map.of()).statusCode());
        assertTrue(stand.get("/pass").body().contains("class=\"packed\">2 bags</span>"));
    }

    @Test
    void aCountThatCannotBeIsASentence() {
        String order = whole("");
        for (String bags : List.of("0", "1000", "99999999999", "-1", "two", "")) {
            HttpResponse<String> got = press(order, "bags", Map.of("bags", bags));
            assertEquals(422, got.statusCode(), bags);
            assertTrue(got.body().contains("Say 1 to 20."), got.body());
        }
        assertEquals(404, press("20261127-0999", "called", Map.of()).statusCode());
        String begun = stand.place("beef", "");
        assertEquals(409, press(begun, "called", Map.of()).statusCode());
    }

    @Test
    void aMissingPartSaysItsStationItsStateAndForHowLong() {
        String order = stand.place("beef, fries", "");
        stand.later(130);
        stand.ask(new ForKitchen(new KitchenCommand.Start(new PartId(order, 2, "fryer"))));
        stand.later(61);
        String page = stand.get("/pass").body().replaceAll("\\s+", " ");
        assertTrue(page.contains("Fryer: begun"), page);
        assertTrue(
                page.matches(
                        ".*Fryer: begun <span class=\"for\"> ?<span data-minutes=\"[0-9]+\""
                                + ">1</span>.*"),
                page);
        assertTrue(
                page.matches(
                        ".*Line: waiting <span class=\"for\"> ?<span data-minutes=\"[0-9]+"
                                + "\">3</span>.*"),
                page);
    }

    @Test
    void guestsGetNumbersAndNamesInBothLanguagesAndNothingElse() {
        String order = whole("Ines");
        String waiting = stand.place("combo dry", "Theo");
        String page = stand.get("/ready").body().replaceAll("\\s+>", ">");
        assertTrue(page.contains("<span lang=\"en\">Ready</span>"), page);
        assertTrue(page.contains("<span lang=\"es\">Listo</span>"), page);
        assertTrue(page.contains("<b>1</b>") && page.contains("Ines"), page);
        for (String tag : List.of("<a ", "<button", "<input", "<form", "<details", "hx-")) {
            assertFalse(page.contains(tag), tag);
        }
        holdsNothingElse(page, order, waiting);
        Frame frame = stand.frame("ready");
        holdsNothingElse(stand.written(frame, Lang.ES), order, waiting);
        String json = new JsonFrames().write(frame);
        holdsNothingElse(json, order, waiting);
        assertTrue(
                json.contains("{\"row\":\"1\",\"number\":1,\"name\":\"Ines\",\"freshAt\":"), json);
        press(order, "handed", Map.of());
        assertFalse(stand.get("/ready").body().contains("Ines"));
    }

    private static void holdsNothingElse(String text, String... orders) {
        for (String order : orders) {
            assertFalse(text.contains(order), text);
        }
        for (String other :
                List.of(
                        "Theo", "beef", "fries", "res", "combo", "dipped", "Cents", "$", "Line",
                        "Fryer", "due", "pieces", "station", "line")) {
            String body = text.contains("<main") ? text.substring(text.indexOf("<main")) : text;
            assertFalse(
                    body.matches("(?s).*\\b" + java.util.regex.Pattern.quote(other) + "\\b.*"),
                    other + " in " + body);
        }
    }
}
