package sopwell.web.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;

/** Two screens of one station show the same, and at the same moment. */
class TwoScreensTest {
    private static final int ORDERS = 40;
    private static final long APART_MS_MAX = 100;

    /** What arrived, and when. */
    private record Arrival(long seq, long nanos) {}

    /** A screen that notes the moment of every frame. */
    private static final class Noting implements WebSocket.Listener {
        private final LinkedBlockingQueue<Arrival> arrivals = new LinkedBlockingQueue<>();
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                long nanos = System.nanoTime();
                if (text.indexOf("{\"board\"") == 0) {
                    long seq = StandServer.tree(text.toString()).path("seq").longValue();
                    arrivals.add(new Arrival(seq, nanos));
                }
                text.setLength(0);
            }
            socket.request(1);
            return null;
        }

        Arrival next() throws InterruptedException {
            Arrival next = arrivals.poll(10, TimeUnit.SECONDS);
            assertTrue(next != null, "a frame came");
            return next;
        }
    }

    @Test
    void twoScreensOfAStationAgreeWithinATenthOfASecond() throws Exception {
        try (StandServer stand = StandServer.fresh()) {
            Noting left = new Noting();
            Noting right = new Noting();
            WebSocket one = open(stand, left);
            WebSocket other = open(stand, right);
            left.next();
            right.next();
            List<Long> apartMs = new ArrayList<>();
            for (int n = 0; n < ORDERS; n++) {
                stand.place(n % 2 == 0 ? "2 beef dipped hot" : "beef, beef dry sweet");
                Arrival here = left.next();
                Arrival there = right.next();
                assertEquals(here.seq(), there.seq(), "both show the same");
                apartMs.add(TimeUnit.NANOSECONDS.toMillis(Math.abs(here.nanos() - there.nanos())));
            }
            apartMs.sort(null);
            long most = apartMs.get(ORDERS - 1);
            assertTrue(most <= APART_MS_MAX, "up to " + most + " ms apart: " + apartMs);
            one.abort();
            other.abort();
        }
    }

    private static WebSocket open(StandServer stand, Noting screen) {
        return HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .subprotocols("sopwell.json.v1")
                .buildAsync(
                        URI.create("ws://127.0.0.1:" + stand.port() + "/ws/boards/line"), screen)
                .join();
    }
}
