package sopwell.web;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import sopwell.Limits;

/** Reads and writes JSON within limits. Thread-safe. */
public final class Json {
    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(Limits.JSON_DEPTH_MAX)
                                    .maxNumberLength(20)
                                    .maxNameLength(64)
                                    .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build();
    private static final ObjectMapper MAPPER =
            JsonMapper.builder(FACTORY)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    private Json() {}

    /** Writes to a generator. */
    @FunctionalInterface
    public interface Writing {
        /** Writes one value. */
        void to(JsonGenerator json) throws IOException;
    }

    /**
     * Reads one JSON object.
     *
     * @throws BadJson with a sentence that says what is wrong and where
     */
    public static JsonNode object(byte[] body) throws BadJson {
        try {
            JsonNode node = MAPPER.readTree(body);
            if (node == null || !node.isObject()) {
                throw new BadJson("The body must be one JSON object, like {\"call\": \"...\"}.");
            }
            return node;
        } catch (JsonProcessingException wrong) {
            String where =
                    wrong.getLocation() == null
                            ? ""
                            : " at line "
                                    + wrong.getLocation().getLineNr()
                                    + ", column "
                                    + wrong.getLocation().getColumnNr();
            throw new BadJson("The body is not right as JSON" + where + ": " + sentence(wrong));
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    /** The UTF-8 bytes of what is written. */
    public static ByteBuffer bytes(Writing writing) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(512);
        try (JsonGenerator json = FACTORY.createGenerator(out)) {
            writing.to(json);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return ByteBuffer.wrap(out.toByteArray());
    }

    /** The text of what is written. */
    public static String text(Writing writing) {
        java.io.StringWriter out = new java.io.StringWriter(1024);
        try (JsonGenerator json = FACTORY.createGenerator(out)) {
            writing.to(json);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toString();
    }

    private static String sentence(JsonProcessingException wrong) {
        String message = wrong.getOriginalMessage();
        int technical = message.indexOf(" (`");
        return (technical < 0 ? message : message.substring(0, technical)) + ".";
    }

    /** A body that is not one JSON object of the right form. */
    public static final class BadJson extends Exception {
        private static final long serialVersionUID = 1L;

        /** The sentence says what is wrong and where. */
        public BadJson(String sentence) {
            super(sentence);
        }
    }
}
