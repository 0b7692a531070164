package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.menu.Lang;

/** Loads and pans over HTTP. */
class LoadPagesTest {
    private static final Pattern PRESSED =
            Pattern.compile(
                    "data-load=\"(start|up)\"\\s+hx-post=\"([^\"]+)\""
                            + " hx-vals=\"\\{&#34;part&#34;:&#34;([^&]+)&#34;\\}\"");

    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private Matcher pressed(String page) {
        Matcher found = PRESSED.matcher(page);
        assertTrue(found.find(), page);
        return found;
    }

    @Test
    void oneTapBeginsAWholeLoadAndOnePutsItUp() {
        stand.place("2 fries", "");
        stand.place("fries", "");
        Matcher start = pressed(stand.get("/boards/fryer").body());
        assertEquals("start", start.group(1));
        assertEquals(2, start.group(3).split(" ", -1).length);
        assertEquals(200, press(start, "a").statusCode());
        String page = stand.get("/boards/fryer").body();
        assertTrue(page.contains("3 fries"), page);
        Matcher up = pressed(page);
        assertEquals("up", up.group(1));
        assertEquals(200, press(up, "b").statusCode());
        assertFalse(stand.get("/boards/fryer").body().contains("data-load=\""));
        assertTrue(stand.get("/pass").body().contains("data-zone=\"whole\""));
    }

    private java.net.http.HttpResponse<String> press(Matcher load, String key) {
        return stand.press(load.group(2), key, Map.of("part", load.group(3)));
    }

    @Test
    void partsOfAnotherStationAreNoLoad() {
        String order = stand.place("beef, fries", "");
        for (String part : new String[] {order + ".1.line", "", "soup", order + ".9.fryer"}) {
            int status =
                    stand.press("/boards/fryer/loads/up", "k" + part, Map.of("part", part))
                            .statusCode();
            assertEquals(404, status, part);
        }
    }

    @Test
    void theGrillSaysWhatGoesToTheLineInBothLanguages() {
        stand.place("combo", "");
        assertTrue(stand.get("/boards/grill").body().contains("to Line for 1"));
        assertTrue(stand.get("/boards/grill?lang=es").body().contains("a Línea para 1"));
        String frame = stand.written(stand.frame("grill"), Lang.ES);
        assertTrue(frame.contains("a Línea para 1"), frame);
    }

    @Test
    void aTapSaysThatAPanIsFilledAndTheLineSaysHowLongItLasts() {
        stand.place("2 beef", "");
        assertTrue(stand.get("/boards/line").body().contains("not counted today"));
        assertEquals(
                200,
                stand.press("/boards/line/pans/beef/refilled", "a", Map.of("percent", "50"))
                        .statusCode());
        String page = stand.get("/boards/line").body();
        assertTrue(page.contains("≈ 13 builds"), page);
        assertTrue(page.contains("next batch on by "), page);
        assertTrue(page.contains("beef: 2250 g in it, 300 of them for open orders"), page);
        assertTrue(stand.get("/boards/line?lang=es").body().contains("poner la siguiente tanda"));
        assertFalse(stand.get("/boards/fryer").body().contains("id=\"part-pans\""));
    }

    @Test
    void aRefillThatCannotBeIsASentence() {
        for (String percent : new String[] {"0", "101", "half", ""}) {
            assertEquals(
                    422,
                    stand.press(
                                    "/boards/line/pans/beef/refilled",
                                    "p" + percent,
                                    Map.of("percent", percent))
                            .statusCode(),
                    percent);
        }
        assertEquals(
                404,
                stand.press("/boards/line/pans/gravy/refilled", "g", Map.of("percent", "100"))
                        .statusCode());
    }
}
