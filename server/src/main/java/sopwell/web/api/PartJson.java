package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import sopwell.boards.RowWait;
import sopwell.kitchen.Again;

/** Writes what is said of a part now and then. Stateless. */
final class PartJson {
    private PartJson() {}

    /** The field {@code waitsFor}, which is always there. */
    static void waits(JsonGenerator json, List<RowWait> waits) throws IOException {
        json.writeArrayFieldStart("waitsFor");
        for (RowWait wait : waits) {
            json.writeStartObject();
            json.writeStringField("part", wait.part().toString());
            json.writeStringField("station", wait.part().station());
            JsonFrames.text(json, "what", wait.what());
            json.writeBooleanField("started", wait.begun());
            if (wait.expectedMs() > 0) {
                OrderJson.time(json, "expectedAt", wait.expectedMs());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** The field {@code remake}. */
    static void remake(JsonGenerator json, Again again) throws IOException {
        json.writeObjectFieldStart("remake");
        json.writeNumberField("quantity", again.pieces());
        json.writeStringField("reason", OrderJson.word(again.reason()));
        json.writeEndObject();
    }
}
