package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import sopwell.boards.Board;
import sopwell.boards.Column;
import sopwell.boards.CounterBoard;
import sopwell.boards.CounterRow;
import sopwell.boards.PartRow;
import sopwell.boards.PassRow;
import sopwell.boards.ReadyRow;
import sopwell.boards.Row;
import sopwell.boards.StationBoard;
import sopwell.boards.StepCell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.PartId;
import sopwell.menu.LocalText;
import sopwell.web.Json;
import sopwell.web.live.Frame;
import sopwell.web.live.FrameWriter;

/**
 * Frames as JSON: {@code board}, {@code epoch}, {@code seq}, {@code whole}, {@code now}, {@code
 * rows}, the ids of all rows in {@code order}, and {@code below}. With {@code whole} false, the
 * rows are only those that are new or changed since the frame with the {@code seq} in {@code prev}.
 * A sign of life is {@code beat}, the log's last place, and {@code now}. Thread-safe.
 */
public final class JsonFrames implements FrameWriter {
    @Override
    public String write(Frame frame) {
        return Json.text(json -> write(json, frame));
    }

    @Override
    public String beat(long seq, long nowMs) {
        return Json.text(
                json -> {
                    json.writeStartObject();
                    json.writeNumberField("beat", seq);
                    OrderJson.time(json, "now", nowMs);
                    json.writeEndObject();
                });
    }

