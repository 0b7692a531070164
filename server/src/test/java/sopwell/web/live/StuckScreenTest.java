package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.web.RawScreen;
import sopwell.web.RawScreen.Manner;
import sopwell.web.Seen;
import sopwell.web.StandServer;

/** A screen that stops reading harms nobody else and is cut off. */
class StuckScreenTest {
    private static final int SOON = 10_000;
    private static final int STUCK_SCREENS = 5;
    private static final int ORDERS = 400;

    /** Generous for a busy machine; a screen that blocked the desk would hold it for seconds. */
    private static final long POST_MILLIS_P99_MAX = 1_000;

    /** Forty thousand boards would keep the follower busy for many times as long. */
    private static final long ANSWER_MILLIS_MAX = 1_000;

    private static final long FRAME_MILLIS_MAX = 2_000;
    private static final long HEAP_BYTES_MAX = 24L * 1_048_576;

    /** Forty screens with a frame of some ten thousand bytes each, and what else moves. */
    private static final long OUTBOXES_BYTES_MAX = 16L * 1_048_576;

    private StandServer stand;

    @BeforeEach
    void open() {
        stand = StandServer.fresh();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void delaysNeitherTheDeskNorOtherScreensAndIsCutOff() throws IOException {
        fillTheBoards();
        List<RawScreen> stuck = new ArrayList<>();
        try (RawScreen healthy = RawScreen.at(stand.port(), "counter")) {
            healthy.nextFrame(SOON);
            for (int i = 0; i < STUCK_SCREENS; i++) {
                stuck.add(stuck("line"));
            }
            long heapBefore = usedHeapBytes();
            long[] postNanos = new long[ORDERS];
            long worstFrameNanos = 0;
            for (int i = 0; i < ORDERS; i++) {
                long from = System.nanoTime();
                stand.place("beef dipped");
                long answered = System.nanoTime();
                postNanos[i] = answered - from;
                healthy.nextFrame(SOON);
                worstFrameNanos = Math.max(worstFrameNanos, System.nanoTime() - answered);
                if (i % 20 == 0) {
                    askAll(stuck);
                }
            }
            long heap = usedHeapBytes() - heapBefore;
            Arrays.sort(postNanos);
            long p99 = TimeUnit.NANOSECONDS.toMillis(postNanos[ORDERS * 99 / 100]);
            long frame = TimeUnit.NANOSECONDS.toMillis(worstFrameNanos);
            String figures = "POST p99 " + p99 + " ms, worst frame " + frame + " ms, heap " + heap;
            assertTrue(p99 <= POST_MILLIS_P99_MAX, figures);
            assertTrue(frame <= FRAME_MILLIS_MAX, figures);
            assertTrue(heap <= HEAP_BYTES_MAX, figures);
            assertEquals(1, screensAfterTheSendTimeout(), figures);
        } finally {
            for (RawScreen screen : stuck) {
                screen.close();
            }
        }
    }

    @Test
    void givesAScreenThatReadsAgainTheWholeBoard() throws IOException, InterruptedException {
        fillTheBoards();
        Seen seen = new Seen();
        try (RawScreen screen = stuck("line")) {
            Thread.sleep(300);
            askAll(List.of(screen));
            for (int i = 0; i < 30; i++) {
                stand.place("beef dry");
            }
            Thread.sleep(500);
            JsonNode whole = stand.get("/api/boards/line").json();
            while (seen.seq() < whole.path("seq").longValue()) {
                seen.take(screen.nextFrame(SOON));
            }
            assertTrue(seen.wholes() >= 2, "it missed some and got the whole board instead");
            assertEquals(Seen.board(whole), seen.board());
        }
    }

    @Test
    void keepsOneFrameForAScreenThatDoesNotRead() throws IOException {
        String big = "combo dipped hot sweet prov mozz extra, ".repeat(39) + "fries";
        String part = stand.place(big).path("order").textValue() + ".40.fryer";
        List<RawScreen> stuck = new ArrayList<>();
        try {
            for (int i = 0; i < 40; i++) {
                stuck.add(stuck("pass"));
            }
            long heapBefore = usedHeapBytes();
            for (int i = 0; i < 50; i++) {
                stand.post("/api/parts/" + part + "/up", "");
                stand.post("/api/parts/" + part + "/brought-back", "");
            }
            long heap = usedHeapBytes() - heapBefore;
            assertTrue(heap <= OUTBOXES_BYTES_MAX, "heap " + heap);
        } finally {
            for (RawScreen screen : stuck) {
                screen.close();
            }
        }
    }

    @Test
    void drawsOneBoardHoweverOftenAScreenAsks() throws IOException, InterruptedException {
        fillTheBoards();
        try (RawScreen screen = stuck("line")) {
            Thread.sleep(300);
            for (int i = 0; i < 400; i++) {
                askAll(List.of(screen));
            }
            long from = System.nanoTime();
            assertEquals(200, stand.get("/healthz").status());
            long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - from);
            assertTrue(millis <= ANSWER_MILLIS_MAX, "the follower was busy for " + millis + " ms");
        }
    }

    /** As many rows as a board shows. */
    private void fillTheBoards() {
        for (int i = 0; i < 40; i++) {
            stand.place("9 combo dipped hot sweet prov mozz extra, fries");
        }
    }

    /** A screen with a full board, hardly any room, and nobody who reads. */
    private RawScreen stuck(String board) throws IOException {
        RawScreen screen =
                new RawScreen(stand.port(), "/ws/boards/" + board, Manner.json().cramped());
        assertTrue(screen.answer().startsWith("HTTP/1.1 101 "), screen.answer());
        return screen;
    }

    /** Asks for many more whole boards than any system keeps for a reader who does not read. */
    private static void askAll(List<RawScreen> stuck) {
        for (RawScreen screen : stuck) {
            try {
                for (int i = 0; i < 100; i++) {
                    screen.say("whole");
                }
            } catch (IOException cutOff) {
                assertTrue(cutOff instanceof java.net.SocketException, cutOff::toString);
            }
        }
    }

    private int screensAfterTheSendTimeout() {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(12);
        int screens = screens();
        while (screens > 1 && System.nanoTime() < until) {
            sleepABit();
            screens = screens();
        }
        return screens;
    }

    private static void sleepABit() {
        try {
            Thread.sleep(100);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    private int screens() {
        return stand.get("/healthz").json().path("screens").intValue();
    }

    private static long usedHeapBytes() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
