package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sopwell.TestStand;
import sopwell.crash.StandProcess;

/**
 * Every screen in both languages and both themes: no serious fault, no broken policy, no overflow.
 */
@ExtendWith(Browsers.class)
class ScreensTest {
    private static final List<String> PATHS =
            List.of(
                    "/",
                    "/counter",
                    "/boards/line",
                    "/boards/grill",
                    "/boards/fryer",
                    "/boards/drinks",
                    "/pass",
                    "/ready",
                    "/orders",
                    "/outs",
                    "/prep",
                    "/prep/batches",
                    "/prep/counts",
                    "/prep/stock",
                    "/prep/calendar",
                    "/prep/terms",
                    "/prep/clocks",
                    "/prep/past",
                    "/till",
                    "/close",
                    "/audit",
                    "/settings/names",
                    "/screens",
                    "/recipes",
                    "/till/today",
                    "/mix/today",
                    "/playback/today",
                    "/what-if/today",
                    "/waits/today");

    /** What is reached from one of them. */
    private static final List<String> DEEPER =
            List.of("/recipes/beef-sliced", "/recipes/new", "/recipes/kitchen", "/trust");

    private static final List<int[]> SIZES =
            List.of(new int[] {1920, 1080}, new int[] {1280, 800}, new int[] {390, 844});

    /** How far a page is too wide, once it had half a second of frames to fit itself. */
    private static final String OVER =
            """
            const done = arguments[arguments.length - 1];
            const page = document.documentElement;
            const look = (frames) => requestAnimationFrame(() => {
                const over = page.scrollWidth - page.clientWidth;
                if (over === 0 || frames === 0) {
                    done(over);
                } else {
                    look(frames - 1);
                }
            });
            look(30);
            """;

    @TempDir Path folder;

    @Test
    void noScreenHasASeriousFaultAndNoneIsWiderThanItsWindow(Browser browser) throws IOException {
        List<String> faults = new ArrayList<>();
        int looked = 0;
        try (StandProcess stand =
                StandProcess.start(
                        folder.resolve("stand"),
                        StandProcess.quick(),
                        List.of("--start-with", "lunch"))) {
            for (String path : Stream.concat(PATHS.stream(), DEEPER.stream()).toList()) {
                for (String lang : List.of("en", "es")) {
                    browser.size(1280, 800);
                    browser.colours("light");
                    browser.open(stand.address() + path + "?lang=" + lang);
                    look(browser, lang, path + " " + lang, faults);
                    looked++;
                }
            }
        }
        assertEquals((PATHS.size() + DEEPER.size()) * 2, looked);
        assertTrue(faults.isEmpty(), () -> String.join("\n", faults));
    }

    @Test
    void fromTheFirstPageEveryScreenIsOneTapAway(Browser browser) {
        try (TestStand stand = TestStand.start(folder.resolve("stand"))) {
            browser.open(stand.address() + "/");
            for (String path : PATHS.subList(1, PATHS.size())) {
                if (path.startsWith("/recipes/")) {
                    continue;
                }
                String start = path.replace("/today", "");
                String link =
                        path.endsWith("/today")
                                ? "a[href^='" + start + "']"
                                : "a[href='" + path + "']";
                assertTrue(browser.count(link) > 0, "no link to " + path);
            }
        }
    }

    /**
     * Looks at the page that is open, in every size. Themes differ in colours alone, and the
     * colours are the same in each language: they are looked at in English, in both themes.
     */
    private static void look(Browser browser, String lang, String where, List<String> faults) {
        if (lang.equals("en")) {
            note(faults, where + " light", browser.axe());
            browser.colours("dark");
            note(faults, where + " dark", browser.axeOfColours());
        } else {
            note(faults, where, browser.axeBesidesColours());
        }
        note(faults, where, String.join("; ", browser.consoleErrors()));
        for (int[] size : SIZES) {
            browser.size(size[0], size[1]);
            Object over = browser.scriptLater(OVER);
            note(faults, where + " " + size[0], over.equals(0L) ? "" : over + " px");
        }
    }

    private static void note(List<String> faults, String where, String fault) {
        if (!fault.isEmpty()) {
            faults.add(where + ": " + fault);
        }
    }
}
