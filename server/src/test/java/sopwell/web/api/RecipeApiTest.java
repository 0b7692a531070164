package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpRequest.BodyPublishers;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** The book of recipes over HTTP. */
class RecipeApiTest {
    private static final String PATH = "/api/recipes";
    private static StandServer stand;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @Test
    void aBookIsReadChangedPutAndStillThereAfterARestart() {
        Got before = stand.get(PATH);
        ObjectNode book = (ObjectNode) before.json();
        ((ObjectNode) book.path("ingredients").get(0)).put("shelfLifeDays", 3);
        Got put = stand.put(PATH, book.toString(), before.header("ETag"));
        assertEquals(200, put.status(), put::text);
        assertNotEquals(before.header("ETag"), put.header("ETag"));
        stand.restart();
        Got after = stand.get(PATH);
        assertEquals(put.header("ETag"), after.header("ETag"));
        assertEquals(book, after.json());
        Got same = stand.put(PATH, book.toString(), after.header("ETag"));
        assertEquals(200, same.status());
        assertEquals(after.header("ETag"), same.header("ETag"));
    }

    @Test
    void aBookMadeFromAnOlderOneIsRefused() {
        Got now = stand.get(PATH);
        Got old = stand.put(PATH, now.text(), "\"0123456789abcdef\"");
        assertEquals(412, old.status());
        assertEquals("recipes-changed", old.json().path("code").textValue());
        assertEquals(0, old.json().path("faults").size(), "nothing differs but the revision");
        ObjectNode other = (ObjectNode) now.json();
        ((ObjectNode) other.path("ingredients").get(2)).put("shelfLifeDays", 99);
        ((ObjectNode) other.path("hours"))
                .putObject("monday")
                .put("from", "06:00")
                .put("to", "09:00");
        Got late = stand.put(PATH, other.toString(), "\"0123456789abcdef\"");
        assertEquals(412, late.status());
        JsonNode differs = late.json().path("faults");
        assertEquals("/ingredients/2", differs.get(0).path("place").textValue());
        assertEquals("/hours", differs.get(1).path("place").textValue());
        assertEquals(2, differs.size(), late::text);
        Got from =
                stand.send(
                        stand.request(PATH)
                                .header("Content-Type", "application/json")
                                .header("Idempotency-Key", StandServer.key())
                                .PUT(BodyPublishers.ofString(now.text()))
                                .build());
        assertEquals(428, from.status());
        assertEquals("if-match-missing", from.json().path("code").textValue());
    }

    @Test
    void everyFaultIsListedWithItsPlaceAndNothingChanges() {
        Got before = stand.get(PATH);
        ObjectNode book = (ObjectNode) before.json();
        ((ObjectNode) book.path("uses").get(0)).put("item", "beeef");
        ((ObjectNode) book.path("recipes").get(0).path("yields").get(1)).put("left", 1.5);
        Got put = stand.put(PATH + "?lang=es", book.toString(), before.header("ETag"));
        assertEquals(422, put.status());
        assertEquals("recipes-faulty", put.json().path("code").textValue());
        JsonNode faults = put.json().path("faults");
        assertEquals("/recipes/0/yields/1/left", faults.get(0).path("place").textValue());
        assertEquals("/uses/0/item", faults.get(1).path("place").textValue());
        assertEquals(
                "No hay ningún artículo “beeef” en el menú.",
                faults.get(1).path("wrong").textValue());
        assertEquals(before.header("ETag"), stand.get(PATH).header("ETag"));
    }
}
