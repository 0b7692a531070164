package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** A change may be sent again under its key as often as one likes: it is done once. */
class RepeatTest {
    private static final String CALL = "{\"call\": \"2 beef dipped hot\", \"name\": \"Ines\"}";

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
    void givesARepeatTheFirstAnswerByteForByte() {
        String key = StandServer.key();
        Got first = stand.post("/api/orders", key, CALL);
        long seq = stand.seq();
        Got again = stand.post("/api/orders", key, CALL);
        assertEquals(201, first.status(), first::text);
        assertEquals("", first.header("Idempotent-Replayed"));
        assertEquals(201, again.status());
        assertEquals("true", again.header("Idempotent-Replayed"));
        assertArrayEquals(first.response().body(), again.response().body());
        assertEquals(seq, stand.seq());
    }

    @Test
    void givesTheFirstAnswerAlsoAfterARestart() {
        String key = StandServer.key();
        Got first = stand.post("/api/orders", key, CALL);
        String id = first.json().path("order").textValue();
        String voidKey = StandServer.key();
        String path = "/api/orders/" + id + "/voids";
        Got gone = stand.post(path, voidKey, "{\"reason\": \"left\"}");
        stand.restart();
        long seq = stand.seq();
        Got again = stand.post("/api/orders", key, CALL);
        assertEquals(201, again.status());
        assertArrayEquals(first.response().body(), again.response().body());
        Got goneAgain = stand.post(path, voidKey, "{\"reason\": \"left\"}");
        assertArrayEquals(gone.response().body(), goneAgain.response().body());
        assertEquals(seq, stand.seq());
    }

    @Test
    void givesTheFirstAnswerAlsoWhenTheMenuCannotReadTheCallAnyMore() {
        String key = StandServer.key();
        Got first = stand.post("/api/orders", key, "{\"call\": \"jus bread\"}");
        assertEquals(201, first.status(), first::text);
        stand.restart(menu -> menu.replace("\"jus bread", "\"gravy bread"));
        try {
            Got unknown = stand.post("/api/orders", "{\"call\": \"jus bread\"}");
            assertEquals(422, unknown.status(), unknown::text);
            Got again = stand.post("/api/orders", key, "{\"call\": \"jus bread\"}");
            assertEquals("true", again.header("Idempotent-Replayed"), again::text);
            assertEquals(first.json().path("totalCents"), again.json().path("totalCents"));
            assertArrayEquals(first.response().body(), again.response().body());
            Got other = stand.post("/api/orders", key, "{\"call\": \"jus bread, fries\"}");
            assertEquals("key-reused", other.json().path("code").textValue());
        } finally {
            stand.restart(menu -> menu.replace("\"gravy bread", "\"jus bread"));
        }
    }

    @Test
    void repeatsEveryKindOfChange() {
        JsonNode order = stand.place("beef");
        String id = order.path("order").textValue();
        repeats("/api/orders/" + id + "/changes", "{\"version\": 1, \"call\": \"beef dry\"}");
        for (JsonNode part : stand.get("/api/orders/" + id).json().path("parts")) {
            String path = "/api/parts/" + part.path("part").textValue();
            if (part.path("unseen").booleanValue()) {
                repeats(path + "/seen", "");
            }
            repeats(path + "/started", "");
            repeats(path + "/up", "");
            repeats(path + "/brought-back", "");
            repeats(path + "/up", "");
        }
        repeats("/api/orders/" + id + "/handed", "");
        repeats("/api/orders/" + id + "/brought-back", "");
    }

    @Test
    void refusesAKeyThatStandsForAnotherRequest() {
        String key = StandServer.key();
        assertEquals(201, stand.post("/api/orders", key, CALL).status());
        long seq = stand.seq();
        Got other = stand.post("/api/orders", key, "{\"call\": \"fries\"}");
        assertEquals(422, other.status());
        assertEquals("key-reused", other.json().path("code").textValue());
        Got unreadable = stand.post("/api/orders", key, "{\"call\": \"gravel\"}");
        assertEquals("key-reused", unreadable.json().path("code").textValue());
        Got elsewhere = stand.post("/api/days/opened", key, "");
        assertEquals("key-reused", elsewhere.json().path("code").textValue());
        assertEquals(seq, stand.seq());
    }

    @Test
    void mayUseTheKeyOfARefusalAgain() {
        String key = StandServer.key();
        assertEquals(422, stand.post("/api/orders", key, "{\"call\": \"gravel\"}").status());
        assertEquals(201, stand.post("/api/orders", key, CALL).status());
    }

    @Test
    void takesAKeyInQuotesAsTheSameKey() {
        String key = StandServer.key();
        Got bare = stand.post("/api/orders", key, CALL);
        Got quoted = stand.post("/api/orders", "\"" + key + "\"", CALL);
        assertArrayEquals(bare.response().body(), quoted.response().body());
    }

    @Test
    void makesOneOrderOfFiftyPostsAtOnce() {
        String key = StandServer.key();
        int before = stand.get("/api/orders").json().path("of").intValue();
        ExecutorService senders = Executors.newFixedThreadPool(50);
        HttpRequest request =
                stand.request("/api/orders")
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", key)
                        .POST(BodyPublishers.ofString(CALL))
                        .build();
        List<CompletableFuture<Got>> sent =
                IntStream.range(0, 50)
                        .mapToObj(
                                i ->
                                        CompletableFuture.supplyAsync(
                                                () -> stand.send(request), senders))
                        .toList();
        Set<String> bodies = new HashSet<>();
        Set<Integer> statuses = new HashSet<>();
        int firsts = 0;
        for (CompletableFuture<Got> one : sent) {
            Got got = one.join();
            bodies.add(got.text());
            statuses.add(got.status());
            firsts += got.header("Idempotent-Replayed").isEmpty() ? 1 : 0;
        }
        senders.shutdown();
        assertEquals(Set.of(201), statuses);
        assertEquals(1, bodies.size(), bodies::toString);
        assertEquals(1, firsts);
        assertEquals(before + 1, stand.get("/api/orders").json().path("of").intValue());
    }

    private static void repeats(String path, String body) {
        String key = StandServer.key();
        Got first = stand.post(path, key, body);
        assertEquals(200, first.status(), first::text);
        long seq = stand.seq();
        Got again = stand.post(path, key, body);
        assertEquals("true", again.header("Idempotent-Replayed"), path);
        assertArrayEquals(first.response().body(), again.response().body(), path);
        assertEquals(seq, stand.seq(), path);
    }
}
