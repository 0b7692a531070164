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
import org.openqa.selenium.Keys;
import sopwell.TestStand;

/** What a counter needs in a rush, in a real browser: outs, the same again, a slip. */
@ExtendWith(Browsers.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RushTest {
    /** Remembers what is printed. */
    private static final String WATCH =
            """
            window.printed = [];
            document.body.addEventListener('printed', () => window.printed.push(
                document.querySelector('iframe').contentDocument.body.innerText));
            """;

    private Browser counter;
    private TestStand stand;

    @BeforeAll
    void take(Browser browser) {
        counter = browser;
    }

    @BeforeEach
    void open(@TempDir Path folder) {
        counter.fresh();
        stand = TestStand.start(folder.resolve("stand"));
        counter.open(stand.address() + "/counter");
        counter.waitText("#live", "live");
        counter.waitFor("#call-form[data-reader]");
    }

    @AfterEach
    void close() {
        // A refusal's status stands in the browser's console; its sentence is what was asked for.
        List<String> errors = counter.consoleErrors();
        assertEquals(
                List.of(), errors.stream().filter(e -> !e.contains("/counter/again")).toList());
        stand.close();
    }

    @Test
    void whatIsMarkedOutIsStruckOnEveryCounterAndWhatIsTypedStays() {
        String first = counter.window();
        counter.type("#call", "2 beef dipped prov");
        String second = counter.openWindow(stand.address() + "/counter");
        counter.waitText("#live", "live");
        counter.click("#outs-open");
        counter.waitFor("#outs-sheet[open] form");
        counter.script(
                """
                const form = [...document.querySelectorAll('#outs-sheet .sections form')]
                    .find(f => f.elements.out.value === 'option:provolone');
                form.querySelector('[value="day"]').click();
                """);
        counter.waitText("#outs-sheet .now", "provolone");
        counter.click("[data-close]");
        counter.waitFor("[data-word='o.provolone'][data-out='true']");
        counter.look(first);
        counter.waitFor("[data-word='o.provolone'][data-out='true']");
        assertEquals("2 beef dipped prov", value());
        counter.type("#call", " hot");
        counter.waitText("#hints .sentence", "provolone is out. Near it: mozzarella");
        counter.click("#hints [data-fix]");
        counter.waitText("#reading .said", "2 × regular beef, dipped, hot, mozzarella");
        counter.look(second);
        assertTrue(counter.texts("#part-outs li").get(0).contains("provolone"));
    }

    @Test
    void theSameAgainButDryIsReadBackBeforeItIsPlaced() {
        place("2 beef dipped hot, fries");
        counter.keys(Keys.ESCAPE);
        counter.type("#call", "same but dry", Keys.ENTER);
        counter.waitText("#reading .said", "2 × regular beef, dry, hot");
        assertEquals("2 beef dry hot, fries", value().strip());
        counter.keys(Keys.ENTER);
        counter.waitText("#board .number", "2");
        counter.keys(Keys.ESCAPE);
        counter.keys(Keys.F8);
        counter.waitText("#reading .said", "2 × regular beef, dry, hot");
        counter.type("#call", Keys.ESCAPE);
        counter.type("#call", "again 77", Keys.ENTER);
        counter.waitText("#answer", "There is no order 77 today.");
        assertEquals("again 77", value());
    }

    @Test
    void oneKeyPrintsTheSlipAndTheNextOneSaysThatItIsACopy() {
        counter.script(WATCH);
        place("2 beef dipped hot");
        counter.keys(Keys.F9);
        assertTrue(printed(1).contains("regular beef, dipped, hot"));
        counter.keys(Keys.F9);
        String copy = printed(2);
        assertTrue(copy.toLowerCase(java.util.Locale.ROOT).contains("copy 1"), copy);
    }

    private void place(String call) {
        counter.type("#call", call, Keys.ENTER);
        counter.waitFor("#answer .placed [data-papers]");
        counter.waitFor("#pay-place .pay");
    }

    private String value() {
        return counter.waitFor("#call").getDomProperty("value");
    }

    /** Waits until so much was printed, and gives the last. */
    private String printed(int times) {
        return (String)
                counter.scriptLater(
                        """
                        const [times, done] = arguments;
                        const look = () => window.printed.length >= times
                            ? done(window.printed[times - 1]) : setTimeout(look, 50);
                        look();
                        """,
                        times);
    }
}
