package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.money.CardNumber;
import sopwell.orders.OrderCommand;

/** The counter's money and the tills, as pages. */
class PayPagesTest {
    private static final Pattern KEY = Pattern.compile("name=\"key\" value=\"([^\"]+)\"");
    private static final String CARD = "4111 1111 1111 1111";

    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void thePanelOffersExactNextNotesCardAndLater() {
        String order = stand.place("2 beef dipped hot, fries", "Ines");
        String panel = panel(order);
        assertTrue(panel.contains("$20.84"), panel);
        for (String note : List.of("2084", "2100", "2500", "3000", "4000")) {
            assertTrue(panel.contains("name=\"note\" value=\"" + note + "\""), note);
        }
        assertTrue(panel.contains("data-card") && panel.contains("data-pay-close"), panel);
    }

    @Test
    void saysTheChangeAndTheNotesAndCoinsToGive() {
        String order = stand.place("2 beef dipped hot, fries", "");
        String paid = pay(order, Map.of("way", "cash", "tendered", "40")).body();
        assertTrue(paid.contains("$19.16"), paid);
        String flat = paid.replaceAll("<[^>]+>", " ").replaceAll("\\s+", " ");
        assertTrue(flat.contains("1 × $10 1 × $5 4 × $1 1 × 10¢ 1 × 5¢ 1 × 1¢"), flat);
        assertFalse(paid.contains("name=\"tendered\""), "nothing is due any more");
    }

    @Test
    void lessThanIsDuePaysAPartAndTheRestStaysToPay() {
        String order = stand.place("beef", "");
        String part = pay(order, Map.of("way", "cash", "tendered", "5,00")).body();
        assertTrue(part.contains("$3.55") && part.contains("name=\"tendered\""), part);
        String rest = pay(order, Map.of("way", "card", "tip", "1")).body();
        assertTrue(rest.contains("$4.55"), rest);
        assertFalse(stand.get("/counter").body().contains("unpaid"));
    }

    @Test
    void aPressOfTheSameFormIsTakenOnce() {
        String order = stand.place("beef", "");
        Map<String, String> form =
                Map.of("key", first(KEY, panel(order)), "way", "cash", "tendered", "5");
        String address = "/counter/orders/" + order + "/payments";
        assertEquals(200, stand.press(address, "a", form).statusCode());
        assertEquals(200, stand.press(address, "b", form).statusCode());
        assertTrue(panel(order).contains("$3.55"));
    }

    @Test
    void aRefusalSaysWhyAndKeepsWhatWasTyped() {
        String order = stand.place("beef", "");
        HttpResponse<String> letters = pay(order, Map.of("way", "cash", "tendered", "ten"));
        assertEquals(422, letters.statusCode());
        assertTrue(letters.body().contains("“ten” is no amount."), letters.body());
        assertTrue(letters.body().contains("value=\"ten\""), letters.body());
        HttpResponse<String> much = pay(order, Map.of("way", "card", "tendered", "9"));
        assertEquals(409, much.statusCode());
        assertTrue(much.body().contains("$9.00 is more than the $8.55"), much.body());
    }

    @Test
    void whatIsUnpaidShowsAtTheCounterAndOnThePass() {
        String order = stand.place("beef", "");
        assertTrue(stand.get("/counter").body().contains("unpaid $8.55"));
        assertTrue(stand.get("/pass").body().contains("unpaid $8.55"));
        assertTrue(stand.get("/pass?lang=es").body().contains("debe $8.55"));
        pay(order, Map.of("way", "cash"));
        assertFalse(stand.get("/pass").body().contains("unpaid"));
        stand.change(order, "small beef");
        assertTrue(stand.get("/pass").body().contains("give back $"));
    }

