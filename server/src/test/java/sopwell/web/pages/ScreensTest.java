package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;

class ScreensTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void screenKeepsItsLanguageThemeAndDistance() {
        HttpResponse<String> set = stand.get("/pass?lang=es&theme=dark&distance=3");
        List<String> cookies = set.headers().allValues("set-cookie");
        assertEquals(3, cookies.size());
        for (String cookie : cookies) {
            assertTrue(cookie.toLowerCase(java.util.Locale.ROOT).contains("samesite=lax"), cookie);
            assertTrue(cookie.contains("HttpOnly"), cookie);
            assertTrue(cookie.contains("34560000"), cookie);
        }
        String page = stand.get("/pass", "Cookie", "lang=es; theme=dark; distance=3").body();
        assertTrue(page.contains("<html lang=\"es\" data-theme=\"dark\" class=\"d3\"\n"), page);
    }

    @Test
    void speaksWhatTheBrowserAsksForOtherwise() {
        assertTrue(
                stand.get("/", "Accept-Language", "es-MX,en;q=0.5").body().contains("lang=\"es\""));
        assertTrue(stand.get("/", "Accept-Language", "fr").body().contains("<html lang=\"en\""));
        String odd = stand.get("/?theme=plaid&distance=9").body();
        assertTrue(odd.contains("data-theme=\"auto\" class=\"d2\""), odd);
    }

    @Test
    void mixCountsTodayAndSaysWhatItCannotShow() {
        String order = stand.place("2 beef dipped hot, beef dry", "");
        stand.later(120);
        for (int line = 1; line <= 2; line++) {
            stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(order, line, "line"))));
        }
        assertEquals(303, stand.get("/mix").statusCode());
        String today = stand.get("/mix/today").body();
        assertTrue(today.contains("<caption>beef: Dip by Peppers</caption>"), today);
        assertTrue(today.contains("1 of 1 whole within 6 min (100 %)"), today);
        assertTrue(today.contains("2:00"), today);
        assertTrue(today.contains("hx-trigger=\"every 10s\""), today);
        String part = stand.get("/mix/today", "HX-Request", "true").body();
        assertTrue(!part.contains("<html") && part.contains("beef: Dip by Peppers"), part);
        assertTrue(stand.get("/mix/2026-11-27").body().contains("beef: Dip by Peppers"));
        assertEquals(404, stand.get("/mix/2026-11-20").statusCode());
        assertTrue(stand.get("/mix/2030-01-01").body().contains("has not begun"));
        assertTrue(stand.get("/mix/soon?lang=es").body().contains("no es una fecha"));
    }

    @Test
    void staticFilesAreKeptForEverUnderTheirVersion() {
        String version = Assets.load().version();
        HttpResponse<String> file = stand.get("/static/" + version + "/css/base.css");
        assertEquals(200, file.statusCode());
        assertTrue(file.headers().firstValue("cache-control").get().contains("immutable"));
        assertEquals("text/css; charset=utf-8", file.headers().firstValue("content-type").get());
        HttpResponse<String> other = stand.get("/static/old/js/send.js");
        assertEquals("no-cache", other.headers().firstValue("cache-control").get());
        String tag = other.headers().firstValue("etag").get();
        assertEquals(304, stand.get("/static/old/js/send.js", "If-None-Match", tag).statusCode());
        assertEquals(404, stand.get("/static/x/../../text/en.properties").statusCode());
    }

    @Test
    void everyStaticFileIsListed() throws IOException {
        Path folder = SourceTree.root().resolve("web/static");
        try (Stream<Path> files = Files.walk(folder)) {
            TreeSet<String> found = new TreeSet<>();
            files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> !name.endsWith(".md"))
                    .forEach(found::add);
            found.add("js/reader.js"); // made by the build
            found.remove("sw.js"); // has an address of its own
            assertEquals(found, new TreeSet<>(Assets.NAMES));
        }
    }

    @Test
    void pagesNameFilesThatExist() {
        for (String path : List.of("/", "/counter", "/boards/line", "/pass", "/mix/today")) {
            String page = stand.get(path).body();
            java.util.regex.Matcher file =
                    java.util.regex.Pattern.compile("/static/[0-9a-f]+/([^\"]+)\"").matcher(page);
            int found = 0;
            while (file.find()) {
                assertTrue(Assets.NAMES.contains(file.group(1)), path + ": " + file.group(1));
                found++;
            }
            assertTrue(found >= 5, path);
        }
    }
}
