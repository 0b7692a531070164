package sopwell.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import sopwell.desk.Replay;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;
import sopwell.web.RawScreen;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/** A stand that is backed up while guests order, lost, restored elsewhere, and goes on. */
@Timeout(120)
class BackupDrillTest {
    private static final int TILLS = 4;
    private static final int SCREENS = 10;
    private static final int PATIENCE_MILLIS = 20_000;
    private static final String ORDER = "{\"call\": \"2 beef dipped hot, fries\"}";

    @TempDir Path folder;
    @TempDir Path stick;
    @TempDir Path elsewhere;

    /** What each key was answered by the stand that was lost. */
    private final Map<String, JsonNode> answered = new ConcurrentHashMap<>();

    @BeforeEach
    void backUpToTheStick() throws IOException {
        String settings = new String(BackedUp.demo("stand.json"), StandardCharsets.UTF_8);
        String rule = "{\n  \"backup\": {\"folder\": \"" + stick + "\"},";
        Files.writeString(folder.resolve("stand.json"), settings.replaceFirst("\\{", rule));
        Files.write(folder.resolve("menu.json"), BackedUp.demo("menu.json"));
        Files.write(folder.resolve("recipes.json"), BackedUp.demo("recipes.json"));
    }

    @Test
    void aBackupTakenUnderLoadIsRestoredToWhatTheStandWasThen() throws Exception {
        try (StandServer stand = StandServer.over(folder)) {
            AtomicBoolean over = new AtomicBoolean();
            List<Thread> tills = tills(stand, over);
            awaitOrders(20);
            backUp(stand);
            int atBackup = answered.size();
            awaitOrders(atBackup + 20);
            over.set(true);
            for (Thread till : tills) {
                till.join();
            }
            stand.stop();

            long from = System.nanoTime();
            String said = restore(elsewhere.resolve("stand"), false);
            long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from);
            assertTrue(millis < 120_000, "it took " + millis + " ms");

            long seq = lastSeq(elsewhere.resolve("stand"));
            Fold then = foldAt(folder, seq);
            assertEquals(then, foldAt(elsewhere.resolve("stand"), seq), said);
            assertTrue(then.orders().size() >= 20, () -> then.orders().size() + " orders");
            assertTrue(seq < lastSeq(folder), "guests ordered on meanwhile");
        }
    }

    @Test
    void afterARestoreNoNumberIsGivenTwiceAndEveryKeyHasOneOrder() throws IOException {
        List<String> keys = new ArrayList<>();
        try (StandServer stand = StandServer.over(folder)) {
            place(stand, keys, 8);
            backUp(stand);
            place(stand, keys, 5);
        }
        Path fresh = elsewhere.resolve("stand");
        restore(fresh, false);
        try (StandServer stand = StandServer.over(fresh)) {
            // The counter's queue sends what it still has, in order: the last known, then the lost.
            List<JsonNode> sent = new ArrayList<>();
            for (int round = 0; round < 2; round++) {
                sent.clear();
                for (String key : keys) {
                    Got got = stand.post("/api/orders", key, ORDER);
                    assertEquals(201, got.status(), got.text());
                    sent.add(got.json());
                }
                for (int i = 0; i < 8; i++) {
                    assertEquals(answered.get(keys.get(i)), sent.get(i), "the first answer again");
                }
                assertEquals(keys.size(), orders(stand).size(), "each is there once");
            }
            JsonNode next = stand.place("fries");
            Set<String> ids = new HashSet<>(List.of(next.path("order").textValue()));
            Set<Integer> numbers = new HashSet<>(List.of(next.path("number").intValue()));
            for (JsonNode one : sent) {
                assertTrue(ids.add(one.path("order").textValue()), "an id twice: " + one);
                assertTrue(numbers.add(one.path("number").intValue()), "a number twice: " + one);
            }
            assertEquals(14, next.path("number").intValue(), "numbers go on");
        }
    }

    @Test
    void tenScreensWithLaterCursorsGetAWholeNewPictureAndTellWhatIsMissing() throws IOException {
        List<String> keys = new ArrayList<>();
        List<String> cursors = new ArrayList<>();
        long seen;
        String before = "";
        try (StandServer stand = StandServer.over(folder)) {
            place(stand, keys, 3);
            backUp(stand);
            place(stand, keys, 4);
            seen = stand.seq();
            for (int i = 0; i < SCREENS; i++) {
                try (RawScreen screen = RawScreen.at(stand.port(), board(i))) {
                    JsonNode frame = frame(screen);
                    before = frame.path("epoch").textValue();
                    assertEquals(seen, frame.path("seq").longValue());
                    cursors.add(before + ":" + seen);
                }
            }
        }
        Path fresh = elsewhere.resolve("stand");
        String said = restore(fresh, false);
        assertFalse(said.contains("missing"), "nobody knows yet: " + said);
        long kept = lastSeq(fresh);
        try (StandServer stand = StandServer.over(fresh)) {
            assertFalse(health(stand).has("missingToSeq"));
            long from = System.nanoTime();
            for (int i = 0; i < SCREENS; i++) {
                String board = board(i) + "?after=" + cursors.get(i);
                try (RawScreen screen = RawScreen.at(stand.port(), board)) {
                    JsonNode frame = frame(screen);
                    assertTrue(frame.path("whole").booleanValue());
                    assertNotEquals(before, frame.path("epoch").textValue());
                    assertTrue(frame.path("seq").longValue() < seen, "what was restored");
                    assertEquals(3, frame.path("rows").size(), frame.toString());
                }
            }
            long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from);
            assertTrue(millis < 5_000, "all of them took " + millis + " ms");
            awaitMissing(stand, seen);
            assertEquals(kept + 1, health(stand).path("missingFromSeq").longValue());
            String home = stand.get("/?lang=en").text();
            assertTrue(home.contains("events " + (kept + 1) + " to " + seen), home);
            String page = stand.get("/settings/backup?lang=es").text();
            assertTrue(page.contains("eventos " + (kept + 1) + " a " + seen), page);
            stand.restart();
            assertEquals(seen, health(stand).path("missingToSeq").longValue(), "it is kept");
        }
    }

    @Test
    void whatAScreenCannotHaveSeenIsNotBelieved() throws IOException {
        try (StandServer stand = StandServer.over(folder)) {
            place(stand, new ArrayList<>(), 3);
            backUp(stand);
        }
        Path fresh = elsewhere.resolve("stand");
        restore(fresh, false);
        String old;
        try (DataFolder data = DataFolder.look(fresh)) {
            old = data.restored().orElseThrow().epoch();
        }
        try (StandServer stand = StandServer.over(fresh)) {
            for (String after :
                    List.of(
                            "0123456789abcdef:999",
                            old + ":9000000000000",
                            old + ":-5",
                            old + ":99999999999999999999",
                            old,
                            ":",
                            "x".repeat(500) + ":7")) {
                try (RawScreen screen = RawScreen.at(stand.port(), "pass?after=" + after)) {
                    assertTrue(frame(screen).path("whole").booleanValue(), after);
                }
            }
            assertFalse(health(stand).has("missingToSeq"), () -> health(stand).toString());
        }
    }

    @Test
    void theNoteBesideALogThatCannotBeReadSaysWhatIsMissing() throws IOException {
        long seen;
        try (StandServer stand = StandServer.over(folder)) {
            place(stand, new ArrayList<>(), 3);
            backUp(stand);
            place(stand, new ArrayList<>(), 2);
            seen = stand.seq();
            stand.stop();
            Files.write(folder.resolve("log.sqlite"), new byte[4_096]);
            String said = restore(folder, true);
            assertTrue(said.contains(".." + seen + " are missing"), said);
        }
    }

    private List<Thread> tills(StandServer stand, AtomicBoolean over) {
        List<Thread> tills = new ArrayList<>();
        for (int i = 0; i < TILLS; i++) {
            Thread till =
                    new Thread(
                            () -> {
                                while (!over.get()) {
                                    String key = StandServer.key();
                                    Got got = stand.post("/api/orders", key, ORDER);
                                    if (got.status() == 201) {
                                        answered.put(key, got.json());
                                    }
                                }
                            },
                            "till " + i);
            till.start();
            tills.add(till);
        }
        return tills;
    }

    private void awaitOrders(int many) throws InterruptedException {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        while (answered.size() < many && System.nanoTime() < until) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertTrue(answered.size() >= many, answered.size() + " orders");
    }

    private void place(StandServer stand, List<String> keys, int many) {
        for (int i = 0; i < many; i++) {
            String key = StandServer.key();
            Got got = stand.post("/api/orders", key, ORDER);
            assertEquals(201, got.status(), got.text());
            answered.put(key, got.json());
            keys.add(key);
        }
    }

    /** The press on the page; it is answered when the backup is there. */
    private void backUp(StandServer stand) throws IOException {
        Got got =
                stand.send(
                        stand.request("/settings/backup")
                                .header("Origin", stand.uri("").toString())
                                .POST(BodyPublishers.noBody())
                                .build());
        assertEquals(303, got.status(), got.text());
        assertEquals(1, backups().size(), () -> health(stand).toString());
    }

    private List<Path> backups() throws IOException {
        try (Stream<Path> all = Files.list(stick)) {
            return all.filter(file -> file.toString().endsWith(".backup")).toList();
        }
    }

    private String restore(Path to, boolean replace) throws IOException {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        new Restore(backups().get(0), to, InstantSource.system(), out).run(replace);
        return said.toString(StandardCharsets.UTF_8);
    }

    private static Fold foldAt(Path data, long seq) {
        try (DataFolder looked = DataFolder.look(data);
                SqliteLog log = looked.openLog("millrace")) {
            return Fold.of(Replay.at(log, BackedUp.settings(), seq, event -> {}));
        }
    }

    private static long lastSeq(Path data) {
        try (DataFolder looked = DataFolder.look(data);
                SqliteLog log = looked.openLog("millrace")) {
            return log.lastSeq();
        }
    }

    private static Map<String, JsonNode> orders(StandServer stand) {
        Map<String, JsonNode> orders = new TreeMap<>();
        stand.get("/api/orders")
                .json()
                .path("orders")
                .forEach(order -> orders.put(order.path("order").textValue(), order));
        return orders;
    }

    private static JsonNode health(StandServer stand) {
        return stand.get("/healthz").json().path("restored");
    }

    private static void awaitMissing(StandServer stand, long seen) {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(5);
        while (health(stand).path("missingToSeq").longValue() < seen && System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        assertEquals(seen, health(stand).path("missingToSeq").longValue());
    }

    private static String board(int screen) {
        return screen % 2 == 0 ? "pass" : "line";
    }

    private static JsonNode frame(RawScreen screen) throws IOException {
        JsonNode frame = screen.nextFrame(PATIENCE_MILLIS);
        assertNotNull(frame, "a picture");
        return frame;
    }
}
