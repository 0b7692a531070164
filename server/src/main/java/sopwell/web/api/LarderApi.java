package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.log.Recorded;
import sopwell.orders.Safety;
import sopwell.stock.larder.Compared;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.LarderLeft;
import sopwell.stock.larder.Measure;
import sopwell.stock.larder.Measures;
import sopwell.stock.larder.StockNow;
import sopwell.stock.larder.TypedAmount;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;
import sopwell.web.T;

/** What is kept, for programs: counts, waste, deliveries. Thread-safe. */
final class LarderApi {
    private final ApiContext context;

    LarderApi(ApiContext context) {
        this.context = context;
    }

    /** Writes the fields of what is kept and made. */
    interface Fill {
        void write(JsonGenerator json, StockNow now, long nowMs) throws IOException;
    }

    /** What is kept and made now, with the number of the last event that is in it. */
    static CompletableFuture<Reply> now(ApiContext context, Fill fill) {
        long nowMs = context.clock().millis();
        Safety safety = context.settings().safety();
        return context.follower()
                .ask(
                        stand -> {
                            StockNow now =
                                    StockNow.of(stand.recipes(), stand.larder(), safety, nowMs);
                            long seq = stand.seq();
                            return Reply.json(
                                    200,
                                    json -> {
                                        json.writeStartObject();
                                        json.writeNumberField("seq", seq);
                                        fill.write(json, now, nowMs);
                                        json.writeEndObject();
                                    });
                        });
    }

    CompletableFuture<Reply> list(HttpServerExchange exchange, T text) {
        return now(context, (json, now, nowMs) -> stock(json, now));
    }

    CompletableFuture<Reply> count(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        TypedAmount asked = asked(fields);
        fields.nothingElse();
        return submit(ask, new LarderCommand.Count(asked));
    }

    CompletableFuture<Reply> waste(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        TypedAmount asked = asked(fields);
        String reason = fields.text("reason", "");
        fields.nothingElse();
        return submit(ask, new LarderCommand.Waste(asked, reason));
    }

    CompletableFuture<Reply> deliver(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        TypedAmount asked = asked(fields);
        String note = fields.text("note", "");
        fields.nothingElse();
        return submit(ask, new LarderCommand.Deliver(asked, note));
    }

    CompletableFuture<Reply> cleanSlicer(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return submit(ask, new LarderCommand.CleanSlicer());
    }

    private static TypedAmount asked(Fields fields) throws BadJson {
        return new TypedAmount(
                fields.text("ingredient"), fields.text("amount"), fields.text("unit"));
    }

    private CompletableFuture<Reply> submit(Ask ask, LarderCommand command) {
        return Doing.submit(context.desk(), ask, new ForLarder(command), LarderApi::done);
    }

    private static Reply done(List<Recorded> events) {
        Recorded recorded = events.get(events.size() - 1);
        LarderEvent event = (LarderEvent) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    switch (event.kind()) {
                        case COUNTED ->
                                measure(json, ((LarderEvent.IngredientCounted) event).counted());
                        case WASTED ->
                                measure(json, ((LarderEvent.IngredientWasted) event).wasted());
                        case DELIVERED ->
                                measure(
                                        json,
                                        ((LarderEvent.IngredientDelivered) event).delivered());
                        case SLICER_CLEANED,
                                CLOCK_STARTED,
                                CLOCK_MEASURED,
                                CLOCK_STOPPED,
                                CARRIED -> {}
                    }
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }

    /** An amount of an ingredient: the fields of an object. */
    static void measure(JsonGenerator json, Measure measure) throws IOException {
        json.writeStringField("ingredient", measure.ingredient());
        json.writeNumberField("thousandths", measure.thousandths());
        json.writeStringField("amount", measure.entered());
        json.writeStringField("unit", measure.unit());
    }

    private static void stock(JsonGenerator json, StockNow now) throws IOException {
        json.writeArrayFieldStart("ingredients");
        for (LarderLeft left : now.left()) {
            json.writeStartObject();
            json.writeStringField("ingredient", left.ingredient().id());
            JsonFrames.text(json, "name", left.ingredient().name());
            json.writeStringField("shelf", left.ingredient().place().shelf().en());
            JsonFrames.text(json, "shelfName", left.ingredient().place().shelf());
            json.writeStringField("base", Measures.id(left.ingredient().base()));
            json.writeArrayFieldStart("units");
            for (String unit : Measures.units(left.ingredient())) {
                json.writeString(unit);
            }
            json.writeEndArray();
            if (left.held().isPresent()) {
                held(json, left.held().get());
            }
            if (left.runsOutAtMs() != 0) {
                OrderJson.time(json, "runsOutAt", left.runsOutAtMs());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("compared");
        for (Compared compared : now.compared()) {
            json.writeStartObject();
            json.writeStringField("ingredient", compared.ingredient());
            OrderJson.time(json, "countedAt", compared.countedAtMs());
            json.writeNumberField("expectedThousandths", compared.expected());
            json.writeNumberField("countedThousandths", compared.counted());
            json.writeNumberField("differenceThousandths", compared.difference());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void held(JsonGenerator json, Held held) throws IOException {
        OrderJson.time(json, "countedAt", held.countedAtMs());
        json.writeNumberField("countedThousandths", held.counted());
        json.writeNumberField("inThousandths", held.in());
        json.writeNumberField("usedThousandths", held.used());
        json.writeNumberField("outThousandths", held.out());
        json.writeNumberField("expectedThousandths", held.expected());
    }
}
