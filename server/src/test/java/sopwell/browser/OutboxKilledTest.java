package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import sopwell.Limits;

/** The counter outlives the packaged server that is killed, the browser's end, and an upgrade. */
@ExtendWith(Browsers.class)
class OutboxKilledTest {
    @TempDir Path folder;
    private AwayStand stand;
    private Browser counter;

    /** Where a test closes and opens a browser itself. */
    private Optional<Browser> own = Optional.empty();

    @BeforeEach
    void open(Browser shared) throws IOException {
        stand = AwayStand.packaged(folder);
        counter = shared;
        counter.open(stand.address() + "/counter");
        CounterHands.ready(counter);
    }

    @AfterEach
    void close() throws IOException {
        own.ifPresent(Browser::close);
        stand.close();
    }

    @Test
    void takesOrdersWithTheServerKilledThroughAReloadAndARestartOfTheBrowser()
            throws IOException, InterruptedException {
        startOwn();
        CounterHands.place(counter, "2 beef dipped hot", "Order 1");
        counter.waitFor("body[data-worker='ready']");
        stand.kill();
        CounterHands.place(counter, "beef dry sweet, fries", "Waiting 1");
        counter.type("#name", "Theo");
        CounterHands.place(counter, "3 cola", "Waiting 2");
        counter.waitText("#outbox-note", "2 orders wait here for the server since");
        counter.waitText("#outbox", "Theo");
        assertEquals("$7.31", counter.texts("#answer .placed-total b").get(0));

        counter.open(stand.address() + "/counter");
        CounterHands.ready(counter);
        counter.waitText("#outbox-note", "2 orders wait");
        counter.waitText("#live", "Not live");
        assertEquals(0, counter.count("#board [data-row]"), "no old picture of the open orders");
        CounterHands.place(counter, "jus cup", "Waiting 3");
        counter.close();

        startOwn();
        counter.waitText("#outbox-note", "3 orders wait");
        CounterHands.place(counter, "combo dipped both", "Waiting 4");

        // A call that waits no longer than this counts as taken when it comes in.
        Thread.sleep(Limits.TAKEN_NOW_MILLIS_MAX);
        stand.start();
        counter.waitText("#outbox", "Waiting 4 is order 5");
        counter.waitText("#outbox", "Waiting 1 is order 2");
        assertEquals("", counter.texts("#outbox-note").get(0));
        assertEquals(
                List.of("2 beef", "1 beef 1 fries", "3 cola", "1 jus-cup", "1 combo"),
                stand.taken());
        assertTrue(stand.orders().get(1).has("takenAt"), "the guest has waited since the call");
        CounterHands.place(counter, "fries", "Order 6");
        counter.click("[data-told] [data-act='known']");
        counter.waitGone("[data-told]:nth-child(4)");
    }

    @Test
    void anUpgradeReachesTheOpenPageAndWhatTheBrowserKeeps()
            throws IOException, InterruptedException {
        counter.waitFor("body[data-worker='ready']");
        String before = version();
        stand.kill();
        CounterHands.place(counter, "fries", "Waiting 1");
        counter.type("#call", "beef");
        stand.upgrade();
        stand.start();
        counter.waitText("#outbox", "Waiting 1 is order 1");
        assertEquals(before, version(), "nothing is drawn anew under somebody's hands");
        counter.type("#call", Keys.ESCAPE);
        counter.script("document.body.dispatchEvent(new CustomEvent('kit:ready'))");
        counter.waitGone("script[src*='" + before + "']");
        CounterHands.ready(counter);
        String after = version();
        counter.scriptLater(
                """
                const done = arguments[arguments.length - 1];
                const wanted = 'sopwell-files-' + arguments[0];
                const look = async () => {
                    const kept = (await caches.keys()).filter((n) => n.startsWith('sopwell-f'));
                    if (kept.length === 1 && kept[0] === wanted) {
                        done();
                    } else {
                        setTimeout(look, 100);
                    }
                };
                look();
                """,
                after);
        stand.kill();
        counter.open(stand.address() + "/counter");
        CounterHands.ready(counter);
        assertEquals(after, version());
        CounterHands.place(counter, "cola", "Waiting 2");
    }

    /** A browser of the test's own, with what the one before it kept. */
    private void startOwn() {
        counter = Browser.startAgain(folder.resolve("profile"), "en-US");
        own = Optional.of(counter);
        counter.open(stand.address() + "/counter");
        CounterHands.ready(counter);
    }

    private String version() {
        String script = counter.waitFor("script[src*='/place.js']").getDomProperty("src");
        return script.replaceAll(".*/static/([^/]+)/.*", "$1");
    }
}
