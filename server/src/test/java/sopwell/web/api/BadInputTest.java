package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** Whatever is wrong with a request, the answer says so in a sentence, and nothing is done. */
class BadInputTest {
    /** What an answer must not show: class and package names, stack traces, markup. */
    private static final Pattern INSIDES =
            Pattern.compile(
                    "\\bat \\w+\\.\\w|Exception|\\b(java|com|io|sopwell)\\.[a-z]+\\."
                            + "|[A-Z]\\w+Reader|<html");

    private static StandServer stand;
    private static String order;
    private static String part;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
        order = stand.place("beef").path("order").textValue();
        part = stand.get("/api/orders/" + order).json().at("/parts/0/part").textValue();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    @ParameterizedTest
    @MethodSource("sopwell.web.api.BadInput#all")
    void refusesInASentenceAndDoesNothing(BadInput bad) {
        long seq = stand.seq();
        Got english = stand.send(request(bad, "en"));
        Got spanish = stand.send(request(bad, "es"));
        String first = sentence(bad, english);
        String second = sentence(bad, spanish);
        assertNotEquals(first, second, "the sentence is in the language asked for");
        assertEquals(seq, stand.seq(), "nothing was kept");
    }

    @Test
    void saysWhereTheJsonIsWrong() {
        Got got = stand.post("/api/orders", "{\n  \"call\": \"beef\",\n  oops\n}");
        assertEquals(
                "The body is not right as JSON at line 3, column 3.",
                got.json().path("detail").textValue());
    }

    @Test
    void saysWhichFieldsThereAre() {
        Got got = stand.post("/api/orders", "{\"call\": \"beef\", \"nam\": \"Ines\"}");
        assertEquals(
                "There is no field \"/nam\" here. The fields are: call, lines, name, toGo, told.",
                got.json().path("detail").textValue());
    }

    @Test
    void saysWhereInTheCallAndWhatWouldBeRight() {
        JsonNode slip = stand.post("/api/calls", "{\"call\": \"2 beef diped hot\"}").json();
        assertEquals("unknown-word", slip.path("code").textValue());
        assertEquals(8, slip.path("column").intValue());
        assertEquals(5, slip.path("length").intValue());
        assertEquals("dipped", slip.at("/suggestions/0").textValue());
        JsonNode clash = stand.post("/api/calls", "{\"call\": \"beef dry dipped\"}").json();
        assertEquals(10, clash.path("column").intValue());
        assertEquals(6, clash.path("length").intValue());
        String said = clash.path("detail").textValue();
        assertTrue(said.contains("dry") && said.contains("dipped"), said);
    }

    @Test
    void namesTheMethodsThatAPathTakes() {
        Got got = stand.send(stand.request("/api/orders").DELETE().build());
        assertEquals(405, got.status());
        assertEquals("GET, POST", got.header("Allow"));
    }

    @Test
    void takesAPlainNameAsItIs() {
        for (String name : List.of("<b>Ines & \\\"Bo\\\"</b>", "José", "李", "=1+1", "{{7*7}}")) {
            String body = "{\"call\": \"fries\", \"name\": \"" + name + "\"}";
            Got got = stand.post("/api/orders", body);
            assertEquals(201, got.status(), got::text);
            assertEquals(
                    StandServer.tree("\"" + name + "\""),
                    got.json().path("name"),
                    "kept as typed; whoever shows it escapes it");
        }
    }

    private static HttpRequest request(BadInput bad, String language) {
        Map<String, String> headers = new HashMap<>();
        headers.put("Content-Type", "application/json");
        headers.put("Idempotency-Key", StandServer.key());
        headers.putAll(bad.headers());
        headers.put("Accept-Language", language);
        String path = bad.path().replace("{order}", order).replace("{part}", part);
        HttpRequest.Builder request = stand.request(path);
        headers.forEach(
                (name, value) -> {
                    if (!value.isEmpty()) {
                        request.header(name, value);
                    }
                });
        return request.method(
                        bad.method(),
                        bad.method().equals("GET")
                                ? BodyPublishers.noBody()
                                : BodyPublishers.ofString(bad.body()))
                .build();
    }

    /** Whether the description has this status for the operation, if it is one. */
    private static boolean isDescribed(BadInput bad) {
        String path = bad.path().replaceAll("[?].*", "");
        return OpenApi.operations().stream()
                .filter(o -> o.method().equals(bad.method()) && o.answers(path))
                .allMatch(o -> o.statuses().contains("" + bad.status()));
    }

    private static String sentence(BadInput bad, Got got) {
        assertEquals(bad.code(), got.json().path("code").textValue(), got::text);
        assertEquals(bad.status(), got.status());
        assertTrue(isDescribed(bad), bad + " is not described with " + bad.status());
        assertEquals("application/problem+json", got.header("Content-Type"));
        JsonNode problem = got.json();
        assertEquals(bad.status(), problem.path("status").intValue());
        assertEquals("/docs/problems#" + bad.code(), problem.path("type").textValue());
        assertFalse(problem.path("title").textValue().isEmpty());
        String detail = problem.path("detail").textValue();
        assertTrue(detail.matches("(?s).{15,}[.?].*"), "a sentence: " + detail);
        assertFalse(INSIDES.matcher(detail).find(), detail);
        assertFalse(detail.contains("{"), "no place is left open: " + detail);
        return detail;
    }
}
