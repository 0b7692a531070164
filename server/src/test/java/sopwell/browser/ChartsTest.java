package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sopwell.crash.StandProcess;

/** The script draws each chart from its table, and from nothing else. */
@ExtendWith(Browsers.class)
class ChartsTest {
    private static final String FIRST = "figure.chart[data-chart='columns']";
    private static final String BARS = FIRST + " [aria-label='bar'] rect";
    private static final String FILL =
            "return getComputedStyle(document.querySelector(arguments[0])).fill;";
    private static final String WIDTH =
            "return document.querySelector(arguments[0] + ' .drawn').getAttribute('width');";
    private static final String HEIGHTS =
            "return [...document.querySelectorAll('.drawing')].map(d => d.offsetHeight).join();";
    private static final String SWAP =
            """
            const done = arguments[arguments.length - 1];
            document.querySelector('figure.chart .drawn').dataset.old = 'yes';
            htmx.ajax('GET', '/mix/today', {target: '[hx-get]', swap: 'innerHTML'})
                .then(() => done(true));
            """;

    @Test
    void picturesFollowTheirTablesInBothThemesAndAfterEachSwap(
            Browser browser, @TempDir Path folder) throws IOException {
        try (StandProcess stand =
                StandProcess.start(
                        folder.resolve("stand"),
                        StandProcess.quick(),
                        List.of("--start-with", "demo"))) {
            browser.size(1280, 800);
            browser.open(stand.address() + "/mix/today");
            browser.waitFor(".drawn");
            assertEquals(browser.count("figure.chart"), browser.count("figure .drawn"));
            int rows = browser.count(FIRST + " tbody tr");
            assertTrue(rows >= 2, "an hour of the demo");
            assertEquals(rows, browser.count(BARS), "a bar for each row");

            browser.colours("light");
            Object light = browser.script(FILL, BARS);
            browser.colours("dark");
            assertNotEquals(light, browser.script(FILL, BARS), "the theme's own colour");

            browser.click(FIRST + " summary");
            browser.waitFor(FIRST + " details[open]");
            Object heights = browser.script(HEIGHTS);
            browser.scriptLater(SWAP);
            browser.waitGone("[data-old]");
            browser.waitFor(FIRST + " details[open]");
            assertEquals(rows, browser.count(BARS), "drawn again");
            assertEquals(heights, browser.script(HEIGHTS), "nothing has moved");

            Object wide = browser.script(WIDTH, FIRST);
            browser.size(390, 844);
            browser.waitFor(FIRST + " .drawn:not([width='" + wide + "'])");
            int narrow = Integer.parseInt(browser.script(WIDTH, FIRST).toString());
            assertTrue(narrow > 300 && narrow < 390, "as wide as the phone: " + narrow);
            assertEquals(List.of(), browser.consoleErrors(), "nothing that the policy forbids");
        }
    }
}
