package sopwell.web.api;

import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.DiskState;
import sopwell.menu.Menu;
import sopwell.web.LogState;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.live.Frame;

/** Boards, the menu, health, and what the interface says of itself. Thread-safe. */
final class StandApi {
    private static final String JSON = "application/json";
    private static final String HTML = "text/html; charset=utf-8";

    private final ApiContext context;
    private final Reply description;
    private final Reply problems;

    StandApi(ApiContext context) {
        this.context = context;
        byte[] openApi = resource("/openapi.json");
        this.description = new Reply(200, JSON, ByteBuffer.wrap(openApi), Map.of());
        this.problems =
                new Reply(
                        200,
                        HTML,
                        ByteBuffer.wrap(
                                ProblemsPage.html(openApi).getBytes(StandardCharsets.UTF_8)),
                        Map.of());
    }

    CompletableFuture<Reply> board(HttpServerExchange exchange, T text) {
        String name = Ask.path(exchange, "board");
        return context.hub().board(name).thenApply(frame -> board(frame, name, text));
    }

    private static Reply board(Optional<Frame> frame, String name, T text) {
        return frame.map(f -> Reply.json(200, json -> JsonFrames.write(json, f)))
                .orElseGet(() -> Reply.problem(Problem.of(ProblemKind.NO_SUCH_BOARD, text, name)));
    }

    CompletableFuture<Reply> menu(HttpServerExchange exchange, T text) {
        Menu menu = context.follower().menu();
        byte[] body = context.menuJson().apply(menu).getBytes(StandardCharsets.UTF_8);
        Map<String, String> headers = Map.of("ETag", "\"" + menu.revision() + "\"");
        return CompletableFuture.completedFuture(
                new Reply(200, JSON, ByteBuffer.wrap(body), headers));
    }

    CompletableFuture<Reply> health(HttpServerExchange exchange, T text) {
        LogState log = context.vitals().log().get();
        Optional<String> damage = log.damage();
        DiskState.Kind disk = context.care().disk().get().kind();
        return context.follower()
                .ask(
                        stand ->
                                Reply.json(
                                        200,
                                        json -> {
                                            json.writeStartObject();
                                            json.writeStringField("status", status(damage, disk));
                                            json.writeStringField(
                                                    "stand", stand.settings().stand());
                                            json.writeNumberField("seq", stand.seq());
                                            json.writeNumberField(
                                                    "screens", context.hub().screens());
                                            json.writeStringField(
                                                    "version", context.vitals().version());
                                            json.writeNumberField(
                                                    "schema", context.vitals().schema());
                                            if (log.checkedAtMs().isPresent()) {
                                                json.writeNumberField(
                                                        "checkedAtMs",
                                                        log.checkedAtMs().getAsLong());
                                            }
                                            CareJson.write(json, context.care());
                                            if (damage.isPresent()) {
                                                json.writeStringField("damage", damage.get());
                                            }
                                            json.writeEndObject();
                                        }));
    }

    /** The worst of what is wrong; a disk that is getting full is no reason to call anybody yet. */
    private static String status(Optional<String> damage, DiskState.Kind disk) {
        if (damage.isPresent()) {
            return "damaged";
        }
        return switch (disk) {
            case WELL, LOW -> "ok";
            case NO_ROOM, READING_ONLY -> ProblemKind.code(disk);
        };
    }

    CompletableFuture<Reply> metrics(HttpServerExchange exchange, T text) {
        return context.vitals().scrape().get();
    }

    CompletableFuture<Reply> description(HttpServerExchange exchange, T text) {
        return CompletableFuture.completedFuture(description);
    }

    CompletableFuture<Reply> problems(HttpServerExchange exchange, T text) {
        return CompletableFuture.completedFuture(problems);
    }

    private static byte[] resource(String name) {
        try (InputStream in = StandApi.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