    @Test
    void aVoidOrderSaysWhatIsToGoBackAndGivesIt() {
        String order = stand.place("beef", "");
        pay(order, Map.of("way", "cash"));
        stand.ask(new ForOrders(new OrderCommand.VoidOrder(order, 0, "gone")));
        String page = stand.get("/counter/orders/" + order + "/money").body();
        assertTrue(page.contains("$8.55 to give back."), page);
        HttpResponse<String> back =
                post(order, "refunds", Map.of("means", "cash", "reason", "It was cold"));
        assertEquals(200, back.statusCode());
        assertTrue(back.body().contains("Give back") && back.body().contains("$8.55"));
        assertFalse(back.body().contains("to give back."), "nothing is due back any more");
    }

    @Test
    void voidingAPaidOrderLeadsToItsMoneyAndTheTillRemindsOfIt() {
        String order = stand.place("beef", "Ines");
        pay(order, Map.of("way", "cash"));
        HttpResponse<String> voided = post(order, "voids", Map.of("reason", "gone"));
        assertEquals(
                "/counter/orders/" + order + "/money",
                voided.headers().firstValue("Location").orElseThrow());
        assertTrue(stand.get("/till").body().contains("give back $8.55"));
        String unpaid = stand.place("beef", "Theo");
        HttpResponse<String> other = post(unpaid, "voids", Map.of("reason", "gone", "number", "2"));
        assertEquals("/counter?voided=2", other.headers().firstValue("Location").orElseThrow());
        post(order, "refunds", Map.of("means", "cash", "reason", "gone"));
        assertFalse(stand.get("/till").body().contains("give back"));
    }

