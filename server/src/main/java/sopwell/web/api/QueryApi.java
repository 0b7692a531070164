package sopwell.web.api;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.StandCommand.ForQueries;
import sopwell.kitchen.PartId;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.QueryEvent.QueryAnswered;
import sopwell.kitchen.QueryEvent.QueryAsked;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Problem;
import sopwell.web.Reply;

/** Queries and their answers for programs. Thread-safe. */
final class QueryApi {
    private final ApiContext context;

    QueryApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> ask(Ask ask) throws BadJson, Refused {
        Fields fields = ask.fields();
        Question question = new Question(fields.texts("options"), fields.text("text", "").strip());
        fields.nothingElse();
        Optional<PartId> part = PartId.read(ask.path("part"));
        if (part.isEmpty()) {
            throw new Refused(problem(Reason.UNKNOWN_PART, ask.path("part"), ask));
        }
        return Doing.submit(
                context.desk(),
                ask,
                new ForQueries(new QueryCommand.Ask(part.get(), question)),
                QueryApi::asked);
    }

    CompletableFuture<Reply> answer(Ask ask) throws BadJson, Refused {
        Fields fields = ask.fields();
        Optional<List<String>> options =
                fields.has("options") ? Optional.of(fields.texts("options")) : Optional.empty();
        String text = fields.text("text", "").strip();
        fields.nothingElse();
        Optional<QueryId> query = QueryId.read(ask.path("query"));
        if (query.isEmpty()) {
            throw new Refused(problem(Reason.UNKNOWN_QUERY, ask.path("query"), ask));
        }
        return Doing.submit(
                context.desk(),
                ask,
                new ForQueries(new QueryCommand.Answer(query.get(), options, text)),
                QueryApi::answered);
    }

    private static Problem problem(Reason reason, String named, Ask ask) {
        return RefusalProblems.of(Refusal.of(reason, named), ask.text());
    }

    private static Reply asked(List<Recorded> events) {
        Recorded recorded = events.get(0);
        QueryId query = ((QueryAsked) recorded.event()).query();
        return Reply.json(
                201,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("query", query.toString());
                    json.writeStringField("part", query.part().toString());
                    json.writeStringField("order", query.part().order());
                    json.writeStringField("state", "open");
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }

    /** The answer to an answer; with the order's new version and total when it changed the line. */
    private static Reply answered(List<Recorded> events) {
        Recorded recorded = events.get(events.size() - 1);
        QueryAnswered answered = (QueryAnswered) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("query", answered.query().toString());
                    json.writeStringField("part", answered.query().part().toString());
                    json.writeStringField("order", answered.query().part().order());
                    json.writeStringField("state", "answered");
                    json.writeBooleanField("changed", answered.changed());
                    if (events.get(0).event() instanceof OrderChanged changed) {
                        json.writeNumberField("version", changed.version());
                        json.writeNumberField("totalCents", changed.totals().totalCents());
                    }
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }
}
