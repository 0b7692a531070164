package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.StandCommand.ForOuts;
import sopwell.log.Recorded;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.orders.OutCommand;
import sopwell.orders.OutEvent;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;
import sopwell.web.T;

/** What is out, for programs. Thread-safe. */
final class OutApi {
    private final ApiContext context;

    OutApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> list(HttpServerExchange exchange, T text) {
        return context.follower()
                .ask(
                        stand -> {
                            List<Shortage> all = stand.outs().all();
                            return Reply.json(
                                    200,
                                    json -> {
                                        json.writeStartObject();
                                        list(json, all);
                                        json.writeEndObject();
                                    });
                        });
    }

    CompletableFuture<Reply> mark(Ask ask) throws BadJson, Refused {
        Fields fields = ask.fields();
        Out out = out(fields, ask.text());
        int left = fields.has("left") ? fields.number("left") : 0;
        int minutes = fields.has("minutes") ? fields.number("minutes") : 0;
        fields.nothingElse();
        return submit(ask, new OutCommand.Mark(out, left, minutes));
    }

    CompletableFuture<Reply> lift(Ask ask) throws BadJson, Refused {
        Fields fields = ask.fields();
        Out out = out(fields, ask.text());
        fields.nothingElse();
        return submit(ask, new OutCommand.Lift(out));
    }

    private CompletableFuture<Reply> submit(Ask ask, OutCommand command) {
        return Doing.submit(
                context.desk(), ask, new ForOuts(command), events -> done(last(events)));
    }

    private static Out out(Fields fields, T text) throws BadJson, Refused {
        String written = fields.text("out");
        Optional<Out> out = Out.read(written);
        if (out.isEmpty()) {
            Refusal refusal = Refusal.of(Reason.NOT_ON_MENU, written);
            throw new Refused(RefusalProblems.of(refusal, text));
        }
        return out.get();
    }

    /** The field {@code outs}. */
    static void list(JsonGenerator json, List<Shortage> all) throws IOException {
        json.writeArrayFieldStart("outs");
        for (Shortage shortage : all) {
            json.writeStartObject();
            shortage(json, shortage.out(), shortage.left(), shortage.untilMs());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static Reply done(Recorded recorded) {
        OutEvent event = (OutEvent) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    switch (event.kind()) {
                        case MARKED -> {
                            OutEvent.OutMarked marked = (OutEvent.OutMarked) event;
                            shortage(json, marked.out(), marked.left(), marked.untilMs());
                        }
                        case LIFTED -> json.writeStringField("back", event.out().toString());
                    }
                    json.writeNumberField("seq", recorded.seq());
                    json.writeEndObject();
                });
    }

    private static void shortage(JsonGenerator json, Out out, int left, long untilMs)
            throws IOException {
        json.writeStringField("out", out.toString());
        json.writeNumberField("left", Math.max(0, left));
        if (untilMs > 0) {
            OrderJson.time(json, "until", untilMs);
        }
    }

    private static Recorded last(List<Recorded> events) {
        return events.get(events.size() - 1);
    }
}
