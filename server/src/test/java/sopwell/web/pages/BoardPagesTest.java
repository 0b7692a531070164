package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.menu.Lang;

class BoardPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private static String row(String page, String part) {
        int from = page.indexOf("id=\"row-" + part + "\"");
        assertTrue(from > 0, () -> "no row " + part + " in " + page);
        int next = page.indexOf("id=\"row-", from + 1);
        return page.substring(from, next < 0 ? page.length() : next);
    }

    @Test
    void homeLeadsToEveryScreenThatThereIs() {
        String page = stand.get("/").body();
        for (String path : new String[] {"/counter", "/boards/line", "/boards/fryer", "/pass"}) {
            assertTrue(page.contains("href=\"" + path + "\""), path);
            assertEquals(200, stand.get(path).statusCode(), path);
        }
        assertTrue(page.contains("href=\"/mix/today\""));
    }

    @Test
    void buildBoardShowsDeparturesRefusalsAndCounts() {
        String order = stand.place("2 beef dry sweet", "Ines");
        String page = stand.get("/boards/line").body();
        String row = row(page, order + ".1.line");
        assertTrue(row.contains("<span class=\"word strong\">dry</span>"), row);
        assertTrue(row.contains("<span class=\"word refused\">no hot</span>"), row);
        assertTrue(row.contains("<span class=\"word quiet\">regular</span>"), row);
        assertTrue(row.contains("2×"), row);
        assertTrue(row.contains("data-digit=\"1\""), row);
        assertTrue(page.contains("<b>2</b> sweet"), "the foot counts");
    }

    @Test
    void spanishBoardSpeaksSpanish() {
        String order = stand.place("2 beef dry sweet", "Ines");
        String row = row(stand.get("/boards/line?lang=es").body(), order + ".1.line");
        assertTrue(row.contains("seco") && row.contains("sin picante"), row);
        assertTrue(row.contains(">Listo<") && row.contains("Empezar"), row);
    }

    @Test
    void changeIsOutlinedWithTheOldWordStruckAndSeenComesFirst() {
        String order = stand.place("beef dipped hot", "");
        PartId part = new PartId(order, 1, "line");
        stand.ask(new ForKitchen(new KitchenCommand.Start(part)));
        stand.change(order, "beef dipped sweet");
        String row = row(stand.get("/boards/line").body(), part.toString());
        assertTrue(row.contains("<s>hot</s>"), row);
        assertTrue(row.contains("changed"), row);
        assertTrue(row.contains("Changed. Press 1: seen"), row);
        assertTrue(row.contains("/parts/" + part + "/seen\""), row);
        assertFalse(row.contains("/parts/" + part + "/up\""), row);
    }

    @Test
    void pressPutsAPartUpAndBringsItBack() {
        String order = stand.place("beef", "");
        String part = order + ".1.line";
        String parts = "/boards/line/parts/" + part;
        assertEquals(200, stand.press(parts + "/started", "a", Map.of()).statusCode());
        HttpResponse<String> up = stand.press(parts + "/up", "b", Map.of());
        assertEquals(200, up.statusCode());
        assertEquals("", up.body());
        assertFalse(stand.get("/boards/line").body().contains("row-" + part));
        stand.press("/boards/line/brought-back-last", "c", Map.of());
        assertTrue(stand.get("/boards/line").body().contains("row-" + part));
    }

    @Test
    void refusedPressSaysWhyAndTheSameKeyIsSafe() {
        String order = stand.place("beef", "");
        String up = "/boards/line/parts/" + order + ".1.line/up";
        assertEquals(200, stand.press(up, "a", Map.of()).statusCode());
        assertEquals(200, stand.press(up, "a", Map.of()).statusCode());
        HttpResponse<String> again = stand.press(up, "b", Map.of());
        assertEquals(409, again.statusCode());
        assertTrue(again.body().contains("already up"), again.body());
        assertFalse(again.body().contains("<html"), "a fragment");
    }

    @Test
    void keyForAnotherPressIsRefused() {
        String order = stand.place("beef, beef dry", "");
        String parts = "/boards/line/parts/" + order;
        assertEquals(200, stand.press(parts + ".1.line/up", "a", Map.of()).statusCode());
        assertEquals(422, stand.press(parts + ".2.line/up", "a", Map.of()).statusCode());
        assertEquals(400, stand.press(parts + ".2.line/up", " ", Map.of()).statusCode());
    }

    @Test
    void unknownPartAndStationAreSaid() {
        assertEquals(404, stand.press("/boards/line/parts/none/up", "a", Map.of()).statusCode());
        HttpResponse<String> page = stand.get("/boards/attic");
        assertEquals(404, page.statusCode());
        assertTrue(page.body().contains("attic"), page.body());
        assertEquals(404, stand.get("/boards/counter").statusCode());
    }

    @Test
    void passShowsWhatIsMissingAndHandsOutWholeOrders() {
        String order = stand.place("beef, fries", "Ines");
        stand.press("/boards/line/parts/" + order + ".1.line/up", "a", Map.of());
        String row = row(stand.get("/pass").body(), order);
        assertTrue(row.contains("data-zone=\"open\""), row);
        assertTrue(row.contains("Fryer: waiting"), row);
        HttpResponse<String> early =
                stand.press("/pass/orders/" + order + "/handed", "b", Map.of());
        assertEquals(409, early.statusCode());
        assertTrue(early.body().contains("Fryer"), early.body());
        stand.press("/boards/fryer/parts/" + order + ".2.fryer/up", "c", Map.of());
        String whole = row(stand.get("/pass").body(), order);
        assertTrue(whole.contains("data-zone=\"whole\""), whole);
        HttpResponse<String> done = stand.press("/pass/orders/" + order + "/handed", "d", Map.of());
        assertEquals(200, done.statusCode(), done.body());
        String handed = row(stand.get("/pass").body(), order);
        assertTrue(handed.contains("data-zone=\"handed\""), handed);
        assertTrue(handed.contains("brought-back"), handed);
        stand.press("/pass/orders/" + order + "/brought-back", "e", Map.of());
        assertTrue(row(stand.get("/pass").body(), order).contains("data-zone=\"whole\""));
    }

    @Test
    void passCountsByStationWhatAnOrderOfManyLinesIsMissing() {
        String order = stand.place("2 beef, beef dry, 3 fries, large cola", "");
        String row = row(stand.get("/pass").body(), order).replaceAll("\\s+", " ");
        assertTrue(row.contains(">Line</b> 3 · <span"), row);
        assertTrue(row.contains(">Fryer</b> 3 · <span"), row);
        assertTrue(row.contains(">Drinks</b> 1 · <span"), row);
        stand.press("/boards/line/parts/" + order + ".1.line/up", "a", Map.of());
        row = row(stand.get("/pass").body(), order).replaceAll("\\s+", " ");
        assertTrue(row.contains(">Line</b> 1 · <span"), row);
    }

    @Test
    void frameDrawsTheSameRowAsThePage() {
        String order = stand.place("beef dry sweet, fries", "<Ines>");
        String frame = stand.written(stand.frame("line"), Lang.EN);
        assertTrue(frame.startsWith("<section class=\"frame\" data-board=\"line\""), frame);
        assertTrue(frame.contains("data-epoch=\"test\""), frame);
        assertTrue(frame.contains("data-order=\"" + order + ".1.line\""), frame);
        assertTrue(frame.contains("&lt;Ines&gt;"), "names are escaped");
        String page = row(stand.get("/boards/line").body(), order + ".1.line");
        String inFrame = row(frame, order + ".1.line");
        int end = inFrame.indexOf("<div class=\"foot\"");
        assertTrue(page.startsWith(inFrame.substring(0, end).strip()), "one template");
    }
}