    @Test
    void takesAShareOffAndRefusesWhatIsNone() {
        String order = stand.place("beef", "");
        String page = post(order, "discounts", Map.of("off", "10%", "reason", "late")).body();
        assertTrue(page.contains("$7.70"), page);
        HttpResponse<String> wrong = post(order, "discounts", Map.of("off", "half"));
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("“half” is no discount."), wrong.body());
        assertEquals(422, post(order, "discounts", Map.of("off", "1")).statusCode());
    }

    @Test
    void opensCountsAndClosesATill() {
        HttpResponse<String> opened = till("opened", Map.of("cashier", "Inés", "float", "100"));
        assertEquals(303, opened.statusCode());
        String cookie = opened.headers().firstValue("Set-Cookie").orElseThrow();
        assertTrue(cookie.startsWith("cashier=In%C3%A9s;"), cookie);
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Lax"), cookie);
        String page = stand.get("/till", "Cookie", cookie.substring(0, cookie.indexOf(';'))).body();
        assertTrue(page.contains("Till of Inés") && page.contains("takes money for"), page);
        String order = stand.place("beef", "");
        pay(order, Map.of("way", "cash"));
        till("paid-out", Map.of("cashier", "Inés", "cents", "2.50", "reason", "ice"));
        HttpResponse<String> closed =
                till("closed", Map.of("cashier", "Inés", "n10000", "1", "n100", "6"));
        assertEquals(303, closed.statusCode());
        String after = stand.get("/till").body();
        assertTrue(after.contains("$0.05 short"), after);
        String report = stand.get("/till/today").body();
        for (String amount : List.of("$8.55", "$106.05", "$106.00", "ice", "$0.65")) {
            assertTrue(report.contains(amount), amount);
        }
    }

    @Test
    void aRefusalAtTheTillKeepsWhatWasTypedAndLeavesTheFormOpen() {
        till("opened", Map.of("cashier", "Ana", "float", "1"));
        HttpResponse<String> much =
                till(
                        "paid-out",
                        Map.of("form", "out", "cashier", "Ana", "cents", "5", "reason", "ice"));
        assertEquals(409, much.statusCode());
        assertTrue(much.body().contains("should hold $1.00"), much.body());
        assertTrue(much.body().contains("value=\"ice\""), much.body());
        assertTrue(much.body().contains("<details open"), much.body());
        assertEquals(409, till("opened", Map.of("cashier", "ana", "float", "1")).statusCode());
        assertEquals(422, till("opened", Map.of("cashier", "", "float", "1")).statusCode());
        assertEquals(422, till("opened", Map.of("cashier", "Theo", "float", "x")).statusCode());
    }

    @Test
    void moneyTakenWithoutATillIsTakenAndSaidToBeApart() {
        String order = stand.place("beef", "");
        String paid = pay(order, Map.of("way", "cash", "tendered", "10")).body();
        assertTrue(paid.contains("No till is open, so this is noted apart."), paid);
        assertTrue(stand.get("/till").body().contains("at no open till today: $8.55"));
    }

    @Test
    void noFormTakesTheNumberOfACardOrSaysItAgain() {
        String order = stand.place("beef", "");
        Map<String, Map<String, String>> forms = new HashMap<>();
        String orders = "/counter/orders";
        forms.put(orders, Map.of("call", "beef", "name", CARD));
        forms.put(orders + "?", Map.of("call", CARD));
        forms.put(orders + "/" + order + "/changes", Map.of("call", "beef", "name", CARD));
        forms.put(orders + "/" + order + "/voids", Map.of("written", CARD));
        forms.put(orders + "/" + order + "/payments", Map.of("tendered", CARD));
        forms.put(orders + "/" + order + "/payments?", Map.of("tip", CARD));
        forms.put(orders + "/" + order + "/refunds", Map.of("written", CARD));
        forms.put(orders + "/" + order + "/discounts", Map.of("written", CARD, "off", "1"));
        forms.put("/till/opened", Map.of("cashier", CARD, "float", "1"));
        forms.put("/till/paid-in", Map.of("reason", CARD, "cents", "1"));
        forms.put("/till/paid-out", Map.of("reason", CARD, "cents", "1"));
        forms.put("/till/closed", Map.of("cashier", CARD));
        forms.put("/till/chosen", Map.of("cashier", CARD));
        forms.forEach(
                (path, fields) -> {
                    Map<String, String> form = new HashMap<>(fields);
                    form.put("key", "k" + path);
                    for (boolean pressed : new boolean[] {true, false}) {
                        HttpResponse<String> got =
                                pressed
                                        ? stand.press(path, "p" + path, form)
                                        : stand.post(path, form);
                        assertEquals(422, got.statusCode(), path);
                        assertTrue(got.body().contains("card’s number in it"), path);
                        String digits = got.body().replaceAll("[^0-9]", "");
                        assertFalse(digits.contains(CARD.replace(" ", "")), path);
                    }
                });
        String reading = stand.press("/counter/reading", "r", Map.of("call", CARD)).body();
        assertTrue(reading.contains("card’s number in it"), reading);
        assertFalse(reading.contains("1111"), reading);
        assertTrue(reading.contains("id=\"hints\""), "the line goes on reading");
    }

    @Test
    void theTimeThatAnOrderWasTakenIsNoCardsNumber() {
        long atMs = 1_795_802_400_000L;
        while (!CardNumber.isIn("" + atMs)) {
            atMs++;
        }
        Map<String, String> form = Map.of("key", "k", "call", "beef", "taken-at", "" + atMs);
        String body = stand.press("/counter/orders", "k", form).body();
        assertFalse(body.contains("card’s number in it"), body);
        String search = stand.get("/orders?find=" + CARD.replace(" ", "")).body();
        assertFalse(search.contains("4111"), "what was searched for does not come back");
    }

    private String panel(String order) {
        return stand.get("/counter/orders/" + order + "/pay", "HX-Request", "true").body();
    }

    private HttpResponse<String> pay(String order, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("key", first(KEY, panel(order)));
        return stand.press("/counter/orders/" + order + "/payments", "p", form);
    }

    private HttpResponse<String> post(String order, String what, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("key", "form-" + what + fields);
        return stand.post("/counter/orders/" + order + "/" + what, form);
    }

    private HttpResponse<String> till(String what, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("key", first(KEY, stand.get("/till").body()));
        return stand.post("/till/" + what, form);
    }

    private static String first(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertTrue(matcher.find(), () -> pattern + " is not in " + text);
        return matcher.group(1);
    }
}
