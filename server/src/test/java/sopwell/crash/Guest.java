package sopwell.crash;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;

/** Talks to a stand over HTTP. Thread-safe. */
public final class Guest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    private final HttpClient client =
            HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .connectTimeout(PATIENCE)
                    .build();

    /** An answer with its status; without one the outcome is unknown. */
    public record Heard(int status, JsonNode body) {
        /** Whether it was taken. */
        public boolean isDone() {
            return status >= 200 && status < 300;
        }
    }

    /** Sends JSON under a key. */
    public Heard post(String address, String path, String key, String json)
            throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(address + path))
                        .timeout(PATIENCE)
                        .header("Content-Type", "application/json")
                        .header("Idempotency-Key", key)
                        .POST(HttpRequest.BodyPublishers.ofString(json))
                        .build();
        return heard(client.send(request, HttpResponse.BodyHandlers.ofString()));
    }

    /** Asks. */
    public Heard get(String address, String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(address + path)).timeout(PATIENCE).build();
        return heard(client.send(request, HttpResponse.BodyHandlers.ofString()));
    }

    private static Heard heard(HttpResponse<String> response) throws IOException {
        return new Heard(response.statusCode(), MAPPER.readTree(response.body()));
    }
}
