package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;
import sopwell.counter.Kit;
import sopwell.menu.Lang;
import sopwell.menu.MenuParts;
import sopwell.menu.Station;

/** What screens fetch for when the server is away, over HTTP. */
class AwayPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws jakarta.servlet.ServletException {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void theWorkerNamesItsVersionAndIsAskedForAnew() {
        HttpResponse<String> worker = stand.get("/sw.js");
        String version = Assets.load().version();
        assertTrue(worker.body().startsWith("const VERSION = \"" + version + "\";"));
        assertTrue(worker.body().contains("\"js/reader.js\""));
        assertEquals("no-cache", worker.headers().firstValue("cache-control").get());
    }

    @Test
    void aKitHasTheMenuTheTaxAndTheTextsAndLeavesTheScreensLanguageAlone() {
        for (Lang lang : Lang.values()) {
            String code = lang == Lang.EN ? "en" : "es";
            HttpResponse<String> answer = stand.get("/counter/kits/" + code);
            Kit kit = Kit.read(answer.body());
            assertEquals(lang, kit.phrases().lang());
            assertEquals(PageStand.menu().revision(), kit.menu().revision());
            assertEquals(forReading(PageStand.menu().parts()), kit.menu().parts());
            assertFalse(answer.headers().firstValue("set-cookie").isPresent());
        }
    }

    /** All but what hurts and what is kept hot: a call is read and priced without them. */
    private static MenuParts forReading(MenuParts menu) {
        List<Station> stations =
                menu.stations().stream()
                        .map(s -> new Station(s.id(), s.name(), s.hands(), s.load(), s.builds()))
                        .toList();
        return new MenuParts(menu.speech(), stations, menu.steps(), menu.groups(), menu.items());
    }

    @Test
    void everyTextThatAScriptSaysIsInTheKit() {
        Kit kit = Kit.read(stand.get("/counter/kits/en").body());
        Pattern said = Pattern.compile("\\bsay\\('([a-z.-]+?[a-zA-Z_-]+)'");
        TreeSet<String> missing = new TreeSet<>();
        for (SourceTree.Source script : SourceTree.scriptsAndStyles()) {
            said.matcher(script.text())
                    .results()
                    .map(found -> found.group(1))
                    .filter(key -> !kit.phrases().has(key))
                    .forEach(missing::add);
        }
        assertEquals(new TreeSet<>(), missing);
        for (String reason : List.of("mind", "gone", "wrong", "out")) {
            assertTrue(kit.phrases().has("reason." + reason), reason);
        }
    }

    @Test
    void theKeptCounterHasNeitherAKeyNorOpenOrders() {
        stand.place("beef", "Ines");
        String page = stand.get("/counter/away").body();
        assertFalse(page.contains("Ines") || page.contains("data-row="), page);
        assertTrue(page.contains("name=\"key\" value=\"\"") && page.contains("data-away=\"true\""));
        assertTrue(stand.get("/counter").body().contains("data-away=\"false\""));
    }

    @Test
    void anOrderTellsItsPlaceAndARefusalWhoseItIs() {
        String revision = PageStand.menu().revision();
        Map<String, String> fries =
                Map.of(
                        "key",
                        "a",
                        "call",
                        "fries",
                        "service",
                        "to-go",
                        "told-menu",
                        revision,
                        "told-cents",
                        "373",
                        "taken-at",
                        stand.nowMillis());
        HttpResponse<String> placed = stand.press("/counter/orders", "a", fries);
        assertEquals(200, placed.statusCode(), placed.body());
        assertEquals("1", placed.headers().firstValue("sopwell-number").get());
        assertTrue(placed.headers().firstValue("sopwell-order").get().endsWith("-0001"));
        Map<String, String> cheap =
                Map.of(
                        "key",
                        "b",
                        "call",
                        "fries",
                        "service",
                        "to-go",
                        "told-menu",
                        revision,
                        "told-cents",
                        "1",
                        "taken-at",
                        stand.nowMillis());
        HttpResponse<String> refused = stand.press("/counter/orders", "b", cheap);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("told $0.01"), refused.body());
        assertTrue(refused.headers().firstValue("sopwell-version").isPresent());
        assertFalse(refused.headers().firstValue("sopwell-order").isPresent());
        Map<String, String> unknown =
                Map.of(
                        "key",
                        "c",
                        "call",
                        "fries",
                        "service",
                        "to-go",
                        "told-menu",
                        "nobody-knows-it",
                        "told-cents",
                        "373",
                        "taken-at",
                        "1");
        HttpResponse<String> nowhere = stand.press("/counter/orders", "c", unknown);
        assertEquals(422, nowhere.statusCode());
        assertTrue(nowhere.body().contains("never in force here"), nowhere.body());
    }
}
