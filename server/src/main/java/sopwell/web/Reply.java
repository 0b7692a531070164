package sopwell.web;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import io.undertow.util.Headers;
import io.undertow.util.HttpString;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.MenuFault;

/**
 * What a request is answered. Immutable.
 *
 * @param body UTF-8, or empty
 * @param headers more than the content type
 */
public record Reply(int status, String type, ByteBuffer body, Map<String, String> headers) {
    private static final String JSON = "application/json";
    private static final String PROBLEM = "application/problem+json";

    public Reply {
        headers = Map.copyOf(headers);
    }

    /** A JSON answer. */
    public static Reply json(int status, Json.Writing body) {
        return new Reply(status, JSON, Json.bytes(body), Map.of());
    }

    /** A problem document, RFC 9457. */
    public static Reply problem(Problem problem) {
        Json.Writing body =
                json -> {
                    json.writeStartObject();
                    json.writeStringField("type", "/docs/problems#" + problem.code());
                    json.writeStringField("title", title(problem.status()));
                    json.writeNumberField("status", problem.status());
                    json.writeStringField("code", problem.code());
                    json.writeStringField("detail", problem.detail());
                    if (problem.place() != null) {
                        json.writeNumberField("column", problem.place().column());
                        json.writeNumberField("length", problem.place().length());
                        json.writeArrayFieldStart("suggestions");
                        for (String suggestion : problem.place().suggestions()) {
                            json.writeString(suggestion);
                        }
                        json.writeEndArray();
                    }
                    faults(json, problem.faults());
                    json.writeEndObject();
                };
        Map<String, String> headers =
                problem.status() == 503 ? Map.of("Retry-After", "1") : Map.of();
        return new Reply(problem.status(), PROBLEM, Json.bytes(body), headers);
    }

    private static void faults(JsonGenerator json, List<MenuFault> faults) throws IOException {
        if (faults.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("faults");
        for (MenuFault fault : faults) {
            json.writeStartObject();
            json.writeStringField("place", fault.place());
            json.writeStringField("wrong", fault.wrong());
            json.writeStringField("right", fault.right());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** The same answer with one more header. */
    public Reply with(String header, String value) {
        Map<String, String> more = new HashMap<>(headers);
        more.put(header, value);
        return new Reply(status, type, body, more);
    }

    /** Sends it; the exchange is over then. */
    public void send(HttpServerExchange exchange) {
        exchange.setStatusCode(status);
        exchange.getResponseHeaders().put(Headers.CONTENT_TYPE, type);
        exchange.getResponseHeaders().put(Headers.CACHE_CONTROL, "no-store");
        headers.forEach(
                (name, value) -> exchange.getResponseHeaders().put(new HttpString(name), value));
        exchange.getResponseSender().send(body.duplicate());
    }

    private static String title(int status) {
        return io.undertow.util.StatusCodes.getReason(status);
    }
}
