package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import sopwell.crash.StandProcess;

/**
 * The main job on the real server in two windows: a call is keyed at the counter, made at the line,
 * handed over and counted; also when the server is killed in the middle.
 */
@ExtendWith(Browsers.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WalkingPathTest {
    private Path data;
    private Browser counter;
    private Browser line;
    private StandProcess stand;

    @BeforeAll
    void take(Browser first, Browser second) {
        counter = first;
        line = second;
    }

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        counter.fresh();
        line.fresh();
        data = folder.resolve("stand");
        stand = start(0);
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void aCallIsMadeHandedAndCounted() {
        openBoth();

        place("beef dipped hot, beef dry sweet", 1);
        line.waitText("#board", "no hot");
        assertEquals(2, line.count("#board [data-row]"));

        line.keys("1");
        line.waitGone("[data-row$='.1.line']");
        line.keys("2");
        line.waitGone("[data-row$='.2.line']");
        handOver(counter);
        assertMixHasOneDippedAndOneDry(counter);
        assertEquals(List.of(), line.consoleErrors());
        assertEquals(List.of(), counter.consoleErrors());
    }

    @Test
    void aKillInTheMiddleLosesNothingAndBothScreensComeBackByThemselves()
            throws IOException, InterruptedException {
        openBoth();
        place("beef dipped hot, beef dry sweet", 1);
        line.waitFor("[data-row$='.2.line']");
        line.keys("1");
        line.waitGone("[data-row$='.1.line']");

        stand.kill();
        line.waitText("#live", "Not live");
        counter.waitText("#live", "Not live");
        stand = start(URI.create(stand.address()).getPort());
        waitLive(line);
        waitLive(counter);
        counter.waitFor("#call-form[data-reader]");

        assertEquals(1, line.count("#board [data-row]"), "what was up stays up");
        place("fries", 2);
        assertEquals(1, line.count("#board [data-row]"), "nothing came twice");
        line.keys(line.waitFor("[data-row$='.2.line']").getDomAttribute("data-digit"));
        line.waitGone("[data-row$='.2.line']");
        handOver(counter);
        assertMixHasOneDippedAndOneDry(counter);
    }

    @Test
    void zeroBringsBackWhatWentUpLast() {
        openBoth();
        place("2 beef dipped", 1);
        line.waitFor("[data-row$='.1.line']");
        line.keys("1");
        line.waitGone("[data-row$='.1.line']");
        line.keys("0");
        line.waitFor("[data-row$='.1.line']");
    }

    @Test
    void aChangeIsMarkedUntilItIsSeenAndTheDigitSaysSeenFirst() {
        openBoth();
        place("beef dipped hot", 1);
        line.waitFor("[data-row$='.1.line']");
        counter.waitFor("[data-row]");
        counter.open(counter.waitFor("[data-row] a[href$='/edit']").getDomProperty("href"));
        counter.waitFor("#call").sendKeys(Keys.chord(Keys.CONTROL, "a"), "beef dry hot");
        counter.keys(Keys.ENTER);
        line.waitFor(".row.unseen .changed");
        assertTrue(line.texts(".row .changed s").contains("dipped"), "the old word stands");
        line.keys("1");
        line.waitGone(".row.unseen");
        assertEquals(1, line.count("#board [data-row]"));
        line.keys("1");
        line.waitGone("[data-row]");
    }

    @Test
    void aCallBeingTypedOutlivesAReloadAndAPlacedOneDoesNotComeBack() {
        openBoth();
        counter.type("#name", "Theo");
        counter.script("document.querySelector(\".service input[value='here']\").click()");
        counter.type("#call", "2 beef dipped h");
        reload();
        counter.waitText("#reading", "2");
        assertEquals("2 beef dipped h", counter.waitFor("#call").getDomProperty("value"));
        assertEquals("Theo", counter.waitFor("#name").getDomProperty("value"));
        counter.waitFor("input[value='here']:checked");
        counter.type("#call", "ot");
        counter.keys(Keys.ENTER);
        counter.waitText("#answer .placed-number", "Order 1");
        reload();
        assertEquals("", counter.waitFor("#call").getDomProperty("value"));
        assertEquals("", counter.waitFor("#name").getDomProperty("value"));

        counter.type("#call", "fries");
        counter.type("#name", "4111 1111 1111 1111");
        reload();
        counter.waitText("#reading", "fries");
        assertEquals("", counter.waitFor("#name").getDomProperty("value"), "a card's number");
    }

    private void reload() {
        counter.open(stand.address() + "/counter");
        counter.waitFor("#call-form[data-reader]");
    }

    private StandProcess start(int port) throws IOException {
        return StandProcess.start(
                data, StandProcess.quick(), List.of("--start-with", "menu"), port);
    }

    private void openBoth() {
        counter.open(stand.address() + "/counter");
        line.open(stand.address() + "/boards/line");
        waitLive(line);
        waitLive(counter);
        counter.waitFor("#call-form[data-reader]");
    }

    private static void waitLive(Browser window) {
        window.waitText("#live", "live");
        window.waitFor("body:not(.stale) #live");
    }

    private void place(String call, int number) {
        counter.type("#call", call);
        counter.keys(Keys.ENTER);
        counter.waitText("#answer .placed-number", "Order " + number);
        counter.script("document.getElementById('call').focus()");
    }

    private void handOver(Browser window) {
        window.open(stand.address() + "/pass");
        window.click("[data-zone='whole'] [data-act='main']");
        window.waitFor("[data-zone='handed']");
    }

    private void assertMixHasOneDippedAndOneDry(Browser window) {
        window.open(stand.address() + "/mix/today");
        List<String> ways = window.texts(".cross .scroll tbody th");
        List<String> totals = window.texts(".cross .scroll tbody td.total");
        assertEquals(List.of("dry", "dipped"), ways);
        assertEquals(List.of("1", "1"), totals);
    }
}
