package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.orders.OrderCommand;
import sopwell.till.TillCommand;

class ClosePagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private String closed(String key) {
        HttpResponse<String> done = stand.post("/close/closed", Map.of("key", key));
        assertEquals(303, done.statusCode(), done.body());
        return stand.get("/close").body();
    }

    private void voided(String order) {
        stand.ask(new ForOrders(new OrderCommand.VoidOrder(order, 0, "guest")));
    }

    @Test
    void beforeTheFirstDayThereIsNothingToClose() {
        String page = stand.get("/close").body();
        assertTrue(page.contains("No day was ever opened."), page);
        assertFalse(page.contains("action=\"/close/closed\""), page);
    }

    @Test
    void whatIsStillOpenIsSaidPlainlyAndHoldsTheDay() {
        String order = stand.place("2 beef dipped hot", "Ines");
        stand.ask(new ForTill(new TillCommand.OpenTill("Theo", 10_000)));
        String page = stand.get("/close").body();
        assertTrue(page.contains("orders 1, tills not counted 1"), page);
        assertTrue(page.contains("href=\"/counter/orders/" + order + "/edit#void"), page);
        assertTrue(page.contains("href=\"/till\""), page);
        HttpResponse<String> held = stand.post("/close/closed", Map.of("key", "early"));
        assertEquals(409, held.statusCode());
        assertTrue(held.body().contains("These orders are still open: 1."), held.body());
        assertTrue(
                stand.get("/close?lang=es").body().contains("pedidos 1, cajas sin contar 1"),
                "and in Spanish");
    }

    @Test
    void theClosedDayIsSummedUpReopenedWithAReasonAndCountedOnce() {
        voided(stand.place("beef", ""));
        String summary = closed("first");
        assertTrue(summary.contains("closed at "), summary);
        assertTrue(summary.contains("action=\"/close/reopened\""), summary);

        Map<String, String> why =
                Map.of("key", "again", "date", "2026-11-27", "reason", "a party came late");
        HttpResponse<String> mute =
                stand.post(
                        "/close/reopened",
                        Map.of("key", "mute", "date", "2026-11-27", "reason", " "));
        assertEquals(422, mute.statusCode());
        HttpResponse<String> other =
                stand.post(
                        "/close/reopened",
                        Map.of("key", "old", "date", "2026-11-26", "reason", "a slip"));
        assertEquals(409, other.statusCode());
        assertTrue(other.body().contains("value=\"a slip\""), "what was typed stays");
        assertEquals(303, stand.post("/close/reopened", why).statusCode());
        String reopened = stand.get("/close").body();
        assertTrue(reopened.contains("<span>a party came late</span>"), reopened);
        assertTrue(reopened.contains("action=\"/close/closed\""), reopened);

        voided(stand.place("beef dry", ""));
        closed("second");
        String mix = stand.get("/mix/2026-11-27").body();
        assertEquals(200, stand.get("/mix/2026-11-27").statusCode(), mix);
        String page = stand.get("/close").body();
        assertTrue(page.contains("<dt>void</dt><dd>2</dd>"), page);
    }
}
