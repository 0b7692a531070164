package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import sopwell.boards.StationBoard;
import sopwell.boards.StationLoads;

/** What a station makes in one go, as JSON. Stateless. */
final class StationJson {
    private StationJson() {}

    /** The field {@code loads}, if the station has some. */
    static void loads(JsonGenerator json, StationBoard board) throws IOException {
        if (board.loads().isEmpty()) {
            return;
        }
        StationLoads all = board.loads().get();
        json.writeArrayFieldStart("loads");
        for (StationLoads.Load load : all.loads()) {
            json.writeStartObject();
            json.writeBooleanField("started", load.started());
            OrderJson.time(json, "startBy", load.startByMs());
            OrderJson.time(json, "upAt", load.upAtMs());
            json.writeNumberField("pieces", load.pieces());
            json.writeNumberField("capacity", all.capacity());
            json.writeArrayFieldStart("shares");
            for (StationLoads.Share share : load.shares()) {
                share(json, share);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void share(JsonGenerator json, StationLoads.Share share) throws IOException {
        json.writeStartObject();
        json.writeStringField("part", share.part().toString());
        json.writeNumberField("number", share.number());
        json.writeNumberField("pieces", share.pieces());
        if (!share.feeds().en().isEmpty()) {
            JsonFrames.text(json, "feeds", share.feeds());
        }
        json.writeEndObject();
    }
}
