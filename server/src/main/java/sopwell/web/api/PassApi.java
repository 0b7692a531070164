package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.StandCommand.ForPass;
import sopwell.kitchen.PassCommand;
import sopwell.kitchen.PassEvent;
import sopwell.log.Recorded;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;

/** The pass for programs. Thread-safe. */
final class PassApi {
    private final ApiContext context;

    PassApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> call(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return submit(ask, new PassCommand.CallNumber(ask.path("order")));
    }

    CompletableFuture<Reply> bags(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        int bags = fields.number("bags");
        fields.nothingElse();
        return submit(ask, new PassCommand.CountBags(ask.path("order"), bags));
    }

    private CompletableFuture<Reply> submit(Ask ask, PassCommand command) {
        return Doing.submit(
                context.desk(), ask, new ForPass(command), events -> done(events.get(0)));
    }

    private static Reply done(Recorded recorded) {
        PassEvent event = (PassEvent) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("order", event.order());
                    what(json, event);
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }

    private static void what(JsonGenerator json, PassEvent event) throws IOException {
        switch (event.kind()) {
            case CALLED -> json.writeNumberField("calls", ((PassEvent.NumberCalled) event).calls());
            case BAGGED -> json.writeNumberField("bags", ((PassEvent.BagsCounted) event).bags());
        }
    }
}
