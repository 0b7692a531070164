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

/** Taking money in a real browser, with the keys alone. */
@ExtendWith(Browsers.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PayingTest {
    /** The largest text that can be seen: its size in pixels and what it says. */
    private static final String LARGEST =
            """
            let best = null;
            let size = 0;
            for (const element of document.body.querySelectorAll('*')) {
                const box = element.getBoundingClientRect();
                const own = [...element.childNodes].some(
                    node => node.nodeType === 3 && node.data.trim());
                const px = parseFloat(getComputedStyle(element).fontSize);
                if (own && box.height && box.top < innerHeight && px > size) {
                    size = px;
                    best = element.textContent.trim();
                }
            }
            return best;
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
    }

    @AfterEach
    void close() {
        assertEquals(List.of(), counter.consoleErrors());
        stand.close();
    }

    @Test
    void digitsAndEnterTakeCashAndTheChangeIsTheLargestThingOnTheScreen() {
        place("2 beef dipped hot, fries");
        counter.keys("40", Keys.ENTER);
        counter.waitText(".change-due", "$19.16");
        assertEquals("$19.16", counter.script(LARGEST));
        assertEquals(
                List.of("1 × $10", "1 × $5", "4 × $1", "1 × 10¢", "1 × 5¢", "1 × 1¢"), pieces());
        counter.keys("fries");
        counter.waitGone("#pay-place .pay");
        assertEquals("fries", counter.waitFor("#call").getDomProperty("value"));
    }

    @Test
    void enterAloneIsExactPlusIsTheNextNoteAndTheStarIsTheCard() {
        place("beef");
        counter.keys(Keys.ENTER);
        counter.waitText(".change-due", "$0.00");
        place("beef");
        counter.keys("+", "+", Keys.ENTER);
        counter.waitText(".change-due", "$1.45");
        place("beef");
        counter.keys("*");
        counter.waitText(".change-due", "$8.55");
        assertEquals(0, counter.count(".order .owed"));
    }

    @Test
    void escapeLeavesAnOrderUnpaidAndSoDoesTheNextCall() {
        place("beef");
        counter.keys(Keys.ESCAPE);
        counter.waitGone("#pay-place .pay");
        place("fries");
        counter.keys("2 ");
        counter.keys("beef");
        counter.waitGone("#pay-place .pay");
        assertEquals("2 beef", counter.waitFor("#call").getDomProperty("value"));
        counter.waitText(".order:nth-child(2) .owed", "unpaid $8.55");
        counter.open(stand.address() + "/pass");
        counter.waitText("[data-row] .owed", "unpaid $8.55");
    }

    @Test
    void aPartInCashLeavesTheRestForTheCard() {
        place("beef");
        counter.keys("5", Keys.ENTER);
        counter.waitText(".part-paid", "$5.00");
        counter.waitText(".pay-due", "$3.55");
        counter.keys("*");
        counter.waitText(".change-due", "$3.55");
    }

    @Test
    void theSumRunsAlongWhileATillIsCounted() {
        counter.open(stand.address() + "/till");
        counter.type("[name='cashier']", "Ana");
        counter.type("[name='float']", "20", Keys.ENTER);
        counter.waitText(".drawer", "Till of Ana");
        counter.script("document.querySelector('form.count').closest('details').open = true");
        counter.type("[name='n1000']", "1", Keys.ENTER);
        counter.keys("2");
        assertEquals("$20.00", counter.waitFor("[data-sum]").getText());
        counter.click("form.count .place");
        counter.waitText(".verdict", "right to the cent");
        assertTrue(counter.axe().isEmpty());
    }

    private List<String> pieces() {
        return counter.texts(".pieces li");
    }

    private void place(String call) {
        counter.script("document.getElementById('call').focus()");
        counter.keys(call);
        counter.waitText("#reading", "$");
        counter.keys(Keys.ENTER);
        counter.waitFor("#pay-place #tendered");
        counter.waitFor("#tendered:focus");
    }
}
