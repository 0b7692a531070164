package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.web.RawScreen;
import sopwell.web.RawScreen.Manner;
import sopwell.web.Seen;
import sopwell.web.StandServer;

/** Two hundred screens, some of which read nothing: all the others get every change. */
class ManyScreensTest {
    private static final int SOON = 20_000;
    private static final int SCREENS = 200;
    private static final int STUCK = 8;
    private static final int ORDERS = 12;
    private static final List<String> BOARDS = List.of("line", "drinks", "pass", "counter");

    /** A few of its boards are more than a connection takes that nobody reads from. */
    private static final String BIG =
            "combo dipped hot sweet prov mozz extra, ".repeat(39) + "fries";

    private StandServer stand;
    private final List<RawScreen> open = new ArrayList<>();

    @BeforeEach
    void openStand() {
        stand = StandServer.fresh();
    }

    @AfterEach
    void closeAll() throws IOException {
        for (RawScreen screen : open) {
            screen.close();
        }
        stand.close();
    }

    @Test
    void eachGetsEveryChangeOfItsBoardThoughOthersAreStuck() throws IOException {
        stand.place(BIG);
        List<RawScreen> readers = new ArrayList<>();
        List<Seen> seen = new ArrayList<>();
        for (int i = 0; i < STUCK; i++) {
            open.add(
                    new RawScreen(stand.port(), "/ws/boards/" + board(i), Manner.json().cramped()));
        }
        for (int i = 0; i < SCREENS; i++) {
            RawScreen screen = RawScreen.at(stand.port(), board(i));
            open.add(screen);
            readers.add(screen);
            seen.add(new Seen());
            seen.get(i).take(screen.nextFrame(SOON));
        }
        for (int order = 0; order < ORDERS; order++) {
            stand.place("beef dipped, cola");
            for (int stuck = 0; stuck < STUCK; stuck++) {
                open.get(stuck).say("whole");
            }
        }
        for (int i = 0; i < SCREENS; i++) {
            JsonNode whole = stand.get("/api/boards/" + board(i)).json();
            while (seen.get(i).seq() < whole.path("seq").longValue()) {
                seen.get(i).take(readers.get(i).nextFrame(SOON));
            }
            assertEquals(Seen.board(whole), seen.get(i).board());
        }
    }

    private static String board(int place) {
        return BOARDS.get(place % BOARDS.size());
    }
}
