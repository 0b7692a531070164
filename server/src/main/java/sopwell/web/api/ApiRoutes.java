package sopwell.web.api;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.kitchen.KitchenCommand;
import sopwell.menu.Menu;
import sopwell.web.Problem;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.live.Frame;

/** The routes of the program interface. Stateless. */
public final class ApiRoutes {
    private static final String JSON = "application/json";

    private ApiRoutes() {}

    /** Adds every route under {@code /api} and {@code /healthz}. */
    public static void add(RoutingHandler routes, ApiContext context) {
        Calls calls = new Calls(context.texts());
        OrderApi orders = new OrderApi(context);
        PartApi parts = new PartApi(context);
        DayApi days = new DayApi(context);
        Reply openApi = openApi();
        routes.post("/api/calls", calls.question(new CallApi(context)::read));
        routes.post("/api/orders", calls.write(orders::place));
        routes.get("/api/orders", calls.read(orders::list));
        routes.get("/api/orders/{order}", calls.read(orders::get));
        routes.post("/api/orders/{order}/changes", calls.write(orders::change));
        routes.post("/api/orders/{order}/voids", calls.write(orders::voidOrder));
        routes.post("/api/orders/{order}/handed", calls.write(orders::hand));
        routes.post("/api/orders/{order}/brought-back", calls.write(orders::bringBack));
        routes.post("/api/parts/{part}/started", calls.write(parts.move(KitchenCommand.Start::new)));
        routes.post("/api/parts/{part}/up", calls.write(parts.move(KitchenCommand.Up::new)));
        routes.post(
                "/api/parts/{part}/brought-back",
                calls.write(parts.move(KitchenCommand.BringBack::new)));
        routes.post("/api/parts/{part}/seen", calls.write(parts.move(KitchenCommand.Seen::new)));
        routes.post("/api/days/opened", calls.write(orders::openDay));
        routes.post("/api/days/closed", calls.write(orders::closeDay));
        routes.get("/api/days/{date}/mix", calls.read(days::mix));
        routes.get("/api/days/{date}/waits", calls.read(days::waits));
        routes.get("/api/boards/{board}", calls.read((e, text) -> board(context, e, text)));
        routes.get("/api/menu", calls.read((e, text) -> menu(context)));
        routes.get(
                "/api/openapi.json",
                calls.read((e, text) -> CompletableFuture.completedFuture(openApi)));
        routes.get("/healthz", calls.read((e, text) -> health(context)));
    }

    private static CompletableFuture<Reply> board(
            ApiContext context, HttpServerExchange exchange, T text) {
        String name = exchange.getQueryParameters().get("board").getFirst();
        return context.hub().board(name).thenApply(frame -> board(frame, name, text));
    }

    private static Reply board(Optional<Frame> frame, String name, T text) {
        return frame.map(f -> Reply.json(200, json -> JsonFrames.write(json, f)))
                .orElseGet(
                        () ->
                                Reply.problem(
                                        Problem.of(
                                                404,
                                                "no-such-board",
                                                text.of("api.no-such-board", name))));
    }

    private static CompletableFuture<Reply> menu(ApiContext context) {
        Menu menu = context.follower().menu();
        ByteBuffer body =
                ByteBuffer.wrap(
                        context.menuJson().apply(menu).getBytes(StandardCharsets.UTF_8));
        Map<String, String> headers = Map.of("ETag", "\"" + menu.revision() + "\"");
        return CompletableFuture.completedFuture(new Reply(200, JSON, body, headers));
    }

    private static CompletableFuture<Reply> health(ApiContext context) {
        return context.follower()
                .ask(
                        stand ->
                                Reply.json(
                                        200,
                                        json -> {
                                            json.writeStartObject();
                                            json.writeStringField("status", "ok");
                                            json.writeStringField(
                                                    "stand", stand.settings().stand());
                                            json.writeNumberField("seq", stand.seq());
                                            json.writeNumberField(
                                                    "screens", context.hub().screens());
                                            json.writeEndObject();
                                        }));
    }

    private static Reply openApi() {
        try (InputStream in = ApiRoutes.class.getResourceAsStream("/openapi.json")) {
            return new Reply(200, JSON, ByteBuffer.wrap(in.readAllBytes()), Map.of());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
