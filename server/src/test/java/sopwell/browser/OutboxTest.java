package sopwell.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import sopwell.TestStand;
import sopwell.desk.DiskGuard;
import sopwell.net.Cut;

/** The counter goes on while the server is away, and nothing is lost, doubled or out of order. */
@ExtendWith(Browsers.class)
class OutboxTest {
    @TempDir Path folder;
    private AwayStand stand;
    private Browser counter;

    @BeforeEach
    void open(Browser shared) throws IOException {
        stand = AwayStand.here(folder);
        counter = shared;
        counter.open(stand.address() + "/counter");
        CounterHands.ready(counter);
    }

    @AfterEach
    void close() throws IOException {
        stand.close();
    }

    @Test
    void takesOrdersWithTheNetworkCutAndSendsThemWhenItIsBack() {
        counter.offline(true);
        CounterHands.place(counter, "beef hot", "Waiting 1");
        CounterHands.place(counter, "fries", "Waiting 2");
        assertEquals(List.of(), stand.taken());
        counter.offline(false);
        counter.waitText("#outbox", "Waiting 2 is order 2");
        assertEquals(List.of("1 beef", "1 fries"), stand.taken());
    }

    @Test
    void anOrderWhoseAnswerWasLostIsNotPlacedTwice() {
        stand.link().swallowAnswers();
        CounterHands.place(counter, "beef hot", "Waiting 1");
        CounterHands.place(counter, "fries", "Waiting 2");
        stand.link().healAndBreakOff();
        counter.waitText("#outbox", "Waiting 2 is order 2");
        assertEquals(List.of("1 beef", "1 fries"), stand.taken());
    }

    @Test
    void aFullDiskIsSaidOnThePageAndTheOrderWaitsForRoom() {
        AtomicLong freeBytes = new AtomicLong(49);
        DiskGuard.Terms terms = new DiskGuard.Terms(500, 50, 3, 1);
        try (TestStand full = TestStand.start(folder.resolve("full"), freeBytes::get, terms)) {
            counter.open(full.address() + "/counter");
            CounterHands.ready(counter);
            counter.waitText(".trouble[role='alert']", "The disk is nearly full");
            CounterHands.place(counter, "beef hot", "Waiting 1");
            counter.waitText("#outbox-note", "wait");
            freeBytes.set(50);
            counter.waitText("#outbox", "Waiting 1 is order 1");
            counter.waitText(".trouble.calm", "The computer's disk is getting full");
            assertEquals(1, counter.count(".trouble"), "one line at a time");
            freeBytes.set(500);
            counter.waitGone(".trouble");
        }
    }

    @Test
    void aSilentNetworkHoldsNobodyUp() {
        stand.link().cut(Cut.SILENT);
        CounterHands.place(counter, "beef hot", "Waiting 1");
        CounterHands.place(counter, "2 fries", "Waiting 2");
        stand.link().healAndBreakOff();
        counter.waitText("#outbox", "Waiting 2 is order 2");
        assertEquals(List.of("1 beef", "2 fries"), stand.taken());
    }

    @Test
    void twoWindowsSendEachOrderOnceInTheOrderInWhichTheyWereTaken() throws IOException {
        twoWindows(stand.address());
    }

    @Test
    void overPlainHttpAnOpenPageStillKeepsAndSendsInOrder() throws IOException {
        String plain = stand.address().replace("127.0.0.1", Browser.PLAIN_NAME);
        counter.open(plain + "/counter");
        CounterHands.ready(counter);
        assertEquals(
                List.of("undefined", "undefined"),
                counter.script("return [typeof navigator.locks, typeof navigator.serviceWorker]"));
        twoWindows(plain);
    }

    private void twoWindows(String address) throws IOException {
        String one = counter.window();
        String two = counter.openWindow(address + "/counter");
        CounterHands.ready(counter);
        stand.kill();
        List<String> wanted = new ArrayList<>();
        for (int i = 1; i <= 6; i++) {
            counter.look(i % 2 == 1 ? one : two);
            CounterHands.place(counter, i + " fries", "Waiting " + i);
            wanted.add(i + " fries");
        }
        stand.start();
        counter.waitText("#outbox", "Waiting 6 is order 6");
        counter.look(one);
        counter.waitText("#outbox", "Waiting 6 is order 6");
        assertEquals(wanted, stand.taken());
    }

    @Test
    void goesInAtThePriceToldWhenTheMenuChangedMeanwhileAndSaysSo() throws IOException {
        stand.kill();
        CounterHands.place(counter, "fries", "Waiting 1");
        assertEquals("$3.73", counter.texts("#answer .placed-total b").get(0));
        stand.menu(menu -> menu.replace("\"priceCents\": 345", "\"priceCents\": 995"));
        stand.start();
        counter.waitText("#outbox", "Waiting 1 is order 1");
        counter.waitText("#board [data-row]", "price told by an earlier menu");
        JsonNode order = stand.orders().get(0);
        assertEquals(373, order.get("totalCents").intValue());
        assertTrue(order.has("toldMenuRevision"));
        counter.type("#call", "fries");
        counter.waitText("#reading", "$10.77");
        CounterHands.place(counter, "", "Order 2");
        assertEquals(1_077, stand.orders().get(1).get("totalCents").intValue());
        counter.open(stand.address() + "/mix/today");
        counter.waitText("main", "1 at the price of an earlier menu");
    }

