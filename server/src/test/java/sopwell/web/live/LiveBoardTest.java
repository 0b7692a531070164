package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.web.RawScreen;
import sopwell.web.RawScreen.Manner;
import sopwell.web.Seen;
import sopwell.web.StandServer;

/** What a program at a board's socket gets, frame by frame. */
class LiveBoardTest {
    private static final int SOON = 10_000;
    private static final int QUIET = 700;

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
    void beginsWithTheWholeBoard() throws IOException {
        stand.place("beef dipped");
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            assertTrue(screen.answer().contains(RawScreen.JSON), screen.answer());
            JsonNode whole = screen.nextFrame(SOON);
            assertTrue(whole.path("whole").booleanValue(), whole::toString);
            assertEquals("line", whole.path("board").textValue());
            assertEquals(stand.seq(), whole.path("seq").longValue());
            assertEquals(1, whole.path("rows").size());
            JsonNode asked = stand.get("/api/boards/line").json();
            assertEquals(asked.path("rows"), whole.path("rows"));
            assertEquals(asked.path("epoch"), whole.path("epoch"));
        }
    }

    @Test
    void sendsOnlyTheRowsThatChanged() throws IOException {
        JsonNode first = stand.place("beef dipped");
        stand.place("beef dry");
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            JsonNode whole = screen.nextFrame(SOON);
            assertEquals(2, whole.path("rows").size());
            String part = first.path("order").textValue() + ".1.line";
            stand.post("/api/parts/" + part + "/started", "");
            JsonNode change = screen.nextFrame(SOON);
            assertEquals(false, change.path("whole").booleanValue());
            assertEquals(whole.path("seq"), change.path("prev"));
            assertEquals(stand.seq(), change.path("seq").longValue());
            assertEquals(1, change.path("rows").size());
            assertEquals(part, change.at("/rows/0/row").textValue());
            assertTrue(change.at("/rows/0/started").booleanValue());
            assertEquals(2, change.path("order").size());
        }
    }

    @Test
    void staysSilentWhenNothingOnTheBoardChanges() throws IOException {
        try (RawScreen screen = RawScreen.at(stand.port(), "grill")) {
            assertNotNull(screen.nextFrame(SOON));
            stand.place("beef dipped");
            assertNull(screen.nextFrame(QUIET));
        }
    }

    @Test
    void showsTheSameByFramesAsByAsking() throws IOException {
        Seen seen = new Seen();
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            seen.take(screen.nextFrame(SOON));
            for (int i = 0; i < 30; i++) {
                String id =
                        stand.place(i % 2 == 0 ? "2 beef hot" : "combo dry prov")
                                .path("order")
                                .textValue();
                String part = "/api/parts/" + id + ".1.line";
                if (i % 3 == 0) {
                    stand.post(part + "/started", "");
                    stand.post(
                            "/api/orders/" + id + "/changes",
                            "{\"version\": 1, \"call\": \"beef wet\"}");
                }
                if (i % 5 == 0) {
                    stand.post(part + "/seen", "");
                    stand.post(part + "/up", "");
                }
            }
            JsonNode whole = stand.get("/api/boards/line").json();
            while (seen.seq() < whole.path("seq").longValue()) {
                seen.take(screen.nextFrame(SOON));
            }
            assertEquals(Seen.board(whole), seen.board());
        }
    }

    @Test
    void sendsTheWholeBoardWhenAsked() throws IOException {
        stand.place("beef");
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            JsonNode first = screen.nextFrame(SOON);
            screen.say("whole");
            JsonNode again = screen.nextFrame(SOON);
            assertTrue(again.path("whole").booleanValue());
            assertEquals(first.path("rows"), again.path("rows"));
            screen.say("anything else");
            assertNull(screen.nextFrame(QUIET));
        }
    }

    @Test
    void sendsTwoScreensOfOneBoardTheSameFrames() throws IOException {
        try (RawScreen one = RawScreen.at(stand.port(), "pass");
                RawScreen other = RawScreen.at(stand.port(), "pass")) {
            one.nextFrame(SOON);
            other.nextFrame(SOON);
            for (int i = 0; i < 5; i++) {
                stand.place("beef, fries");
                JsonNode frame = one.nextFrame(SOON);
                assertEquals(frame, other.nextFrame(SOON));
                assertEquals(1, frame.path("rows").size());
            }
        }
    }

    @Test
    void saysThatItIsAliveAndHowFarTheLogIs() throws IOException {
        try (RawScreen screen = RawScreen.at(stand.port(), "counter")) {
            screen.nextFrame(SOON);
            String beat = screen.next(SOON);
            assertEquals(stand.seq(), StandServer.tree(beat).path("beat").longValue(), beat);
            assertTrue(beat.contains("\"now\":\""), beat);
        }
    }

    @Test
    void sendsScreensWithoutTheSubprotocolHtml() throws IOException {
        try (RawScreen screen = new RawScreen(stand.port(), "/ws/boards/line", new Manner("", 0))) {
            assertTrue(screen.answer().startsWith("HTTP/1.1 101 "), screen.answer());
            String first = screen.next(SOON);
            assertTrue(first.startsWith("<") && first.contains("data-prev=\"0\""), first);
        }
    }

    @Test
    void closesABoardThatThereIsNot() throws IOException {
        try (RawScreen screen = RawScreen.at(stand.port(), "roof")) {
            assertNull(screen.next(SOON));
            assertEquals(1008, screen.closeCode());
        }
    }

    @Test
    void tellsScreensToComeBackWhenItStops() throws IOException {
        try (RawScreen one = RawScreen.at(stand.port(), "line");
                RawScreen other = RawScreen.at(stand.port(), "pass")) {
            one.nextFrame(SOON);
            other.nextFrame(SOON);
            stand.stop();
            String left;
            do {
                left = one.next(SOON) == null ? other.next(SOON) : "one had something left";
            } while (left != null);
            assertEquals(1012, one.closeCode());
            assertEquals(1012, other.closeCode());
        }
    }

    @Test
    void countsTheScreensThatAreThere() throws IOException, InterruptedException {
        try (RawScreen screen = RawScreen.at(stand.port(), "line")) {
            screen.nextFrame(SOON);
            assertEquals(1, stand.get("/healthz").json().path("screens").intValue());
        }
        for (int i = 0; i < 100 && screens() > 0; i++) {
            Thread.sleep(50);
        }
        assertEquals(0, screens());
    }

    private int screens() {
        return stand.get("/healthz").json().path("screens").intValue();
    }
}
