package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import sopwell.TestStand;
import sopwell.bench.BoardLoad;

/** The line's board on a real screen: its keys, its letters, its sounds, its sleep, its memory. */
@ExtendWith(Browsers.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BuildBoardTest {
    private static final double MM_PER_INCH = 25.4;
    private static final double ARCMIN = Math.PI / 180 / 60;
    private static final long MIB = 1024 * 1024;

    private Browser line;
    private TestStand stand;
    private BoardLoad load;

    @BeforeAll
    void take(Browser browser) {
        line = browser;
    }

    @BeforeEach
    void open(@TempDir Path folder) {
        line.fresh();
        stand = TestStand.start(folder.resolve("stand"));
        load = new BoardLoad(stand.address());
        line.size(1920, 1080);
        show("/boards/line");
    }

    @AfterEach
    void close() {
        // A refusal's status stands in the browser's console; its sentence is what was asked for.
        // A page that is put to sleep loses its socket, and says that there too.
        List<String> errors = line.consoleErrors();
        stand.close();
        assertEquals(
                List.of(),
                errors.stream()
                        .filter(e -> !e.contains("remake"))
                        .filter(e -> !e.contains("Back-Forward Cache"))
                        .toList());
    }

    @Test
    void oneKeyWorksARowOfSeveralAndWhatItWaitsForComesFirst() throws Exception {
        load.place("beef, beef, combo");
        line.waitText(".c-quantity", "2×");
        line.keys(digitOf("1.line"));
        line.waitGone("[data-row$='.1.line']");
        line.keys("0");
        line.waitText(".c-quantity", "2×");
        line.waitText("[data-row$='.3.line'] .note", "waits for Char sausage, Grill");
        line.waitText("[data-row$='.3.line'] .do", "Have it");
        line.keys(digitOf("3.line"));
        line.waitText("[data-row$='.3.line'] .do", "Up");
        line.keys(digitOf("3.line"));
        line.waitGone("[data-row$='.3.line']");
    }

    @Test
    void minusMakesAgainWhatWentUpLastAndWhatIsBegun() throws Exception {
        load.place("3 beef");
        line.waitFor("[data-row$='.1.line']");
        line.keys("-", digitOf("1.line"));
        line.waitText("#said", "Nothing of 1 is made yet");
        line.keys(digitOf("1.line"));
        line.waitGone("[data-row$='.1.line']");
        line.keys("-", "0");
        line.waitFor(".remaking");
        line.keys("-");
        line.keys("1");
        line.waitText("[data-row$='.1.line'] .note", "remake 2: Dropped");
        line.waitText("[data-row$='.1.line'] .c-quantity", "2×");
        line.waitGone(".asking");
    }

    @Test
    void whatHasRunOutIsSaidOverTheBoard() throws Exception {
        load.place("beef");
        line.click("[data-outs]");
        line.waitFor("#outs-sheet[open] form");
        List<String> names = line.texts("#outs .sections b");
        assertTrue(names.contains("hot"), names::toString);
        assertTrue(!names.contains("fries"), "the fryer's is not the line's: " + names);
        line.keys("1");
        line.script(
                """
                const form = [...document.querySelectorAll('#outs .sections form')]
                    .find(f => f.elements.out.value === 'option:hot');
                form.querySelector('[value="day"]').click();
                """);
        line.waitText("#outs .now", "hot");
        assertTrue(!line.texts("#outs .sections b").contains("fries"), "still the line's");
        line.click("#outs-sheet [data-close]");
        line.waitGone("#outs-sheet[open]");
        assertEquals(1, line.count("#board [data-row]"), "keys were not heard by the board");
        line.keys(digitOf("1.line"));
        line.waitGone("#board [data-row]");
    }

    @Test
    void lettersAreLargeEnoughForTheirDistance() throws Exception {
        load.place("beef dipped hot");
        for (int metres = 1; metres <= 3; metres++) {
            show("/boards/line?distance=" + metres);
            double reached = seenArcmin(24, metres);
            assertTrue(reached >= (metres < 3 ? 20 : 16), metres + " m: " + reached);
            assertTrue(reached <= 24, metres + " m: " + reached);
            assertTrue(line.waitFor("#small-letters").getDomProperty("hidden").equals("true"));
        }
        line.size(1280, 800);
        show("/boards/line?distance=3&lang=es");
        assertTrue(seenArcmin(24, 3) < 16);
        line.waitText("#small-letters", "de 16′");
    }

    @Test
    void aScreenIsSetOnceAndItsAddressLeadsToItsBoard() throws Exception {
        load.place("beef dipped hot");
        line.open(stand.address() + "/screens");
        line.type("[name='name']", "Line, left");
        line.script("document.querySelector('[value=\"/boards/line\"]').click()");
        line.script("document.querySelector('[name=\"distance\"][value=\"3\"]').click()");
        line.script("document.querySelector('[name=\"sound\"][value=\"off\"]').click()");
        line.type("[name='inches']", "43");
        line.script("document.querySelector('[data-hands=\"/boards/line\"] input').value = '4'");
        line.click(".go");
        line.waitText("h1", "Line, left");
        line.open(stand.address() + "/");
        line.waitFor("#board[data-board='line']");
        assertEquals("off", line.script("return document.body.dataset.sound"));
        assertTrue(seenArcmin(43, 3) >= 20, "a larger screen can be read from afar");
        line.open(stand.address() + "/screens");
        assertEquals(
                "4", line.waitFor("[data-hands='/boards/line'] input").getDomProperty("value"));
    }

    @Test
    void aNewRowSoundsOnceAndAReloadNever() throws Exception {
        load.place("beef dipped");
        line.waitFor("[data-row]");
        line.waitFor("#board[data-rang='1']");
        show("/boards/line");
        load.place("cola");
        load.place("beef dry");
        line.waitFor("#board[data-rang='1']");
        assertEquals(null, line.script("return document.getElementById('board').dataset.sounded"));
    }

    @Test
    void aScreenThatSleptWakesToATrueBoard() throws Exception {
        load.place("beef dipped");
        line.waitFor("[data-row$='0001.1.line']");
        line.frozen(true);
        load.place("2 beef dry");
        load.finish(1);
        Thread.sleep(6_000);
        line.frozen(false);
        line.waitGone("[data-row$='0001.1.line']");
        line.waitFor("[data-row$='0002.1.line']");
        line.waitFor("body:not(.stale) #live");
        assertEquals(1, line.count("[data-row]"));
    }

    @Test
    void memoryDoesNotGrowWithTheOrdersThatCameAndWent() throws Exception {
        // Waiting for rows by name would have the driver hold on to each of them.
        load.run(60);
        load.finishAll();
        line.waitFor("[data-rows='open']:not(:has(*))");
        long heap = line.measured("JSHeapUsedSize");
        long nodes = line.measured("Nodes");
        load.run(240);
        load.finishAll();
        line.waitFor("[data-rows='open']:not(:has(*))");
        long grownHeap = line.measured("JSHeapUsedSize") - heap;
        long grownNodes = line.measured("Nodes") - nodes;
        assertTrue(grownHeap < MIB, grownHeap + " bytes in 240 orders");
        assertTrue(grownNodes < 500, grownNodes + " nodes in 240 orders");
    }

    /** Under what angle a capital in the row's strong words is seen, as the page draws it. */
    private double seenArcmin(int inches, int metres) {
        line.waitFor(".row .word.strong");
        Object capital =
                line.script(
                        """
                        const style = getComputedStyle(document.querySelector('.row .word.strong'));
                        const context = document.createElement('canvas').getContext('2d');
                        context.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
                        const diagonal = Math.hypot(innerWidth, innerHeight);
                        return context.measureText('H').actualBoundingBoxAscent / diagonal * 1e9;
                        """);
        double mm = ((Number) capital).doubleValue() / 1e9 * inches * MM_PER_INCH;
        return 2 * Math.atan(mm / (2.0 * metres * 1000)) / ARCMIN;
    }

    private String digitOf(String row) {
        return line.waitFor("[data-row$='" + row + "']").getDomAttribute("data-digit");
    }

    private void show(String path) {
        line.open(stand.address() + path);
        line.waitFor("body:not(.stale) #live");
        line.waitFor("#board[data-arcmin]");
    }
}
