package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import sopwell.boards.PanRows;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForPans;
import sopwell.log.Recorded;
import sopwell.stock.PanCommand;
import sopwell.stock.PanEvent;
import sopwell.stock.PanLeft;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;
import sopwell.web.T;

/** What is kept hot, for programs. Thread-safe. */
final class PanApi {
    private static final int FULL_PERCENT = 100;

    private final ApiContext context;

    PanApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> list(HttpServerExchange exchange, T text) {
        long nowMs = context.clock().millis();
        return context.follower().ask(stand -> list(stand, nowMs));
    }

    private static Reply list(Stand stand, long nowMs) {
        List<PanLeft> pans = PanRows.all(stand.menu(), stand.kitchen(), stand.pans(), nowMs);
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeNumberField("seq", stand.seq());
                    list(json, pans, nowMs);
                    json.writeEndObject();
                });
    }

    CompletableFuture<Reply> refill(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        int percent = fields.number("percent", FULL_PERCENT);
        fields.nothingElse();
        return Doing.submit(
                context.desk(),
                ask,
                new ForPans(new PanCommand.Refill(ask.path("pan"), percent)),
                PanApi::done);
    }

    private static Reply done(List<Recorded> events) {
        Recorded recorded = events.get(events.size() - 1);
        PanEvent.PanRefilled refilled = (PanEvent.PanRefilled) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("pan", refilled.pan());
                    json.writeNumberField("amount", refilled.amount());
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }

    /** The field {@code pans}. */
    static void list(JsonGenerator json, List<PanLeft> pans, long nowMs) throws IOException {
        json.writeArrayFieldStart("pans");
        for (PanLeft pan : pans) {
            json.writeStartObject();
            json.writeStringField("pan", pan.pan().id());
            JsonFrames.text(json, "name", pan.pan().name());
            json.writeStringField("station", pan.pan().station());
            JsonFrames.text(json, "unit", pan.pan().unit());
            json.writeNumberField("full", pan.pan().full());
            json.writeNumberField("promised", pan.promised());
            if (pan.isKnown()) {
                json.writeNumberField("left", pan.left());
                json.writeNumberField("builds", pan.builds());
                OrderJson.time(json, "refilledAt", pan.refilledAtMs());
                OrderJson.time(json, "startBy", pan.startByMs());
                json.writeBooleanField("due", pan.isDue(nowMs));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
