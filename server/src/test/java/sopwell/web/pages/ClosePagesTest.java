package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.Answer;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.orders.OrderCommand;
import sopwell.stock.larder.Books;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.larder.TypedAmount;
import sopwell.stock.recipes.RecipeBook;
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
    void anOrderAfterTheClosingLeavesATrace() {
        voided(stand.place("beef", ""));
        closed("first");
        stand.later(600);
        stand.place("beef dry", "");
        String page = stand.get("/close").body();
        assertTrue(page.contains("<span>Something came in after the day was closed</span>"), page);
        String spanish = stand.get("/till/today?lang=es").body();
        assertTrue(spanish.contains("Reabierto a las 12:10: Llegó algo"), spanish);
    }

    @Test
    void theWalkGoesPastTheShelvesTheBatchesAndWhatWasThrownAway() {
        stand.place("beef", "");
        assertFalse(stand.get("/close").body().contains("/prep/counts"), "there are no recipes");
        stand.ask(new StandCommand.AdoptRecipes(Books.small(), RecipeBook.empty().revision()));
        assertTrue(stand.get("/close").body().contains("was ever counted."));
        larder(new LarderCommand.Count(new TypedAmount("rolls", "40", "each")));
        larder(new LarderCommand.Count(new TypedAmount("raw-beef", "20", "kg")));
        larder(new LarderCommand.Waste(new TypedAmount("rolls", "4", "each"), "stale"));
        larder(new LarderCommand.StartBatch("sliced-beef", 1, ""));
        String page = stand.get("/close").body();
        assertTrue(page.contains("Counted today: 2 of 2"), page);
        assertTrue(page.contains("href=\"/prep/counts\""), page);
        assertTrue(page.contains("href=\"/prep/batches\""), page);
        assertTrue(page.contains("href=\"/prep\">Tomorrow’s prep"), page);
        assertEquals(200, stand.get("/prep").statusCode());
        assertTrue(page.contains("href=\"/prep/batches/b1\""), page);
        assertTrue(page.contains("<span>4 each <small>thrown away today</small>"), page);
        stand.later(24 * 3_600);
        stand.place("beef", "");
        String next = stand.get("/close").body();
        assertTrue(next.contains("Counted today: 0 of 2"), next);
        assertFalse(next.contains("thrown away today"), next);
        String spanish = stand.get("/close?lang=es").body();
        assertTrue(spanish.contains("Contado hoy: 0 de 2"), spanish);
        assertTrue(spanish.contains("Lotes en marcha: 1"), "a batch goes on over the night");
    }

    private void larder(LarderCommand command) {
        Answer answer = stand.ask(new StandCommand.ForLarder(command));
        assertTrue(answer.refusal().isEmpty(), () -> command + ": " + answer.refusal());
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
        assertTrue(
                reopened.contains("<span>a party came late, by Owner, at this machine</span>"),
                reopened);
        assertTrue(reopened.contains("action=\"/close/closed\""), reopened);

        voided(stand.place("beef dry", ""));
        closed("second");
        String till = stand.get("/till/2026-11-27").body();
        assertTrue(
                till.contains("Reopened at 12:00 by Owner, at this machine: a party came late"),
                till);
        String mix = stand.get("/mix/2026-11-27").body();
        assertEquals(200, stand.get("/mix/2026-11-27").statusCode(), mix);
        String page = stand.get("/close").body();
        assertTrue(page.contains("<dt>void</dt><dd>2</dd>"), page);
    }
}
