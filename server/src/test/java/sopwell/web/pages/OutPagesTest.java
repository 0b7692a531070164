package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OutPagesTest {
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
    void everyCounterSaysWhatIsOutAndACallForItIsRefusedWithWhatIsNear() {
        HttpResponse<String> marked = mark("a", Map.of("out", "option:provolone", "do", "day"));
        assertEquals(200, marked.statusCode());

        assertTrue(flat(stand.get("/counter").body()).contains("data-word=\"o.provolone\""));
        String reading = flat(reading("fries, 2 beef prov hot"));
        assertTrue(reading.contains("class=\"mark\">prov</span>"), reading);
        assertTrue(reading.contains("provolone is out. Near it: mozzarella and"), reading);
        assertTrue(reading.contains("data-fix=\"fries, 2 beef mozzarella hot\""), reading);

        HttpResponse<String> placed = place("beef provolone");
        assertEquals(409, placed.statusCode());
        assertTrue(placed.body().contains("provolone is out."), placed.body());
        assertEquals(200, place("beef mozzarella").statusCode());
    }

    @Test
    void aHouseDefaultThatIsOutIsNamedAndAnotherIsOffered() {
        mark("a", Map.of("out", "option:wet", "do", "day"));
        String reading = flat(reading("2 beef"));
        assertTrue(reading.contains("wet is out. Near it: dry, dipped and"), reading);
        assertTrue(reading.contains("data-fix=\"2 beef dry\""), reading);
    }

    @Test
    void countsDownOnTheCounter() {
        mark("a", Map.of("out", "item:fries", "do", "left", "left", "3"));
        assertEquals(200, place("2 fries").statusCode());
        assertTrue(flat(stand.get("/counter").body()).contains("<b>fries</b> 1 left"));
        String reading = flat(reading("2 fries"));
        assertTrue(reading.contains("Only 1 left of fries, and 2 are asked for."), reading);
        mark("b", Map.of("out", "item:fries", "do", "back"));
        assertFalse(reading("9 fries").contains("role=\"alert\""));
    }

    @Test
    void refusesWhatCantBeMarkedInASentence() {
        HttpResponse<String> unknown = mark("a", Map.of("out", "item:soup", "do", "day"));
        assertEquals(422, unknown.statusCode());
        assertTrue(unknown.body().contains("is not on the menu"), unknown.body());
        HttpResponse<String> many =
                mark("b", Map.of("out", "item:fries", "do", "left", "left", "some"));
        assertEquals(422, many.statusCode());
        assertTrue(many.body().contains("“some” is not how many are left"), many.body());
        assertEquals(409, mark("c", Map.of("out", "item:fries", "do", "back")).statusCode());
        assertFalse(stand.get("/outs").body().contains("class=\"now\""));
    }

    private HttpResponse<String> mark(String key, Map<String, String> fields) {
        return stand.press("/outs", key, fields);
    }

    private HttpResponse<String> place(String call) {
        return stand.press("/counter/orders", call, Map.of("key", call, "call", call));
    }

    private String reading(String call) {
        return stand.press("/counter/reading", "r" + call, Map.of("call", call)).body();
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
