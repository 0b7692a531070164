package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class PaperPagesTest {
    private static final Pattern PAPERS = Pattern.compile("/orders/([0-9-]+)/papers");

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
    void theSlipSaysTheOrderInWordsWithItsPriceAndWhenItIsReady() {
        String slip = print(place("2 beef dipped hot, fries"), "slip", "p1");
        assertTrue(slip.contains("<p class=\"number\">"), slip);
        assertTrue(slip.contains("regular beef, dipped, hot"), slip);
        assertTrue(slip.contains("$15.80") && slip.contains("$20.84"), slip);
        assertTrue(slip.contains("To pay: $20.84"), slip);
        assertTrue(slip.contains("Ready about"), slip);
        assertTrue(slip.contains("Contains: ") && slip.contains("wheat"), slip);
        assertFalse(slip.contains("class=\"copy\""), slip);
    }

    @Test
    void theNextOneSaysThatItIsACopyAndARepeatedPressIsNone() {
        String order = place("beef dipped");
        print(order, "slip", "p1");
        assertFalse(print(order, "slip", "p1").contains("class=\"copy\""));
        assertTrue(print(order, "slip", "p2").contains("<p class=\"copy\">Copy 1</p>"));
        assertTrue(print(order, "slip", "p3").contains("<p class=\"copy\">Copy 2</p>"));
        assertFalse(print(order, "line", "p4").contains("class=\"copy\""));
    }

    @Test
    void aStationsTicketHasItsStepsInOrderAndNothingElse() {
        String ticket = print(place("2 beef dipped hot provolone, fries"), "line", "p1");
        assertTrue(ticket.contains("<b>2</b> beef"), ticket);
        int cheese = ticket.indexOf("PROVOLONE");
        int dip = ticket.indexOf("DIPPED");
        assertTrue(cheese > 0 && dip > cheese, ticket);
        assertFalse(ticket.contains("fries"), ticket);
        assertFalse(ticket.contains("$"), ticket);
    }

    @Test
    void refusesWhatCantBePrinted() {
        assertEquals(404, press("20000101-0001", "slip", "p1").statusCode());
        HttpResponse<String> unknown = press(place("beef"), "letter", "p2");
        assertEquals(404, unknown.statusCode());
        assertTrue(unknown.body().contains("no paper called"), unknown.body());
    }

    @Test
    void ordersOfTheDayAreFoundByNumberAndName() {
        stand.press(
                "/counter/orders",
                "a",
                Map.of("key", "a", "call", "beef dipped", "name", "Zacarías"));
        place("fries");
        String all = stand.get("/orders").body();
        assertTrue(all.contains("regular beef, dipped") && all.contains("fries"), all);
        String found = stand.get("/orders?find=zaca").body();
        assertTrue(found.contains("regular beef, dipped"), found);
        assertFalse(found.contains(" fries"), found);
        assertTrue(stand.get("/orders?find=nobody").body().contains("No order fits."));
    }

    @Test
    void againGivesTheCallOfAnEarlierOrderWithItsChanges() {
        assertTrue(again("again").body().contains("no order yet today"));
        place("2 beef dipped hot, fries");
        place("cola");
        assertTrue(again("same again").body().contains("data-call=\"cola\""));
        String number = number(stand.get("/orders?find=").body());
        HttpResponse<String> dry = again("again " + number + " but dry");
        assertEquals(200, dry.statusCode(), dry.body());
        assertTrue(dry.body().contains("data-call=\"2 beef dry hot, fries\""), dry.body());
        assertEquals(404, again("otra vez 998").statusCode());
        HttpResponse<String> wrong = again("again purple");
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("“purple” is not on the menu"), wrong.body());
        assertEquals(204, again("beef").statusCode());
    }

    /** The number of the older of two orders. */
    private static String number(String page) {
        Matcher numbers = Pattern.compile("<b class=\"number\">([0-9]+)</b>").matcher(page);
        assertTrue(numbers.find(), page);
        assertTrue(numbers.find(), page);
        return numbers.group(1);
    }

    private HttpResponse<String> again(String call) {
        return stand.press("/counter/again", "x" + call, Map.of("call", call));
    }

    private String place(String call) {
        String page =
                stand.press("/counter/orders", call, Map.of("key", call, "call", call)).body();
        Matcher order = PAPERS.matcher(page);
        assertTrue(order.find(), page);
        return order.group(1);
    }

    private HttpResponse<String> press(String order, String paper, String key) {
        return stand.press("/orders/" + order + "/papers", key, Map.of("paper", paper));
    }

    private String print(String order, String paper, String key) {
        HttpResponse<String> printed = press(order, paper, key);
        assertEquals(200, printed.statusCode(), printed.body());
        return printed.body().replaceAll("\\s+", " ");
    }
}
