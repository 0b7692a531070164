package sopwell.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** How long an order takes from the counter's post to another screen's frame. */
final class FrameTimes {
    private final LinkedBlockingQueue<Long> arrivals = new LinkedBlockingQueue<>();

    /**
     * Posts orders at an even pace, one thing each so that every order is one row, and takes each
     * off the board again so that the next one is in sight.
     */
    static Times measure(int port, int perSecond, int orders)
            throws IOException, InterruptedException {
        FrameTimes frames = new FrameTimes();
        URI uri = URI.create("ws://127.0.0.1:" + port + "/ws/boards/drinks");
        WebSocket socket =
                HttpClient.newHttpClient()
                        .newWebSocketBuilder()
                        .subprotocols("sopwell.json.v1")
                        .buildAsync(uri, frames.new Listener())
                        .join();
        frames.next();
        List<Long> nanos = Collections.synchronizedList(new ArrayList<>());
        long pace = TimeUnit.SECONDS.toNanos(1) / perSecond;
        try (RawClient client = new RawClient(port)) {
            long due = System.nanoTime();
            for (int i = 0; i < orders; i++) {
                due += pace;
                TimeUnit.NANOSECONDS.sleep(Math.max(0, due - System.nanoTime()));
                long sent = System.nanoTime();
                int status = client.post("/api/orders", "frame-" + i, "{\"call\": \"cola\"}");
                if (status != 201) {
                    throw new IllegalStateException("not placed: " + status);
                }
                nanos.add(frames.next() - sent);
            }
        }
        socket.abort();
        return Times.ofNanos(nanos);
    }

    /** When the next frame came. */
    private long next() throws InterruptedException {
        Long at = arrivals.poll(5, TimeUnit.SECONDS);
        if (at == null) {
            throw new IllegalStateException("no frame came within 5 s");
        }
        return at;
    }

    private final class Listener implements WebSocket.Listener {
        private boolean beat;
        private boolean begun;

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            if (!begun) {
                beat = data.toString().startsWith("beat") || data.toString().startsWith("{\"beat");
            }
            begun = !last;
            if (last && !beat) {
                arrivals.add(System.nanoTime());
            }
            socket.request(1);
            return null;
        }
    }
}
