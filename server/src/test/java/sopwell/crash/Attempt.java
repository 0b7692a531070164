package sopwell.crash;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;

/**
 * One request that a writer made, and what it knows of it. Belongs to its writer until the writer
 * has stopped.
 */
final class Attempt {
    private final String path;
    private final String key;
    private final String body;
    private final int pieces;
    private JsonNode answer;

    /**
     * A request not answered yet.
     *
     * @param pieces how many pieces it orders; 0 when it orders nothing
     */
    Attempt(String path, String key, String body, int pieces) {
        this.path = path;
        this.key = key;
        this.body = body;
        this.pieces = pieces;
    }

    String path() {
        return path;
    }

    String key() {
        return key;
    }

    String body() {
        return body;
    }

    int pieces() {
        return pieces;
    }

    boolean isOrder() {
        return pieces > 0;
    }

    void answered(JsonNode newAnswer) {
        answer = newAnswer;
    }

    /** The answer, or empty while the outcome is unknown. */
    Optional<JsonNode> answer() {
        return Optional.ofNullable(answer);
    }
}
