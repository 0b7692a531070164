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

/** A day's boards again on a real screen: dragged along, played, and never to be pressed. */
@ExtendWith(Browsers.class)
class PlaybackTest {
    private static final String CLOCK = "return document.getElementById('past-clock').textContent";

    @Test
    void aDayIsDraggedAndPlayedAndNothingOnItCanBePressed(Browser browser, @TempDir Path folder)
            throws IOException {
        try (StandProcess stand =
                StandProcess.start(
                        folder.resolve("stand"),
                        StandProcess.quick(),
                        List.of("--start-with", "demo"))) {
            browser.size(1280, 800);
            browser.open(stand.address() + "/playback/today?board=line");
            browser.waitFor(".not-live");
            drag(browser, 1_800);
            browser.waitFor("[data-rows='open'] .row");
            Object dragged = browser.script(CLOCK);
            assertEquals("1800", browser.script("return document.getElementById('scrub').value"));
            browser.script(
                    "const s = document.getElementById('speed'); s.value = '60';"
                            + "document.getElementById('play').click()");
            browser.waitText("#play", "Pause");
            browser.scriptLater("setTimeout(arguments[arguments.length - 1], 1500)");
            browser.keys(" ");
            browser.waitText("#play", "Play");
            assertNotEquals(dragged, browser.script(CLOCK), "time went on");
            long at =
                    Long.parseLong(
                            (String)
                                    browser.script(
                                            "return document.getElementById('scrub').value"));
            assertTrue(at > 1_830, "faster than a clock: " + at);
            assertEquals(0, browser.count("#past-board button:not([disabled])"));
            assertEquals(0, browser.count("#past-board a[href], #past-board [hx-post]"));
            browser.click("[data-tab='pass']");
            browser.waitFor("main.pass .sides");
            assertEquals(
                    Long.toString(at),
                    browser.script("return document.getElementById('scrub').value"));
            assertEquals(List.of(), browser.consoleErrors());
        }
    }

    private static void drag(Browser browser, int second) {
        browser.script(
                "const s = document.getElementById('scrub'); s.value = arguments[0];"
                        + "s.dispatchEvent(new Event('input', {bubbles: true}))",
                Integer.toString(second));
    }
}
