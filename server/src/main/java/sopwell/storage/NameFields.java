package sopwell.storage;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import sopwell.log.LogFault;
import sopwell.log.Renaming;
import sopwell.log.Renaming.Place;

/** Where in events' written forms people may be named, and how that is replaced. Stateless. */
final class NameFields {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final Map<String, Place> CASHIER = Map.of("cashier", Place.STAFF);
    private static final Map<String, Place> REASON = Map.of("reason", Place.WORDS);
    private static final Map<String, Place> TEXT = Map.of("text", Place.WORDS);
    private static final Map<String, Place> NOTE = Map.of("note", Place.WORDS);
    private static final Map<String, Place> MOVED =
            Map.of("cashier", Place.STAFF, "reason", Place.WORDS);

    private static final Map<EventName, Map<String, Place>> TABLE =
            Map.ofEntries(
                    Map.entry(EventName.ORDER_PLACED, Map.of("name", Place.GUEST)),
                    Map.entry(
                            EventName.ORDER_CHANGED,
                            Map.of("name", Place.GUEST, "reason", Place.WORDS)),
                    Map.entry(EventName.ORDER_DISCOUNTED, REASON),
                    Map.entry(EventName.ORDER_VOIDED, REASON),
                    Map.entry(EventName.DAY_REOPENED, REASON),
                    Map.entry(EventName.ORDER_PAID, CASHIER),
                    Map.entry(EventName.ORDER_REFUNDED, MOVED),
                    Map.entry(EventName.TILL_OPENED, CASHIER),
                    Map.entry(EventName.TILL_PAID_IN, MOVED),
                    Map.entry(EventName.TILL_PAID_OUT, MOVED),
                    Map.entry(EventName.TILL_CLOSED, CASHIER),
                    Map.entry(EventName.QUERY_ASKED, TEXT),
                    Map.entry(EventName.QUERY_ANSWERED, TEXT),
                    Map.entry(EventName.PART_REMADE, TEXT),
                    Map.entry(EventName.INGREDIENT_WASTED, REASON),
                    Map.entry(EventName.INGREDIENT_DELIVERED, NOTE),
                    Map.entry(EventName.BATCH_STARTED, NOTE),
                    Map.entry(EventName.BATCH_DISCARDED, REASON),
                    Map.entry(EventName.TEMPERATURE_TAKEN, Map.of("by", Place.STAFF)));

    private NameFields() {}

    /** Whether events of this name may name somebody. */
    static boolean mayName(EventName name) {
        return TABLE.containsKey(name);
    }

    /**
     * What a body is after a renaming.
     *
     * @param texts how many texts are other ones than before
     */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    record Renamed(byte[] body, int texts) {}

    /**
     * Renames in the body of an event.
     *
     * @param order the id of the order that it must be about, or empty
     */
    static Renamed rename(EventName name, byte[] body, String order, Renaming names) {
        Map<String, Place> fields = TABLE.getOrDefault(name, Map.of());
        if (fields.isEmpty()) {
            return new Renamed(body, 0);
        }
        try {
            ObjectNode tree = (ObjectNode) MAPPER.readTree(body);
            if (!order.isEmpty() && !tree.path("order").asText("").equals(order)) {
                return new Renamed(body, 0);
            }
            int texts = 0;
            for (Map.Entry<String, Place> field : fields.entrySet()) {
                if (rename(tree, field.getKey(), field.getValue(), names)) {
                    texts++;
                }
            }
            return texts == 0
                    ? new Renamed(body, 0)
                    : new Renamed(tree.toString().getBytes(StandardCharsets.UTF_8), texts);
        } catch (IOException e) {
            throw new LogFault("An event's body can't be read: " + e.getMessage(), e);
        }
    }

    private static boolean rename(ObjectNode tree, String field, Place place, Renaming names) {
        String before = tree.path(field).asText("");
        String now = before.isEmpty() ? before : names.now(place, before);
        if (now.equals(before)) {
            return false;
        }
        if (now.isEmpty()) {
            tree.remove(field);
        } else {
            tree.put(field, now);
        }
        return true;
    }
}
