package sopwell.web.api;

import io.undertow.server.HttpServerExchange;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.Limits;
import sopwell.mix.DayTally;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.WaitTally;
import sopwell.mix.Waits;
import sopwell.records.JsonRows;
import sopwell.records.MixRecords;
import sopwell.records.WaitRecords;
import sopwell.web.AskedPeriod;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** Tables of several days for programs and spreadsheets. Thread-safe. */
final class PeriodApi {
    private final ApiContext context;

    PeriodApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> mix(HttpServerExchange exchange, T text) throws Refused {
        AskedPeriod asked = asked(exchange, text);
        boolean csv = Downloads.isCsvWanted(exchange);
        return context.tallies()
                .of(asked)
                .thenApply(
                        days ->
                                reply(
                                        new Named("mix", asked, csv),
                                        MixRecords.COLUMNS,
                                        to -> {
                                            Names names = context.tallies().names().get();
                                            for (DayTally day : days) {
                                                MixRecords.write(to, part(asked, day), names);
                                            }
                                        }));
    }

    CompletableFuture<Reply> waits(HttpServerExchange exchange, T text) throws Refused {
        AskedPeriod asked = asked(exchange, text);
        boolean csv = Downloads.isCsvWanted(exchange);
        int target = context.settings().targetSeconds();
        return context.tallies()
                .waits(asked)
                .thenApply(
                        days ->
                                reply(
                                        new Named("waits", asked, csv),
                                        WaitRecords.COLUMNS,
                                        to -> {
                                            Names names = context.tallies().names().get();
                                            Period period = asked.period().orElseThrow();
                                            for (WaitTally day : days) {
                                                Period on = period.on(day.date());
                                                WaitRecords.write(
                                                        to,
                                                        Waits.of(on, List.of(day), target, names));
                                            }
                                        }));
    }

    /** What a table is of, and as what it is wanted. */
    private record Named(String what, AskedPeriod asked, boolean csv) {}

    private static Reply reply(Named named, List<String> columns, Downloads.Rows rows) {
        Period period = named.asked().period().orElseThrow();
        if (named.csv()) {
            String name = named.what() + "-" + period.from() + "-to-" + period.to();
            return Downloads.csv(name, columns, rows);
        }
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("from", period.from().toString());
                    json.writeStringField("to", period.to().toString());
                    json.writeFieldName("rows");
                    try (JsonRows table = new JsonRows(json, columns)) {
                        rows.write(table);
                    }
                    json.writeEndObject();
                });
    }

    /** Only the half hours that were asked for. */
    private static DayTally part(AskedPeriod asked, DayTally day) {
        Period period = asked.period().orElseThrow();
        return new DayTally(
                day.date(),
                day.halfHours().stream()
                        .filter(half -> period.holds(day.date(), half.index()))
                        .toList());
    }

    private AskedPeriod asked(HttpServerExchange exchange, T text) throws Refused {
        LocalDate today = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        AskedPeriod asked = AskedPeriod.of(name -> parameter(exchange, name), text, today);
        if (asked.period().isEmpty()) {
            throw new Refused(Problem.of(ProblemKind.PERIOD_WRONG, text, asked.sentence()));
        }
        Period period = asked.period().get();
        if (ChronoUnit.DAYS.between(period.from(), period.to()) >= Limits.EXPORT_DAYS_MAX) {
            throw new Refused(
                    Problem.of(
                            ProblemKind.PERIOD_WRONG,
                            text,
                            text.of("mix.too-long", Limits.EXPORT_DAYS_MAX)));
        }
        return asked;
    }

    private static String parameter(HttpServerExchange exchange, String name) {
        return Optional.ofNullable(exchange.getQueryParameters().get(name))
                .map(Deque::getFirst)
                .orElse("");
    }
}
