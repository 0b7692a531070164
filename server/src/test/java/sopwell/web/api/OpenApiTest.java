package sopwell.web.api;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sopwell.web.RawScreen;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;
import sopwell.web.api.OpenApi.Operation;

/** The interface's description says what the interface does, and all of it. */
class OpenApiTest {
    private static StandServer stand;

    @BeforeAll
    static void open() {
        stand = StandServer.fresh();
    }

    @AfterAll
    static void close() {
        stand.close();
    }

    static List<Operation> operations() {
        return OpenApi.operations();
    }

    @Test
    void describesEveryRouteAndNoOther() {
        Set<String> routes =
                ApiRoutes.ALL.stream()
                        .map(route -> route.method() + " " + route.path())
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> described =
                operations().stream()
                        .map(Operation::toString)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(routes, described);
    }

    @Test
    void isServedAsItIsPacked() {
        assertEquals(OpenApi.DOCUMENT, stand.get("/api/openapi.json").json());
        assertEquals("3.1.0", OpenApi.DOCUMENT.path("openapi").textValue());
    }

    @Test
    void namesEveryOperationOnce() {
        List<String> names =
                operations().stream().map(o -> o.node().path("operationId").textValue()).toList();
        assertEquals(names.size(), Set.copyOf(names).size());
    }

    @ParameterizedTest
    @MethodSource("operations")
    void declaresTheParametersOfThePath(Operation operation) {
        Set<String> inPath =
                Stream.of(operation.path().split("/"))
                        .filter(part -> part.startsWith("{"))
                        .map(part -> part.substring(1, part.length() - 1))
                        .collect(Collectors.toSet());
        Set<String> declared = new TreeSet<>();
        for (JsonNode named : operation.node().path("parameters")) {
            JsonNode parameter = OpenApi.WALK.resolved(named);
            if (parameter.path("in").textValue().equals("path")) {
                declared.add(parameter.path("name").textValue());
                none(OpenApi.WALK.faults(parameter.path("schema"), parameter.path("example")));
            }
        }
        assertEquals(inPath, declared);
    }

    @ParameterizedTest
    @MethodSource("operations")
    void showsExamplesThatFitTheirSchemas(Operation operation) {
        JsonNode asked = operation.node().at("/requestBody/content/application~1json/schema");
        for (Map.Entry<String, JsonNode> body : operation.bodies()) {
            none(OpenApi.WALK.faults(asked, body.getValue().path("value")));
        }
        for (String status : operation.statuses()) {
            JsonNode response = operation.response(Integer.parseInt(status));
            for (JsonNode media : response.path("content")) {
                if (media.has("example")) {
                    none(OpenApi.WALK.faults(media.path("schema"), media.path("example")));
                }
                for (JsonNode example : media.path("examples")) {
                    none(OpenApi.WALK.faults(media.path("schema"), example.path("value")));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void answersAsDescribed(Operation operation) {
        List<String> bodies =
                operation.bodies().isEmpty()
                        ? List.of("")
                        : operation.bodies().stream()
                                .map(body -> body.getValue().path("value").toString())
                                .toList();
        for (String body : bodies) {
            Got got = send(operation, new Prepared(stand).path(operation), body);
            assertEquals(operation.goodStatus(), got.status(), got::text);
            JsonNode response = operation.response(got.status());
            String media = got.header("Content-Type").replaceAll(";.*", "");
            JsonNode content = response.path("content").path(media);
            assertTrue(content.isObject(), operation + " answers " + media);
            if (media.equals("application/json")) {
                none(OpenApi.WALK.faults(content.path("schema"), got.json()));
            }
            for (Map.Entry<String, JsonNode> header : response.path("headers").properties()) {
                String value = got.header(header.getKey());
                if (!header.getKey().equals("Idempotent-Replayed")) {
                    JsonNode text = StandServer.tree("\"" + value.replace("\"", "\\\"") + "\"");
                    none(OpenApi.WALK.faults(header.getValue().path("schema"), text));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void showsProblemsAsTheyAre(Operation operation) {
        for (String status : operation.statuses()) {
            JsonNode examples =
                    operation
                            .response(Integer.parseInt(status))
                            .at("/content/application~1problem+json/examples");
            for (JsonNode example : examples) {
                String path = new Prepared(stand).path(operation);
                Got got = send(operation, path, example.path("x-request").toString());
                assertEquals(example.path("value"), got.json());
                assertEquals(status, "" + got.status());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("operations")
    void needsAKeyWhereItSaysSo(Operation operation) {
        boolean changes = !operation.method().equals("GET") && !operation.path().endsWith("calls");
        assertEquals(changes, operation.needsKey());
        if (changes) {
            String path = operation.path().replaceAll("\\{\\w+}", "1");
            HttpRequest request =
                    stand.request(path).method(operation.method(), BodyPublishers.noBody()).build();
            assertEquals("key-missing", stand.send(request).json().path("code").textValue());
        }
    }

    @Test
    void describesTheFramesOfABoard() throws IOException {
        JsonNode said = OpenApi.DOCUMENT.at("/x-sockets/~1ws~1boards~1{board}/says");
        for (JsonNode kind : said) {
            none(OpenApi.WALK.faults(kind.path("schema"), kind.path("example")));
        }
        for (String board : List.of("line", "fryer", "pass", "counter")) {
            JsonNode order = stand.place("2 combo dipped no hot, fries");
            try (RawScreen screen = RawScreen.at(stand.port(), board)) {
                none(frameFaults(said, screen.nextFrame(10_000)));
                String id = order.path("order").textValue();
                stand.post("/api/parts/" + id + ".2.fryer/started", "");
                stand.post("/api/parts/" + id + ".1.line/started", "");
                stand.post(
                        "/api/orders/" + id + "/changes",
                        "{\"version\": 1, \"call\": \"3 combo dry hot, 2 fries\"}");
                none(frameFaults(said, screen.nextFrame(10_000)));
                none(frameFaults(said, screen.nextFrame(10_000)));
                String beat = screen.next(10_000);
                while (!beat.startsWith("{\"beat\"")) {
                    beat = screen.next(10_000);
                }
                none(OpenApi.WALK.faults(said.at("/beat/schema"), StandServer.tree(beat)));
            }
        }
    }

    private static List<String> frameFaults(JsonNode said, JsonNode frame) {
        return OpenApi.WALK.faults(said.at("/frame/schema"), frame);
    }

    private static Got send(Operation operation, String path, String body) {
        return switch (operation.method()) {
            case "GET" -> stand.get(path);
            case "PUT" -> putAndBack(path, body);
            default -> stand.post(path, body);
        };
    }

    /** Whoever comes next finds what was there before. */
    private static Got putAndBack(String path, String body) {
        Got before = stand.get(path);
        Got got = stand.put(path, body, before.header("ETag"));
        assertEquals(200, stand.put(path, before.text(), got.header("ETag")).status());
        return got;
    }

    private static void none(List<String> faults) {
        assertEquals(List.of(), faults);
    }
}
