package sopwell.crash;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.Set;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/** A screen that remembers every order it was ever shown. Thread-safe. */
final class Watcher implements WebSocket.Listener {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final Set<String> seen = ConcurrentHashMap.newKeySet();
    private final AtomicInteger frames = new AtomicInteger();
    private final StringBuilder text = new StringBuilder();

    /** Connects to the line's board; the connection ends with the server. */
    void watch(String address) {
        URI uri = URI.create(address.replace("http", "ws") + "/ws/boards/line");
        try {
            client.newWebSocketBuilder()
                    .subprotocols("sopwell.json.v1")
                    .buildAsync(uri, this)
                    .join();
        } catch (CompletionException killedMeanwhile) {
            return;
        }
    }

    Set<String> seen() {
        return seen;
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
                rows.forEach(row -> seen.add(row.get("order").textValue()));
            }
        } catch (JsonProcessingException notJson) {
            throw new IllegalStateException(frame, notJson);
        }
    }
}
