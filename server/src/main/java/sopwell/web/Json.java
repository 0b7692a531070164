package sopwell.web;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.List;
import sopwell.Limits;

/** Reads and writes JSON within limits. Thread-safe. */
public final class Json {
    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(Limits.JSON_DEPTH_MAX)
                                    .maxStringLength(Limits.JSON_TEXT_CHARS_MAX)
                                    .maxNumberLength(Limits.JSON_NUMBER_CHARS_MAX)
                                    .maxNameLength(Limits.JSON_FIELD_CHARS_MAX)
                                    .maxDocumentLength(Limits.BODY_BYTES_MAX)
                                    .maxTokenCount(Limits.JSON_TOKENS_MAX)
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
     * @throws BadJson that says what is wrong and where
     */
    public static JsonNode object(byte[] body) throws BadJson {
        try {
            JsonNode node = MAPPER.readTree(body);
            if (node == null || !node.isObject()) {
                throw new BadJson(ProblemKind.BAD_JSON, "json.not-object");
            }
            return node;
        } catch (JsonProcessingException wrong) {
            throw bad(wrong);
        } catch (IOException wrong) {
            throw new BadJson(ProblemKind.BAD_JSON, "json.encoding");
        }
    }

    /** The parser's own sentences name its classes and settings, so ours say it again. */
    private static BadJson bad(JsonProcessingException wrong) {
        JsonLocation at = wrong.getLocation();
        int line = at == null ? 1 : at.getLineNr();
        int column = at == null ? 1 : Math.max(1, at.getColumnNr());
        String message = String.valueOf(wrong.getOriginalMessage());
        if (wrong instanceof StreamConstraintsException) {
            return message.contains("nesting depth")
                    ? syntax("json.too-deep", line, column, Limits.JSON_DEPTH_MAX)
                    : syntax("json.too-long", line, column);
        }
        if (message.startsWith("Duplicate")) {
            return syntax("json.duplicate", line, column);
        }
        return syntax(
                wrong instanceof JsonEOFException ? "json.ends" : "json.syntax", line, column);
    }

    private static BadJson syntax(String key, Object... args) {
        return new BadJson(ProblemKind.BAD_JSON, key, args);
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

    /** A body that is not one JSON object of the right form. */
    public static final class BadJson extends Exception {
        private static final long serialVersionUID = 1L;
        private final ProblemKind kind;
        private final String key;
        private final transient List<Object> args;

        /**
         * What is wrong and where.
         *
         * @param key of the sentence
         */
        public BadJson(ProblemKind kind, String key, Object... args) {
            super(key);
            this.kind = kind;
            this.key = key;
            this.args = List.of(args);
        }

        /** As a problem document. */
        public Problem problem(T text) {
            return Problem.of(kind, text.of(key, args.toArray()));
        }
    }
}
