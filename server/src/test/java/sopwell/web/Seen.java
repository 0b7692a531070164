package sopwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a program knows of a board from its frames alone. Fails on a frame that does not follow.
 * Belongs to one thread.
 */
public final class Seen {
    private final Map<String, JsonNode> rows = new LinkedHashMap<>();
    private JsonNode last;
    private int wholes;

    /** Takes in a frame. */
    public void take(JsonNode frame) {
        if (frame.path("whole").booleanValue()) {
            rows.clear();
            wholes++;
        } else if (last == null) {
            throw new AssertionError("the first frame is not the whole board: " + frame);
        } else if (frame.path("prev").longValue() != last.path("seq").longValue()) {
            throw new AssertionError("does not follow " + last.path("seq") + ": " + frame);
        }
        frame.path("rows").forEach(row -> rows.put(row.path("row").textValue(), row));
        last = frame;
        List<String> order = new ArrayList<>();
        frame.path("order").forEach(id -> order.add(id.textValue()));
        rows.keySet().retainAll(order);
        if (rows.size() != order.size()) {
            throw new AssertionError("rows are missing: " + order + " of " + rows.keySet());
        }
    }

    /** The place of the last frame; 0 before the first. */
    public long seq() {
        return last == null ? 0 : last.path("seq").longValue();
    }

    /** How many whole boards came. */
    public int wholes() {
        return wholes;
    }

    /** The rows as the board has them, top first, written out. */
    public List<String> board() {
        List<String> board = new ArrayList<>();
        last.path("order").forEach(id -> board.add(rows.get(id.textValue()).toString()));
        return board;
    }

    /** The rows of a whole board, written out. */
    public static List<String> board(JsonNode whole) {
        List<String> board = new ArrayList<>();
        whole.path("rows").forEach(row -> board.add(row.toString()));
        return board;
    }
}
