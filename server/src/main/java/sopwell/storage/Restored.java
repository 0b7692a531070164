package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * What is remembered of a restore: from when the backup is, and up to where the log went that it
 * took the place of, as far as anybody knows. Immutable.
 *
 * @param atMs when it was restored, milliseconds since 1970-01-01 UTC
 * @param madeAtMs when the backup was made
 * @param lastSeq the last event of the backup
 * @param knownSeq the last event that is known to have been; not less than {@code lastSeq}
 * @param epoch the epoch that the log had before
 */
public record Restored(long atMs, long madeAtMs, long lastSeq, long knownSeq, String epoch) {
    private static final JsonMapper MAPPER = new JsonMapper();

    /** Whether events are known to be missing, from the one after the backup's last. */
    public boolean isMissingSome() {
        return knownSeq > lastSeq;
    }

    /** The same, once somebody has seen a later event than was known of. */
    public Restored seen(long seq) {
        return new Restored(atMs, madeAtMs, lastSeq, Math.max(knownSeq, seq), epoch);
    }

    byte[] written() {
        return MAPPER.createObjectNode()
                .put("atMs", atMs)
                .put("madeAtMs", madeAtMs)
                .put("lastSeq", lastSeq)
                .put("knownSeq", knownSeq)
                .put("epoch", epoch)
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    /** A note that can't be read is none: the log itself does not depend on it. */
    static Optional<Restored> read(byte[] json) {
        try {
            JsonNode node = MAPPER.readTree(json);
            return Optional.of(
                    new Restored(
                            node.path("atMs").longValue(),
                            node.path("madeAtMs").longValue(),
                            node.path("lastSeq").longValue(),
                            node.path("knownSeq").longValue(),
                            node.path("epoch").asText("")));
        } catch (IOException broken) {
            return Optional.empty();
        }
    }
}
