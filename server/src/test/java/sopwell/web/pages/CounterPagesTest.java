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

class CounterPagesTest {
    private static final Pattern KEY = Pattern.compile("name=\"key\" value=\"([^\"]+)\"");
    private static final Pattern ORDER = Pattern.compile("/counter/orders/([0-9-]+)/edit\"");

    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    private String reading(String call) {
        return stand.press("/counter/reading", "r", Map.of("call", call)).body();
    }

    private static String first(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertTrue(matcher.find(), () -> pattern + " is not in " + text);
        return matcher.group(1);
    }

    @Test
    void readsBackPricesAndQuotes() {
        String reading = reading("2 beef dipped hot, fries");
        assertTrue(reading.contains("2 × regular beef, dipped, hot"), reading);
        assertTrue(reading.contains("$15.80") && reading.contains("min"), reading);
        assertTrue(reading.contains("hx-swap-oob=\"true\""), reading);
    }

    @Test
    void saysWhichWordsMayFollow() {
        String live = first(Pattern.compile("data-live=\"([^\"]*)\""), reading("beef dipped "));
        assertTrue(live.contains("o.hot") && live.contains("s.large"), live);
        assertFalse(live.contains("o.dry"), live);
        assertTrue(live.contains("comma"), live);
    }

    @Test
    void marksBothWordsOfAClashAndMendsItWithOneTap() {
        String reading = reading("fries, beef dry dipped");
        String flat = reading.replaceAll("\\s+", " ");
        assertTrue(flat.contains("class=\"mark\">dry</span>"), flat);
        assertTrue(flat.contains("class=\"mark\">dipped</span>"), flat);
        assertTrue(flat.contains("“dry” and “dipped” clash"), flat);
        assertTrue(flat.contains("data-fix=\"fries, beef dry\""), flat);
        assertTrue(flat.contains("data-fix=\"fries, beef dipped\""), flat);
    }

    @Test
    void unfinishedWordIsNoAlarm() {
        String reading = reading("beef dippe");
        assertFalse(reading.contains("role=\"alert\""), reading);
        assertTrue(reading.contains("data-fix=\"beef dipped\""), reading);
        assertTrue(reading("beef dippe hot").contains("role=\"alert\""));
    }

    @Test
    void placesOnceUnderTheFormsKeyAndDrawsANewOne() {
        String key = first(KEY, stand.get("/counter").body());
        Map<String, String> form =
                Map.of("key", key, "call", "2 beef dipped hot", "name", "Ines", "service", "here");
        HttpResponse<String> placed = stand.press("/counter/orders", "x", form);
        assertEquals(200, placed.statusCode());
        assertEquals("placed", placed.headers().firstValue("HX-Trigger").orElse(""));
        assertTrue(placed.body().contains("Order 1"), placed.body());
        assertTrue(placed.body().contains("$17.10"), placed.body());
        assertFalse(first(KEY, placed.body()).equals(key));
        assertTrue(stand.press("/counter/orders", "y", form).body().contains("Order 1"));
        String counter = stand.get("/counter").body();
        assertEquals(1, counter.split("class=\"order\"", -1).length - 1);
    }

    @Test
    void refusedOrderKeepsWhatWasTyped() {
        Map<String, String> form = Map.of("key", "k", "call", "2 baef <b>", "name", "Ana & Co");
        HttpResponse<String> answer = stand.post("/counter/orders", form);
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("value=\"2 baef &lt;b>\""), answer.body());
        assertTrue(answer.body().contains("value=\"Ana &amp; Co\""), answer.body());
        assertTrue(answer.body().contains("data-fix=\"2 beef"), answer.body());
    }

    @Test
    void changesAnOrderByItsOwnCallText() {
        stand.place("beef dipped hot", "Ines");
        String order = first(ORDER, stand.get("/counter").body());
        String edit = stand.get("/counter/orders/" + order + "/edit").body();
        assertTrue(edit.contains("value=\"beef dipped hot\""), edit);
        Map<String, String> form =
                Map.of(
                        "key",
                        first(KEY, edit),
                        "call",
                        "beef dipped sweet",
                        "name",
                        "Ines",
                        "service",
                        "to-go",
                        "version",
                        "1",
                        "number",
                        "1");
        HttpResponse<String> changed =
                stand.press("/counter/orders/" + order + "/changes", "x", form);
        assertEquals("/counter?changed=1", changed.headers().firstValue("HX-Redirect").get());
        assertTrue(stand.get("/counter?changed=1").body().contains("Order 1 is changed"));
        assertTrue(stand.get("/boards/line").body().contains("sweet"));
        Map<String, String> stale =
                Map.of("key", "other", "call", "beef", "version", "1", "number", "1");
        HttpResponse<String> late =
                stand.press("/counter/orders/" + order + "/changes", "y", stale);
        assertEquals(409, late.statusCode());
        assertTrue(late.body().contains("changed meanwhile"), late.body());
    }

    @Test
    void voidsWithAReasonAndNeverWithoutOne() {
        String order = stand.place("beef", "");
        String path = "/counter/orders/" + order + "/voids";
        assertEquals(422, stand.press(path, "a", Map.of("number", "1")).statusCode());
        Map<String, String> why = Map.of("reason", "Guest is gone", "number", "1");
        HttpResponse<String> gone = stand.press(path, "b", why);
        assertEquals("/counter?voided=1", gone.headers().firstValue("HX-Redirect").get());
        assertFalse(stand.get("/boards/line").body().contains(order));
        assertEquals(404, stand.get("/counter/orders/20000101-0001/edit").statusCode());
    }

    @Test
    void tooLargeABodyIsRefused() {
        String call = "beef ".repeat(14_000);
        assertEquals(413, stand.press("/counter/reading", "r", Map.of("call", call)).statusCode());
    }

    /** 1764086423209 passes the check of card numbers, as every tenth time of day does. */
    @Test
    void aTimeOfDayIsNoCard() {
        assertTrue(sopwell.money.CardNumber.isIn("1764086423209"));
        Map<String, String> form =
                Map.of("key", "k", "call", "beef dipped", "taken-at", "1764086423209");
        HttpResponse<String> answer = stand.press("/counter/orders", "k", form);
        assertFalse(answer.body().contains("card"), answer.body());
    }
}
