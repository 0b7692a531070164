package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.log.Recorded;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.BatchRow;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.larder.StockNow;
import sopwell.stock.larder.Yields;
import sopwell.stock.safety.Reading;
import sopwell.stock.safety.Standing;
import sopwell.stock.safety.Temperature;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;
import sopwell.web.T;

/** What is being made, for programs. Thread-safe. */
final class BatchApi {
    private final ApiContext context;

    BatchApi(ApiContext context) {
        this.context = context;
    }

    /** The units that a temperature may be sent in. */
    private enum Degrees {
        F,
        C
    }

    CompletableFuture<Reply> list(HttpServerExchange exchange, T text) {
        return LarderApi.now(context, BatchApi::batches);
    }

    CompletableFuture<Reply> start(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String makes = fields.text("makes");
        int lots = fields.number("lots", 1);
        String note = fields.text("note", "");
        fields.nothingElse();
        return submit(ask, new LarderCommand.StartBatch(makes, lots, note));
    }

    CompletableFuture<Reply> move(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String step = fields.text("step");
        fields.nothingElse();
        return submit(ask, new LarderCommand.MoveBatch(ask.path("batch"), step));
    }

    CompletableFuture<Reply> measure(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String degrees = fields.text("degrees");
        boolean celsius = fields.word("unit", Degrees.class) == Degrees.C;
        String by = fields.text("by", "");
        fields.nothingElse();
        return submit(
                ask, new LarderCommand.TakeTemperature(ask.path("batch"), degrees, celsius, by));
    }

    CompletableFuture<Reply> gave(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String amount = fields.text("amount");
        String unit = fields.text("unit");
        fields.nothingElse();
        return submit(ask, new LarderCommand.YieldBatch(ask.path("batch"), amount, unit));
    }

    CompletableFuture<Reply> discard(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        String amount = fields.text("amount", "");
        String unit = fields.text("unit", "");
        String reason = fields.text("reason", "");
        fields.nothingElse();
        return submit(ask, new LarderCommand.DiscardBatch(ask.path("batch"), amount, unit, reason));
    }

    CompletableFuture<Reply> useUp(Ask ask) throws BadJson {
        ask.fields().nothingElse();
        return submit(ask, new LarderCommand.UseUpBatch(ask.path("batch")));
    }

    private CompletableFuture<Reply> submit(Ask ask, LarderCommand command) {
        return Doing.submit(context.desk(), ask, new ForLarder(command), BatchApi::done);
    }

    private static Reply done(List<Recorded> events) {
        Recorded recorded = events.get(events.size() - 1);
        BatchEvent event = (BatchEvent) recorded.event();
        return Reply.json(
                event.kind() == BatchEvent.Kind.STARTED ? 201 : 200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("batch", event.batch());
                    said(json, event);
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }

    private static void said(JsonGenerator json, BatchEvent event) throws IOException {
        switch (event.kind()) {
            case STARTED -> {
                BatchEvent.BatchStarted started = (BatchEvent.BatchStarted) event;
                json.writeStringField("makes", started.makes());
                json.writeNumberField("lots", started.lots());
                json.writeNumberField("plannedThousandths", started.planned());
                json.writeStringField("step", started.step());
            }
            case MOVED -> {
                BatchEvent.BatchMoved moved = (BatchEvent.BatchMoved) event;
                json.writeStringField("step", moved.step());
                json.writeBooleanField("limitsMet", moved.met());
            }
            case MEASURED -> degrees(json, ((BatchEvent.TemperatureTaken) event).temperature());
            case YIELDED -> {
                BatchEvent.BatchYielded yielded = (BatchEvent.BatchYielded) event;
                LarderApi.measure(json, yielded.gave());
                json.writeBooleanField("limitsMet", yielded.met());
                json.writeStringField("preparedOn", yielded.preparedOn().toString());
                json.writeStringField("useBy", yielded.useBy().toString());
            }
            case DISCARDED ->
                    json.writeStringField("reason", ((BatchEvent.BatchDiscarded) event).reason());
            case USED_UP -> {}
        }
    }

    private static void batches(JsonGenerator json, StockNow now, long nowMs) throws IOException {
        json.writeArrayFieldStart("batches");
        for (BatchRow row : now.batches()) {
            batch(json, row, nowMs);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("labels");
        for (Label label : now.labels()) {
            json.writeStartObject();
            json.writeStringField("batch", label.batch());
            json.writeStringField("makes", label.makes());
            json.writeNumberField("gaveThousandths", label.thousandths());
            json.writeStringField("preparedOn", label.preparedOn().toString());
            json.writeStringField("useBy", label.useBy().toString());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("yields");
        for (Yields yields : now.yields()) {
            json.writeStartObject();
            json.writeStringField("makes", yields.makes());
            json.writeArrayFieldStart("perMille");
            for (int one : yields.perMille()) {
                json.writeNumber(one);
            }
            json.writeEndArray();
            if (yields.departing().isPresent()) {
                json.writeNumberField("reallyPerMille", yields.departing().get());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        if (now.slicer().isPresent()) {
            clock(json, "slicer", now.slicer().get(), nowMs);
        }
    }

    private static void batch(JsonGenerator json, BatchRow row, long nowMs) throws IOException {
        json.writeStartObject();
        json.writeStringField("batch", row.batch().id());
        json.writeStringField("makes", row.batch().makes());
        json.writeNumberField("lots", row.batch().lots());
        json.writeNumberField("plannedThousandths", row.batch().planned());
        json.writeStringField("note", row.batch().note());
        OrderJson.time(json, "startedAt", row.batch().startedAtMs());
        json.writeStringField("step", row.batch().step());
        OrderJson.time(json, "stepAt", row.batch().stepAtMs());
        if (row.next().isPresent()) {
            json.writeStringField("next", row.next().get().id());
        }
        json.writeArrayFieldStart("readings");
        for (Reading reading : row.batch().readings()) {
            json.writeStartObject();
            OrderJson.time(json, "at", reading.atMs());
            degrees(json, reading.temperature());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("missed");
        for (String step : row.batch().missed()) {
            json.writeString(step);
        }
        json.writeEndArray();
        if (row.standing().isPresent()) {
            clock(json, "clock", row.standing().get(), nowMs);
        }
        json.writeEndObject();
    }

    private static void clock(JsonGenerator json, String field, Standing standing, long nowMs)
            throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("state", word(standing.state()));
        json.writeStringField("advice", word(standing.advice()));
        if (standing.byMs() != 0) {
            OrderJson.time(json, "by", standing.byMs());
            json.writeNumberField("leftSeconds", standing.leftMs(nowMs) / 1_000);
        }
        if (standing.target().isPresent()) {
            json.writeNumberField("targetTenthsF", standing.target().get().inTenthsF());
        }
        json.writeEndObject();
    }

    private static void degrees(JsonGenerator json, Temperature temperature) throws IOException {
        json.writeNumberField("tenthsF", temperature.inTenthsF());
        json.writeNumberField("tenthsC", temperature.inTenthsC());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
