package sopwell.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import sopwell.web.StandServer;

/** The interface's description, as it is packed. */
final class OpenApi {
    static final JsonNode DOCUMENT = read();
    static final SchemaWalk WALK = new SchemaWalk(DOCUMENT);

    private OpenApi() {}

    /** One operation of the description. */
    record Operation(String method, String path, JsonNode node) {
        /** The one status that says that it was done. */
        int goodStatus() {
            List<String> good = new ArrayList<>();
            statuses().stream().filter(s -> s.startsWith("2")).forEach(good::add);
            if (good.size() != 1) {
                throw new AssertionError(this + " has the good statuses " + good);
            }
            return Integer.parseInt(good.get(0));
        }

        /** Whether it is what answers at a path. */
        boolean answers(String asked) {
            return asked.matches(path.replaceAll("\\{\\w+}", "[^/]*"));
        }

        Set<String> statuses() {
            Set<String> statuses = new TreeSet<>();
            node.path("responses").fieldNames().forEachRemaining(statuses::add);
            return statuses;
        }

        JsonNode response(int status) {
            return WALK.resolved(node.path("responses").path("" + status));
        }

        /** The documented bodies, by name; none for an operation that takes no fields. */
        Set<Map.Entry<String, JsonNode>> bodies() {
            return node.at("/requestBody/content/application~1json/examples").properties();
        }

        boolean needsKey() {
            return node.path("parameters").toString().contains("#/components/parameters/Key");
        }

        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    static List<Operation> operations() {
        List<Operation> operations = new ArrayList<>();
        for (Map.Entry<String, JsonNode> path : DOCUMENT.path("paths").properties()) {
            for (Map.Entry<String, JsonNode> method : path.getValue().properties()) {
                String name = method.getKey().toUpperCase(Locale.ROOT);
                operations.add(new Operation(name, path.getKey(), method.getValue()));
            }
        }
        return operations;
    }

    private static JsonNode read() {
        try (InputStream in = OpenApi.class.getResourceAsStream("/openapi.json")) {
            return StandServer.tree(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
