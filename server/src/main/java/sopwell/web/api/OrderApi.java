package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Told;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Languages;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** Orders for programs. Thread-safe. */
final class OrderApi {
    private final ApiContext context;

    OrderApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> place(Ask ask) throws BadJson, Refused {
        Menu menu = context.follower().menu();
        Fields fields = ask.fields();
        String name = fields.text("name", "").strip();
        boolean toGo = fields.flag("toGo", true);
        Lang lang = Languages.of(ask.exchange());
        Function<List<Recorded>, Reply> done = events -> placed(events, menu, lang);
        Optional<Told> told = ToldReader.read(fields, context, ask.text());
        Menu its = told.map(Told::menu).orElse(menu);
        List<Asked> lines;
        try {
            lines = LinesReader.read(fields, context, its, ask.text());
        } catch (Refused refused) {
            return Doing.doneBeforeOr(refused.problem(), context.desk(), ask, done);
        }
        fields.nothingElse();
        return Doing.submit(
                context.desk(),
                ask,
                new ForOrders(new OrderCommand.Place(name, toGo, lines, told)),
                done);
    }

    CompletableFuture<Reply> change(Ask ask) throws BadJson, Refused {
        Menu menu = context.follower().menu();
        Fields fields = ask.fields();
        int version = fields.number("version");
        Optional<String> name = optionalText(fields, "name");
        Optional<Boolean> toGo =
                fields.has("toGo") ? Optional.of(fields.flag("toGo", true)) : Optional.empty();
        String reason = fields.text("reason", "").strip();
        Lang lang = Languages.of(ask.exchange());
        Function<List<Recorded>, Reply> done = events -> changed(events, menu, lang);
        List<Asked> lines;
        try {
            lines = LinesReader.read(fields, context, menu, ask.text());
        } catch (Refused refused) {
            return Doing.doneBeforeOr(refused.problem(), context.desk(), ask, done);
        }
        fields.nothingElse();
        String id = ask.path("order");
        return context.follower()
                .ask(stand -> stand.orders().find(id))
                .thenCompose(
                        found -> {
                            StandCommand command =
                                    new ForOrders(
                                            new OrderCommand.Change(
                                                    id,
                                                    version,
                                                    name.or(() -> found.map(Order::name))
                                                            .orElse(""),
                                                    toGo.or(() -> found.map(Order::toGo))
                                                            .orElse(true),
                                                    lines,
                                                    reason));
                            return Doing.submit(context.desk(), ask, command, done);
                        });
    }

    CompletableFuture<Reply> voidOrder(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String reason = fields.text("reason", "").strip();
        int version = fields.has("version") ? fields.number("version") : 0;
        fields.nothingElse();
        return simple(ask, new OrderCommand.VoidOrder(ask.path("order"), version, reason), "void");
    }

    CompletableFuture<Reply> hand(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return simple(ask, new OrderCommand.Hand(ask.path("order")), "handed");
    }

    CompletableFuture<Reply> bringBack(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return simple(ask, new OrderCommand.BringBack(ask.path("order")), "brought-back");
    }

    CompletableFuture<Reply> openDay(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return day(ask, new OrderCommand.OpenDay());
    }

    CompletableFuture<Reply> closeDay(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return day(ask, new OrderCommand.CloseDay());
    }

    CompletableFuture<Reply> reopenDay(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String reason = fields.text("reason", "").strip();
        Optional<LocalDate> date =
                fields.has("date") ? Optional.of(fields.date("date")) : Optional.empty();
        fields.nothingElse();
        return day(ask, new OrderCommand.ReopenDay(date, reason));
    }

    CompletableFuture<Reply> get(HttpServerExchange exchange, T text) {
        String id = Ask.path(exchange, "order");
        Lang lang = Languages.of(exchange);
        return context.follower().ask(stand -> one(stand, id, text, lang));
    }

    private static Reply one(Stand stand, String id, T text, Lang lang) {
        Optional<Order> order = stand.orders().find(id);
        return order.isPresent()
                ? Reply.json(200, json -> whole(json, order.get(), stand, lang))
                : Reply.problem(RefusalProblems.of(Refusal.of(Reason.UNKNOWN_ORDER, id), text));
    }

    CompletableFuture<Reply> list(HttpServerExchange exchange, T text) throws Refused {
        boolean open = exchange.getQueryParameters().containsKey("open");
        if (open && !"true".equals(exchange.getQueryParameters().get("open").getFirst())) {
            throw new Refused(Problem.of(ProblemKind.OPEN_WRONG, text));
        }
        Lang lang = Languages.of(exchange);
        return context.follower()
                .ask(stand -> Reply.json(200, json -> list(json, stand, open, lang)));
    }

    private static void list(JsonGenerator json, Stand stand, boolean open, Lang lang)
            throws IOException {
        Collection<Order> orders = open ? stand.orders().open() : stand.orders().all();
        json.writeStartObject();
        json.writeNumberField("seq", stand.seq());
        json.writeArrayFieldStart("orders");
        int listed = 0;
        for (Order order : orders) {
            if (listed++ < Limits.LISTED_ORDERS_MAX) {
                whole(json, order, stand, lang);
            }
        }
        json.writeEndArray();
        json.writeNumberField("of", orders.size());
        json.writeEndObject();
    }

    private static void whole(JsonGenerator json, Order order, Stand stand, Lang lang)
            throws IOException {
        OrderJson.whole(
                json,
                order,
                new OrderJson.Standing(stand.kitchen(), stand.till().dueCents(order)),
                new OrderJson.Said(stand.menuOf(order.menuRevision()), lang));
    }

    private Reply placed(List<Recorded> events, Menu menu, Lang lang) {
        Recorded recorded = last(events, OrderPlaced.class);
        OrderPlaced placed = (OrderPlaced) recorded.event();
        Menu its = its(placed.menuRevision(), menu);
        return Reply.json(201, json -> OrderJson.placed(json, placed, recorded.seq(), its, lang));
    }

    private Reply changed(List<Recorded> events, Menu menu, Lang lang) {
        Recorded recorded = last(events, OrderChanged.class);
        OrderChanged changed = (OrderChanged) recorded.event();
        Menu its = its(changed.menuRevision(), menu);
        return Reply.json(200, json -> OrderJson.changed(json, changed, recorded.seq(), its, lang));
    }

    private CompletableFuture<Reply> simple(Ask ask, OrderCommand command, String state) {
        String order = ask.path("order");
        return Doing.submit(
                context.desk(),
                ask,
                new ForOrders(command),
                events ->
                        Reply.json(
                                200,
                                json -> {
                                    json.writeStartObject();
                                    json.writeStringField("order", order);
                                    json.writeStringField("state", state);
                                    json.writeNumberField("seq", events.get(0).seq());
                                    OrderJson.time(json, "at", events.get(0).atMs());
                                    json.writeEndObject();
                                }));
    }

    private CompletableFuture<Reply> day(Ask ask, OrderCommand command) {
        return Doing.submit(
                context.desk(), ask, new ForOrders(command), events -> DayApi.day(events));
    }

    private Menu its(String revision, Menu likely) {
        return likely.revision().equals(revision)
                ? likely
                : context.menus().menu(revision).orElseThrow();
    }

    private static Optional<String> optionalText(Fields fields, String field) throws BadJson {
        return fields.has(field) ? Optional.of(fields.text(field).strip()) : Optional.empty();
    }

    private static Recorded last(List<Recorded> events, Class<? extends Event> type) {
        Function<Recorded, Boolean> fits = recorded -> type.isInstance(recorded.event());
        return events.stream().filter(fits::apply).reduce((first, second) -> second).orElseThrow();
    }
}
