package sopwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.Comparator;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sopwell.TestStand;

/**
 * A stand on a free port over a folder that is deleted at the end, and a small client for it. May
 * be asked from many threads; opened and closed by one.
 */
public final class StandServer implements AutoCloseable {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final int MANY_CONNECTIONS = 2_000;
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final HttpClient client =
            HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .connectTimeout(PATIENCE)
                    .build();
    private final Path data;
    private TestStand stand;

    private StandServer(Path data) {
        this(data, TestStand.start(data));
    }

    private StandServer(Path data, TestStand stand) {
        this.data = data;
        this.stand = stand;
    }

    /** What a request was answered. */
    public record Got(HttpResponse<byte[]> response) {
        /** The HTTP status. */
        public int status() {
            return response.statusCode();
        }

        /** The body as text. */
        public String text() {
            return new String(response.body(), StandardCharsets.UTF_8);
        }

        /** The body as JSON. */
        public JsonNode json() {
            return tree(text());
        }

        /** A header, or empty. */
        public String header(String name) {
            return response.headers().firstValue(name).orElse("");
        }
    }

    /** A stand with the demo's menu and nothing sold. */
    public static StandServer fresh() {
        try {
            return new StandServer(Files.createTempDirectory("sopwell-test"));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** A stand over a folder of the test's, which is emptied at the end. */
    public static StandServer over(Path data) {
        return new StandServer(data);
    }

    /** The same by another clock. */
    public static StandServer over(Path data, InstantSource clock) {
        return new StandServer(data, TestStand.start(data, MANY_CONNECTIONS, clock));
    }

    /** The same by another clock, which it keeps until it is restarted. */
    public static StandServer fresh(InstantSource clock) {
        try {
            Path data = Files.createTempDirectory("sopwell-test");
            return new StandServer(data, TestStand.start(data, MANY_CONNECTIONS, clock));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Reads JSON. */
    public static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException wrong) {
            throw new AssertionError("not JSON: " + json, wrong);
        }
    }

    /** Stops the stand and starts it over the same folder, on another port. */
    public void restart() {
        stand.close();
        stand = TestStand.start(data);
    }

    /** The same, with another menu from now on. */
    public void restart(UnaryOperator<String> menu) {
        stand.close();
        try {
            Path file = data.resolve("menu.json");
            Files.writeString(file, menu.apply(Files.readString(file)));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
        stand = TestStand.start(data);
    }

    /** Stops the stand; the folder stays until the end. */
    public void stop() {
        stand.close();
    }

    /** The address with a path. */
    public URI uri(String path) {
        return URI.create(stand.address() + path);
    }

    /** The port that it listens on. */
    public int port() {
        return uri("/").getPort();
    }

    /** A request to be completed by the test. */
    public HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(uri(path)).timeout(PATIENCE);
    }

    /** Sends a request. */
    public Got send(HttpRequest request) {
        try {
            return new Got(client.send(request, BodyHandlers.ofByteArray()));
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(stopped);
        }
    }

    /** Asks. */
    public Got get(String path) {
        return send(request(path).GET().build());
    }

    /** Sends JSON under a key. */
    public Got post(String path, String key, String json) {
        return send(
                request(path)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", key)
                        .POST(BodyPublishers.ofString(json))
                        .build());
    }

    /** Sends JSON under a key of its own. */
    public Got post(String path, String json) {
        return post(path, key(), json);
    }

    /** Puts JSON in the place of what had this tag, under a key of its own. */
    public Got put(String path, String json, String tag) {
        return send(
                request(path)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", key())
                        .header("If-Match", tag)
                        .PUT(BodyPublishers.ofString(json))
                        .build());
    }

    /** A key that nobody used. */
    public static String key() {
        return UUID.randomUUID().toString();
    }

    /** Places a call that must be taken. */
    public JsonNode place(String call) {
        Got got = post("/api/orders", "{\"call\": \"" + call + "\"}");
        if (got.status() != 201) {
            throw new AssertionError("not placed: " + got.text());
        }
        return got.json();
    }

    /** The log's last place. */
    public long seq() {
        return get("/healthz").json().path("seq").longValue();
    }

    @Override
    public void close() {
        stand.close();
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