    static void write(JsonGenerator json, Frame frame) throws IOException {
        Board board = frame.board();
        json.writeStartObject();
        json.writeStringField("board", frame.name());
        json.writeStringField("epoch", frame.epoch());
        json.writeNumberField("seq", frame.seq());
        json.writeBooleanField("whole", frame.isWhole());
        json.writeNumberField("prev", frame.prev());
        OrderJson.time(json, "now", frame.nowMs());
        json.writeArrayFieldStart("rows");
        for (Row row : frame.rows()) {
            row(json, row);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("order");
        for (Row row : board.rows()) {
            json.writeString(row.rowId());
        }
        json.writeEndArray();
        json.writeNumberField("below", board.below());
        if (board instanceof StationBoard station) {
            columns(json, station.columns());
            StationJson.loads(json, station);
            if (!station.pans().isEmpty()) {
                PanApi.list(json, station.pans(), frame.nowMs());
            }
        } else if (board instanceof CounterBoard counter) {
            QueryJson.open(json, counter.queries());
        }
        if (board instanceof CounterBoard counter) {
            OutApi.list(json, counter.outs());
        }
        json.writeEndObject();
    }

    private static void row(JsonGenerator json, Row row) throws IOException {
        json.writeStartObject();
        json.writeStringField("row", row.rowId());
        if (row instanceof PartRow part) {
            part(json, part);
        } else if (row instanceof PassRow pass) {
            pass(json, pass);
        } else if (row instanceof ReadyRow ready) {
            ready(json, ready);
        } else if (row instanceof CounterRow counter) {
            counter(json, counter);
        }
        json.writeEndObject();
    }

    private static void part(JsonGenerator json, PartRow row) throws IOException {
        json.writeStringField("part", row.part().toString());
        json.writeArrayFieldStart("parts");
        for (PartId one : row.parts()) {
            json.writeString(one.toString());
        }
        json.writeEndArray();
        json.writeStringField("order", row.part().order());
        json.writeNumberField("digit", row.digit());
        head(json, row.number(), row.name(), row.placedAtMs());
        json.writeNumberField("quantity", row.quantity());
        if (row.quantityBefore() > 0) {
            json.writeNumberField("quantityBefore", row.quantityBefore());
        }
        text(json, "item", row.item());
        json.writeBooleanField("started", row.started());
        json.writeBooleanField("unseen", row.unseen());
        json.writeBooleanField("cancelled", row.cancelled());
        PartJson.waits(json, row.waits());
        if (row.again().isPresent()) {
            PartJson.remake(json, row.again().get());
        }
        if (row.startByMs() > 0) {
            OrderJson.time(json, "startBy", row.startByMs());
        }
        if (row.query().isPresent()) {
            json.writeObjectFieldStart("query");
            QueryJson.fields(json, row.query().get().query());
            json.writeEndObject();
        }
        json.writeArrayFieldStart("cells");
        for (StepCell cell : row.cells()) {
            if (cell.applies() || cell.changed()) {
                json.writeStartObject();
                json.writeStringField("step", cell.step());
                words(json, "words", cell.words());
                if (cell.changed()) {
                    words(json, "before", cell.before());
                }
                json.writeEndObject();
            }
        }
        json.writeEndArray();
    }

    private static void pass(JsonGenerator json, PassRow row) throws IOException {
        json.writeStringField("order", row.order());
        head(json, row.number(), row.name(), row.placedAtMs());
        json.writeBooleanField("toGo", row.toGo());
        json.writeStringField("state", OrderJson.word(row.stage()));
        json.writeNumberField("pieces", row.pieces());
        json.writeNumberField("dueCents", row.dueCents());
        OrderJson.time(json, "wholeAt", row.wholeAtMs());
        if (row.calls() > 0) {
            json.writeNumberField("calls", row.calls());
            OrderJson.time(json, "calledAt", row.calledAtMs());
        }
        if (row.bags() > 0) {
            json.writeNumberField("bags", row.bags());
        }
        json.writeArrayFieldStart("allergens");
        for (String allergen : row.allergens()) {
            json.writeString(allergen);
        }
        json.writeEndArray();
        if (row.digit() > 0) {
            json.writeNumberField("digit", row.digit());
        }
        json.writeArrayFieldStart("parts");
        for (PassRow.PassPart part : row.parts()) {
            json.writeStartObject();
            json.writeStringField("part", part.part().toString());
            json.writeStringField("station", part.part().station());
            json.writeNumberField("quantity", part.quantity());
            text(json, "item", part.item());
            words(json, "words", part.words());
            json.writeStringField("state", OrderJson.word(part.state()));
            json.writeBooleanField("done", part.done());
            json.writeBooleanField("cancelled", part.cancelled());
            json.writeBooleanField("asked", part.asked());
            OrderJson.time(json, "since", part.sinceMs());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void ready(JsonGenerator json, ReadyRow row) throws IOException {
        json.writeNumberField("number", row.number());
        json.writeStringField("name", row.name());
        OrderJson.time(json, "freshAt", row.freshAtMs());
    }

    private static void counter(JsonGenerator json, CounterRow row) throws IOException {
        json.writeStringField("order", row.order());
        head(json, row.number(), row.name(), row.placedAtMs());
        json.writeBooleanField("toGo", row.toGo());
        json.writeNumberField("version", row.version());
        json.writeStringField("state", OrderJson.word(row.stage()));
        json.writeNumberField("totalCents", row.totalCents());
        json.writeNumberField("dueCents", row.dueCents());
    }

    private static void head(JsonGenerator json, int number, String name, long placedAtMs)
            throws IOException {
        json.writeNumberField("number", number);
        json.writeStringField("name", name);
        OrderJson.time(json, "placedAt", placedAtMs);
    }

    private static void columns(JsonGenerator json, List<Column> columns) throws IOException {
        json.writeArrayFieldStart("columns");
        for (Column column : columns) {
            json.writeStartObject();
            json.writeStringField("step", column.step());
            text(json, "name", column.name());
            json.writeNumberField("total", column.total());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void words(JsonGenerator json, String field, List<CellWord> words)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (CellWord word : words) {
            json.writeStartObject();
            json.writeStringField("tone", OrderJson.word(word.tone()));
            json.writeStringField("en", word.text().en());
            json.writeStringField("es", word.text().es());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    static void text(JsonGenerator json, String field, LocalText text) throws IOException {
        json.writeObjectFieldStart(field);
        json.writeStringField("en", text.en());
        json.writeStringField("es", text.es());
        json.writeEndObject();
    }
}
