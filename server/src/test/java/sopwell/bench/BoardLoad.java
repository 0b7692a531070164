package sopwell.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.UUID;

/** Orders that come to a stand and go again, with never more than a few open. Not thread-safe. */
public final class BoardLoad {
    private static final String[] CALLS = {
        "2 beef dipped hot, beef dry provolone sweet",
        "beef, beef, beef dry hot",
        "combo dipped hot",
        "3 beef wet, sausage sweet"
    };
    private static final int OPEN = 12;

    private final HttpClient http = HttpClient.newHttpClient();
    private final ObjectMapper json = new ObjectMapper();
    private final String address;
    private final Deque<JsonNode> open = new ArrayDeque<>();
    private int placed;

    /** Load for the stand at an address. */
    public BoardLoad(String address) {
        this.address = address;
    }

    /** One order more. */
    public void place(String call) throws IOException, InterruptedException {
        open.add(post("/api/orders", "{\"call\": \"" + call + "\"}", 201));
    }

    /** So many of the oldest leave. */
    public void finish(int orders) throws IOException, InterruptedException {
        for (int n = 0; n < orders; n++) {
            finish(open.poll());
        }
    }

    /** So many orders more; the oldest ones leave as the new ones come. */
    public void run(int orders) throws IOException, InterruptedException {
        for (int n = 0; n < orders; n++) {
            place(CALLS[placed++ % CALLS.length]);
            if (open.size() > OPEN) {
                finish(open.poll());
            }
        }
    }

    /** Everything that is open leaves. */
    public void finishAll() throws IOException, InterruptedException {
        while (!open.isEmpty()) {
            finish(open.poll());
        }
    }

    /** What goes into another part first, then the rest, then into the guest's hand. */
    private void finish(JsonNode order) throws IOException, InterruptedException {
        String id = order.path("order").textValue();
        for (String station : new String[] {"grill", "line"}) {
            for (JsonNode line : order.path("lines")) {
                String item = line.path("item").textValue();
                boolean grilled = item.equals("combo") || item.equals("sausage");
                if (station.equals("line") || grilled) {
                    String part = id + "." + line.path("line").intValue() + "." + station;
                    post("/api/parts/" + part + "/up", "", 200);
                }
            }
        }
        post("/api/orders/" + id + "/handed", "", 200);
    }

    private JsonNode post(String path, String body, int status)
            throws IOException, InterruptedException {
        HttpResponse<byte[]> answer =
                http.send(
                        HttpRequest.newBuilder(URI.create(address + path))
                                .header("Content-Type", "application/json")
                                .header("Idempotency-Key", UUID.randomUUID().toString())
                                .POST(HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        if (answer.statusCode() != status) {
            throw new IllegalStateException(
                    path + ": " + new String(answer.body(), StandardCharsets.UTF_8));
        }
        return json.readTree(answer.body());
    }
}
