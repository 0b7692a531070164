package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Shows that the browser of the tests sees what is there, and finds what is wrong. */
@ExtendWith(Browsers.class)
class BrowserTest {
    private static final String PAGE =
            """
            <!doctype html><html lang="en"><head><title>a page</title></head><body><main>
            <h1>Page</h1><label>Name <input id="name"></label>
            <button id="go" type="button">Go</button><p id="said"></p></main>
            <script src="/script"></script></body></html>
            """;
    private static final String SCRIPT =
            """
            document.getElementById('go').addEventListener('click', () => {
                document.getElementById('said').textContent =
                    'hello ' + document.getElementById('name').value;
            });
            """;
    private static final String BAD =
            """
            <!doctype html><html lang="en"><head><title>bad</title></head><body><main><h1>Bad</h1>
            <input id="nameless"><p style="color: #999; background: #fff">pale</p>
            <a href="#a" style="font-size: 9px">a</a><br><a href="#b" style="font-size: 9px">b</a>
            </main><script>document.title = 'ran'</script></body></html>
            """;

    @TempDir Path folder;
    private HttpServer server;

    @BeforeEach
    void serve() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        page("/good", "text/html", PAGE);
        page("/script", "text/javascript", SCRIPT);
        page("/bad", "text/html", BAD);
        server.start();
    }

    @AfterEach
    void stop() {
        server.stop(0);
    }

    private void page(String path, String type, String body) {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        server.createContext(
                path,
                exchange -> {
                    exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
                    exchange.getResponseHeaders()
                            .set("Content-Security-Policy", "script-src 'self'");
                    exchange.sendResponseHeaders(200, bytes.length);
                    exchange.getResponseBody().write(bytes);
                    exchange.close();
                });
    }

    private String url(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + path;
    }

    @Test
    void typesClicksAndReadsTheAnswer(Browser browser) {
        browser.open(url("/good"));
        browser.click("#name");
        browser.keys("Ines");
        browser.click("#go");
        browser.waitText("#said", "hello Ines");
        assertEquals("", browser.axe());
        assertEquals(1, browser.count("#said"));
    }

    @Test
    void savesAPictureOfTheSizeAskedFor(Browser browser) throws IOException {
        browser.size(640, 360);
        browser.open(url("/good"));
        assertEquals(640L, browser.script("return window.innerWidth"));
        Path picture = folder.resolve("screens/good.png");
        browser.screenshot(picture);
        assertEquals(0x89, Files.readAllBytes(picture)[0] & 0xff);
    }

    @Test
    void findsAFieldWithoutALabelAndABlockedScript(Browser browser) {
        browser.open(url("/bad"));
        String found = browser.axe();
        assertTrue(found.contains("critical label") && found.contains("#nameless"), found);
        assertTrue(found.contains("serious color-contrast"), found);
        assertTrue(found.contains("serious target-size"), found);
        String colours = browser.axeOfColours();
        assertTrue(colours.lines().allMatch(l -> l.contains("color-contrast")), colours);
        String rest = browser.axeBesidesColours();
        assertEquals(
                found.lines().sorted().toList(),
                Stream.concat(colours.lines(), rest.lines()).sorted().toList());
        List<String> errors = browser.consoleErrors();
        assertTrue(errors.stream().anyMatch(e -> e.contains("Content Security")), errors::toString);
    }

    @Test
    void aFreshBrowserKeptNothingOfThePagesBefore(Browser browser) {
        browser.open(url("/good"));
        browser.script("document.cookie = 'a=b'; localStorage.setItem('a', 'b')");
        browser.size(640, 360);
        browser.offline(true);
        browser.openWindow("about:blank");
        browser.fresh();
        browser.open(url("/good"));
        assertEquals(
                List.of("", 0L, 1L, 1280L),
                browser.script(
                        "return [document.cookie, localStorage.length, history.length - 1,"
                                + " innerWidth]"));
        assertEquals(List.of(), browser.consoleErrors());
    }

    @Test
    void findsNoBrowserWhereThereIsNone() {
        assertEquals(Optional.empty(), Chromium.find(Map.of("PATH", folder.toString())));
        assertEquals(
                Optional.empty(),
                Chromium.find(Map.of("PATH", "", "SOPWELL_CHROMIUM", folder + "/none")));
    }

    @Test
    void requiresABrowserOnlyWhenToldTo() {
        assertEquals(true, Chromium.mustBeThere(Map.of("SOPWELL_REQUIRE_BROWSER", "1")));
        assertEquals(false, Chromium.mustBeThere(Map.of()));
    }
}