    @Test
    void whatIsRefusedWaitsToBeMendedOrThrownAway() throws IOException {
        stand.kill();
        counter.type("#name", "Ines");
        CounterHands.place(counter, "2 jus cup, fries", "Waiting 1");
        CounterHands.place(counter, "jus cup", "Waiting 2");
        CounterHands.place(counter, "cola", "Waiting 3");
        String old = counter.waitFor("#call-form").getDomAttribute("data-reader");
        stand.menu(menu -> menu.replace("\"jus-cup\"", "\"jus-mug\""));
        stand.start();
        counter.waitFor("#call-form:not([data-reader='" + old + "'])");
        counter.waitText("#outbox-note", "2 orders need you");
        counter.waitText("#outbox", "Waiting 3 is order 1");
        counter.waitText("#outbox .why", "The menu has changed");
        assertEquals(List.of("1 cola"), stand.taken());

        counter.click("#outbox li:first-child [data-act='open']");
        assertEquals("2 jus cup, fries", counter.waitFor("#call").getDomProperty("value"));
        assertEquals("Ines", counter.waitFor("#name").getDomProperty("value"));
        CounterHands.place(counter, ", cola", "Order 2");
        counter.waitText("#outbox-note", "1 order needs you");
        assertEquals(List.of("1 cola", "2 jus-mug 1 fries 1 cola"), stand.taken());

        counter.click("#outbox [data-act='throw']");
        counter.click("#outbox [data-act='gone']");
        counter.waitGone("#outbox .needs-you");
        assertEquals(2, stand.taken().size());
        String thrown =
                "const done = arguments[0]; indexedDB.open('sopwell-outbox').onsuccess = (e) =>"
                        + " e.target.result.transaction('thrown').objectStore('thrown').getAll()"
                        + ".onsuccess = (f) => done(f.target.result[0].reason)";
        assertEquals("Guest is gone", counter.scriptLater(thrown));
    }

    @Test
    void takesMoneyForAnOrderThatWaitsAndTheTillHasItOnce() throws IOException {
        stand.kill();
        CounterHands.place(counter, "fries", "Waiting 1");
        counter.type("#tendered", "2");
        counter.keys(Keys.ENTER);
        counter.waitText("#pay-place [role='alert']", "That is less than $3.73");
        counter.type("#tendered", "0");
        counter.keys(Keys.ENTER);
        counter.waitText("#pay-place .change-due b", "$16.27");
        assertEquals(
                List.of("1 × $10", "1 × $5", "1 × $1", "1 × 25¢", "2 × 1¢"),
                counter.texts("#pay-place .pieces li"));
        counter.keys(Keys.ESCAPE);
        CounterHands.place(counter, "cola", "Waiting 2");
        counter.click("#pay-place [data-card]");
        counter.waitText("#pay-place .change-due", "$2.44");
        counter.waitText("#outbox", "Paid");
        stand.start();
        counter.waitText("#outbox", "Waiting 2 is order 2");
        counter.waitText("#outbox", "Waiting 1 is order 1");
        assertEquals(List.of("1 fries", "1 cola"), stand.taken());
        String first = stand.orders().get(0).get("order").textValue();
        counter.open(stand.address() + "/counter/orders/" + first + "/money");
        counter.waitText("main", "$3.73 cash");
        String second = stand.orders().get(1).get("order").textValue();
        counter.open(stand.address() + "/counter/orders/" + second + "/money");
        counter.waitText("main", "$2.44 card");
        counter.open(stand.address() + "/till");
        counter.waitText("main", "$3.73");
    }

    @Test
    void aSecondRequestFollowsItsOrderAndNoneIsLost() throws IOException {
        stand.kill();
        CounterHands.place(counter, "fries", "Waiting 1");
        CounterHands.place(counter, "cola", "Waiting 2");
        String follow =
                """
                const done = arguments[0];
                const js = document.querySelector('script[src*="/place.js"]').src;
                import(js.replace('/place.js', '/outbox.js')).then((outbox) => outbox.andThen(1, {
                    path: '/counter/orders/{order}/voids', key: 'a-key-of-its-own',
                    body: 'number=1&key=a-key-of-its-own&reason=Guest+is+gone',
                })).then(done);
                """;
        assertEquals(true, counter.scriptLater(follow));
        stand.start();
        counter.waitText("#outbox", "Waiting 2 is order 2");
        counter.waitText("#outbox", "Waiting 1 is order 1");
        assertEquals("void", stand.orders().get(0).get("state").textValue());
        assertEquals("waiting", stand.orders().get(1).get("state").textValue());
        String unknown = follow.replace("andThen(1,", "andThen(99,");
        assertEquals(false, counter.scriptLater(unknown), "nobody knows that order");
    }

    @Test
    void aBoardIsNeverShownFromTheStoreAndTheCounterUpdatesItself() throws IOException {
        counter.waitFor("body[data-worker='ready']");
        counter.open(stand.address() + "/boards/line");
        counter.waitText("#live", "live");
        stand.kill();
        counter.open(stand.address() + "/boards/line");
        counter.waitText("h1", "The server does not answer");
        assertEquals(0, counter.count("#board"));
        counter.open(stand.address() + "/counter");
        counter.waitText(".unknown", "Open orders show here again");
        stand.start();
        counter.waitText("#live", "live");
        counter.waitText(".empty", "No order is open");
    }
}
