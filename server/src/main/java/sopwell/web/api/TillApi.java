package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.log.Recorded;
import sopwell.money.CashUnits;
import sopwell.money.Discount;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderDiscounted;
import sopwell.records.TillRecords;
import sopwell.till.DayReport;
import sopwell.till.Drawer;
import sopwell.till.Means;
import sopwell.till.TillCommand;
import sopwell.till.TillEvent;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** Payments, refunds, discounts and tills for programs. Thread-safe. */
final class TillApi {
    private final ApiContext context;
    private final DayApi days;

    TillApi(ApiContext context, DayApi days) {
        this.context = context;
        this.days = days;
    }

    CompletableFuture<Reply> pay(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        TillCommand command =
                new TillCommand.Pay(
                        ask.path("order"),
                        cashier(fields),
                        means(fields),
                        fields.number("cents", 0),
                        fields.number("tenderedCents", 0),
                        fields.number("tipCents", 0));
        fields.nothingElse();
        CashUnits units = context.settings().cash().units();
        return submit(
                ask,
                new ForTill(command),
                TillEvent.OrderPaid.class,
                (json, paid) -> MoneyJson.paid(json, paid, units));
    }

    CompletableFuture<Reply> refund(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        TillCommand command =
                new TillCommand.Refund(
                        ask.path("order"),
                        cashier(fields),
                        means(fields),
                        fields.number("cents", 0),
                        fields.flag("dueAgain", false),
                        fields.text("reason", "").strip());
        fields.nothingElse();
        CashUnits units = context.settings().cash().units();
        return submit(
                ask,
                new ForTill(command),
                TillEvent.OrderRefunded.class,
                (json, back) -> MoneyJson.refunded(json, back, units));
    }

    CompletableFuture<Reply> discount(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        int version = fields.number("version", 0);
        Discount.Kind kind =
                word(fields, "for", "guest", List.of("guest", "staff-meal")).equals("guest")
                        ? Discount.Kind.GUEST
                        : Discount.Kind.STAFF_MEAL;
        int cents = fields.number("cents", 0);
        int milliPercent = fields.number("milliPercent", 0);
        String reason = fields.text("reason", "").strip();
        fields.nothingElse();
        boolean both = cents != 0 && milliPercent != 0;
        if (both || cents < 0 || milliPercent < 0 || milliPercent > Discount.MILLI_PERCENT_ALL) {
            throw new BadJson(ProblemKind.BAD_FIELD, "json.discount");
        }
        Discount discount = new Discount(kind, cents, milliPercent, reason);
        return submit(
                ask,
                new ForOrders(new OrderCommand.SetDiscount(ask.path("order"), version, discount)),
                OrderDiscounted.class,
                MoneyJson::discounted);
    }

    CompletableFuture<Reply> open(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        return move(
                ask,
                fields,
                new TillCommand.OpenTill(cashier(fields), fields.number("floatCents")));
    }

    CompletableFuture<Reply> payIn(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String reason = fields.text("reason", "").strip();
        return move(
                ask,
                fields,
                new TillCommand.PayIn(cashier(fields), fields.number("cents"), reason));
    }

    CompletableFuture<Reply> payOut(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String reason = fields.text("reason", "").strip();
        return move(
                ask,
                fields,
                new TillCommand.PayOut(cashier(fields), fields.number("cents"), reason));
    }

    CompletableFuture<Reply> close(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        List<TillCommand.Pieces> counts = new ArrayList<>();
        for (Fields count : fields.objects("counts")) {
            counts.add(new TillCommand.Pieces(count.number("cents"), count.number("pieces")));
            count.nothingElse();
        }
        return move(ask, fields, new TillCommand.CloseTill(cashier(fields), counts));
    }

    CompletableFuture<Reply> now(HttpServerExchange exchange, T text) {
        return context.follower().ask(stand -> Reply.json(200, json -> now(json, stand)));
    }

    CompletableFuture<Reply> report(HttpServerExchange exchange, T text) throws Refused {
        boolean csv = Downloads.isCsvWanted(exchange);
        return days.ask(
                exchange,
                text,
                stand -> DayReport.of(stand.orders(), stand.till()),
                report ->
                        csv
                                ? Downloads.csv(
                                        "till-" + report.date(),
                                        TillRecords.COLUMNS,
                                        to ->
                                                TillRecords.write(
                                                        to, report, context.settings().zone()))
                                : Reply.json(200, json -> MoneyJson.report(json, report)));
    }

    private static void now(JsonGenerator json, Stand stand) throws IOException {
        json.writeStartObject();
        json.writeArrayFieldStart("open");
        for (Drawer drawer : stand.till().open()) {
            MoneyJson.drawer(json, drawer);
        }
        json.writeEndArray();
        MoneyJson.takings(json, "apart", stand.till().apart());
        MoneyJson.units(json, stand.settings().cash().units());
        json.writeNumberField("roundToCents", stand.settings().cash().rounding().stepCents());
        json.writeNumberField("seq", stand.seq());
        json.writeEndObject();
    }

    /** Writes what an event came to. */
    private interface Writer<E> {
        void write(JsonGenerator json, E event) throws IOException;
    }

    private CompletableFuture<Reply> move(Ask ask, Fields fields, TillCommand command)
            throws BadJson {
        fields.nothingElse();
        return submit(ask, new ForTill(command), TillEvent.class, MoneyJson::moved);
    }

    /** The answer follows from the event alone, so that a repeat gets the same. */
    private <E> CompletableFuture<Reply> submit(
            Ask ask, StandCommand command, Class<E> type, Writer<E> writer) {
        Function<List<Recorded>, Reply> done =
                events -> {
                    Recorded recorded = events.get(events.size() - 1);
                    return Reply.json(
                            200,
                            json -> {
                                json.writeStartObject();
                                writer.write(json, type.cast(recorded.event()));
                                json.writeNumberField("seq", recorded.seq());
                                OrderJson.time(json, "at", recorded.atMs());
                                json.writeEndObject();
                            });
                };
        return Doing.submit(context.desk(), ask, command, done);
    }

    private static String cashier(Fields fields) throws BadJson {
        return fields.text("cashier", "").strip();
    }

    private static Means means(Fields fields) throws BadJson {
        String word = word(fields, "means", "", List.of("cash", "card"));
        return Means.valueOf(word.toUpperCase(Locale.ROOT));
    }

    private static String word(Fields fields, String field, String usual, List<String> known)
            throws BadJson {
        String word = fields.text(field, usual);
        if (!known.contains(word)) {
            throw new BadJson(
                    ProblemKind.BAD_FIELD, "json.word", "/" + field, String.join(", ", known));
        }
        return word;
    }
}
