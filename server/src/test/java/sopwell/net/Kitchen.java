package sopwell.net;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.UUID;

/** Hands at the server itself, over a sound link: orders come, and the oldest are worked off. */
final class Kitchen {
    private static final String[] CALLS = {
        "beef dipped hot, fries", "2 beef dry", "combo dipped both, cola", "fries"
    };

    private final Api api;
    private final int openMax;
    private final Deque<String> open = new ArrayDeque<>();
    private int placed;

    Kitchen(Api api, int openMax) {
        this.api = api;
        this.openMax = openMax;
    }

    /** One more order; when there are too many, the oldest is worked off. */
    void next() throws IOException {
        String call = CALLS[placed++ % CALLS.length];
        JsonNode order = done("/api/orders", "{\"call\": \"" + call + "\"}");
        open.add(order.path("order").textValue());
        if (open.size() > openMax) {
            workOff(open.remove());
        }
    }

    /** How many orders it placed. */
    int placed() {
        return placed;
    }

    /** Puts up all parts of an order and hands it over. */
    void workOff(String order) throws IOException {
        List<JsonNode> grillFirst = new ArrayList<>();
        api.get("/api/orders/" + order).path("parts").forEach(grillFirst::add);
        grillFirst.sort(Comparator.comparing(part -> part.path("station").textValue()));
        for (JsonNode part : grillFirst) {
            done("/api/parts/" + part.path("part").textValue() + "/up", "");
        }
        done("/api/orders/" + order + "/handed", "");
    }

    private JsonNode done(String path, String json) throws IOException {
        Api.Heard heard = api.post(path, UUID.randomUUID().toString(), json);
        if (!heard.isDone()) {
            throw new IOException(path + ": " + heard);
        }
        return heard.json();
    }
}
