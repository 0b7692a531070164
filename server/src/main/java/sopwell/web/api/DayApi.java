package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.menu.Lang;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayTally;
import sopwell.mix.ItemCount;
import sopwell.mix.Mix;
import sopwell.mix.MixTable;
import sopwell.orders.OrderEvent.DayClosed;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.OrderEvent.DayReopened;
import sopwell.records.MixRecords;
import sopwell.records.WaitRecords;
import sopwell.web.DayFigures;
import sopwell.web.Languages;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** A day's mix and waits for programs. Thread-safe. */
final class DayApi {
    private final ApiContext context;

    DayApi(ApiContext context) {
        this.context = context;
    }

    /** The answer to opening or closing a day. */
    static Reply day(List<Recorded> events) {
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeBooleanField("changed", !events.isEmpty());
                    for (Recorded recorded : events) {
                        if (recorded.event() instanceof DayOpened opened) {
                            json.writeStringField("opened", opened.date().toString());
                        } else if (recorded.event() instanceof DayClosed closed) {
                            json.writeStringField("closed", closed.date().toString());
                        } else if (recorded.event() instanceof DayReopened again) {
                            json.writeStringField("reopened", again.date().toString());
                        }
                    }
                    if (!events.isEmpty()) {
                        json.writeNumberField("seq", events.get(events.size() - 1).seq());
                    }
                    json.writeEndObject();
                });
    }

    CompletableFuture<Reply> mix(HttpServerExchange exchange, T text) throws Refused {
        boolean csv = Downloads.isCsvWanted(exchange);
        Lang lang = Languages.of(exchange);
        return figures(
                exchange,
                text,
                counted ->
                        csv
                                ? Downloads.csv(
                                        "mix-" + counted.tally().date(),
                                        MixRecords.COLUMNS,
                                        to ->
                                                MixRecords.write(
                                                        to,
                                                        counted.tally(),
                                                        context.tallies().names().get()))
                                : Reply.json(200, json -> mix(json, counted, lang)));
    }

    CompletableFuture<Reply> waits(HttpServerExchange exchange, T text) throws Refused {
        boolean csv = Downloads.isCsvWanted(exchange);
        Lang lang = Languages.of(exchange);
        return figures(
                exchange,
                text,
                counted ->
                        csv
                                ? Downloads.csv(
                                        "waits-" + counted.tally().date(),
                                        WaitRecords.COLUMNS,
                                        to -> WaitRecords.write(to, counted.waits()))
                                : Reply.json(
                                        200, json -> WaitsJson.write(json, counted.waits(), lang)));
    }

    /** Answers from the figures of the day that the path names. */
    private CompletableFuture<Reply> figures(
            HttpServerExchange exchange, T text, Function<DayFigures, Reply> reply) throws Refused {
        String named = Ask.path(exchange, "date");
        CompletableFuture<Optional<DayFigures>> answer =
                named.equals("today")
                        ? newest(DayFigures::of)
                        : context.tallies().figures(date(named, text));
        return answer.thenApply(found -> reply(found, reply, named, text));
    }

    /** Answers a question about the day that the path names. */
    <A> CompletableFuture<Reply> ask(
            HttpServerExchange exchange,
            T text,
            Function<Stand, A> question,
            Function<A, Reply> reply)
            throws Refused {
        String named = Ask.path(exchange, "date");
        CompletableFuture<Optional<A>> answer =
                named.equals("today")
                        ? newest(question)
                        : context.day().ask(date(named, text), question);
        return answer.thenApply(found -> reply(found, reply, named, text));
    }

    private <A> CompletableFuture<Optional<A>> newest(Function<Stand, A> question) {
        return context.follower()
                .ask(stand -> stand.orders().date().map(d -> question.apply(stand)));
    }

    private static <A> Reply reply(
            Optional<A> found, Function<A, Reply> reply, String named, T text) {
        return found.map(reply)
                .orElseGet(() -> Reply.problem(Problem.of(ProblemKind.NO_SUCH_DAY, text, named)));
    }

    private static LocalDate date(String named, T text) throws Refused {
        try {
            return LocalDate.parse(named);
        } catch (DateTimeParseException wrong) {
            throw new Refused(Problem.of(ProblemKind.DATE_WRONG, text, named));
        }
    }

    private static void mix(JsonGenerator json, DayFigures counted, Lang lang) throws IOException {
        Mix mix = counted.mix();
        DayTally.Counts counts = mix.counts();
        json.writeStartObject();
        json.writeStringField("date", mix.period().from().toString());
        json.writeNumberField("orders", counts.orders());
        json.writeNumberField("voids", counts.voids());
        json.writeNumberField("pieces", mix.pieces());
        json.writeNumberField("staffOrders", counts.staffOrders());
        json.writeNumberField("staffPieces", mix.staffPieces());
        json.writeNumberField("takenBefore", counts.takenBefore());
        json.writeNumberField("toldPrices", counts.toldPrices());
        json.writeNumberField("subtotalCents", counts.subtotalCents());
        json.writeArrayFieldStart("items");
        for (ItemCount item : mix.items()) {
            json.writeStartObject();
            json.writeStringField("item", item.item());
            json.writeStringField("name", item.name().in(lang));
            if (!item.size().isEmpty()) {
                json.writeStringField("size", item.size());
            }
            json.writeNumberField("pieces", item.pieces());
            json.writeNumberField("cents", item.cents());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("tables");
        for (MixTable table : mix.tables()) {
            table(json, table, lang);
        }
        json.writeEndArray();
        exceptions(json, counted.exceptions());
        json.writeEndObject();
    }

    private static void exceptions(JsonGenerator json, DayExceptions day) throws IOException {
        json.writeObjectFieldStart("exceptions");
        json.writeNumberField("queriesAsked", day.asked());
        json.writeNumberField("queriesAnswered", day.waits().measured());
        json.writeNumberField("queryMedianSeconds", day.waits().medianSeconds());
        json.writeNumberField("queryNinetiethSeconds", day.waits().ninetiethSeconds());
        json.writeNumberField("changes", day.changes());
        json.writeNumberField("changesAfterStart", day.changesAfterStart());
        json.writeNumberField("voidsAfterStart", day.voidsAfterStart());
        json.writeArrayFieldStart("voids");
        for (DayExceptions.VoidCount count : day.voids()) {
            json.writeStartObject();
            json.writeStringField("reason", count.reason());
            json.writeNumberField("orders", count.orders());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("remakes");
        for (DayExceptions.RemakeCount count : day.remakes()) {
            json.writeStartObject();
            json.writeStringField("reason", OrderJson.word(count.reason()));
            json.writeNumberField("pieces", count.pieces());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void table(JsonGenerator json, MixTable table, Lang lang) throws IOException {
        json.writeStartObject();
        json.writeStringField("item", table.item());
        json.writeStringField("name", table.name().in(lang));
        json.writeStringField("down", table.down().in(lang));
        json.writeStringField("across", table.across().in(lang));
        json.writeArrayFieldStart("cells");
        for (int row = 0; row < table.rows().size(); row++) {
            for (int column = 0; column < table.columns().size(); column++) {
                json.writeStartObject();
                json.writeStringField("down", table.rows().get(row).id());
                json.writeStringField("across", table.columns().get(column).id());
                json.writeNumberField("pieces", table.pieces().get(row).get(column));
                json.writeEndObject();
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("beside");
        for (MixTable.WayCount beside : table.besides()) {
            json.writeStartObject();
            json.writeStringField("way", beside.way().id());
            json.writeNumberField("pieces", beside.pieces());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
