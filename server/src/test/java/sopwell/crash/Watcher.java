package sopwell.crash;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicInteger;
import sopwell.crash.History.Named;
import sopwell.crash.History.Sight;

/** A screen that tells the history of every order it was shown. Thread-safe. */
final class Watcher implements WebSocket.Listener {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final String board;
    private final History history;
    private final AtomicInteger frames = new AtomicInteger();
    private final StringBuilder text = new StringBuilder();

    Watcher(String board, History history) {
        this.board = board;
        this.history = history;
    }

    /** Connects to its board; the connection ends with the server. */
    void watch(String address) {
        URI uri = URI.create(address.replace("http", "ws") + "/ws/boards/" + board);
        try {
            client.newWebSocketBuilder()
                    .subprotocols("sopwell.json.v1")
                    .buildAsync(uri, this)
                    .join();
        } catch (CompletionException killedMeanwhile) {
            return;
        }
    }

    int frames() {
        return frames.get();
    }

    @Override
    public void onOpen(WebSocket socket) {
        text.setLength(0);
        socket.request(1);
    }

    @Override
    public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
        text.append(data);
        if (last) {
            take(text.toString());
            text.setLength(0);
        }
        socket.request(1);
        return null;
    }

    private void take(String frame) {
        try {
            JsonNode rows = MAPPER.readTree(frame).get("rows");
            if (rows != null) {
                frames.incrementAndGet();
                long nowNanos = System.nanoTime();
                rows.forEach(row -> history.saw(new Sight(nowNanos, named(row))));
            }
        } catch (JsonProcessingException notJson) {
            throw new IllegalStateException(frame, notJson);
        }
    }

    private static Named named(JsonNode row) {
        return new Named(row.get("order").textValue(), row.get("number").intValue());
    }
}
