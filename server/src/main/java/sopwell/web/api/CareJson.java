package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import sopwell.backup.BackupState;
import sopwell.desk.ClockState;
import sopwell.desk.DiskState;
import sopwell.web.Care;

/** Backups, the box's clock and its disk, for whoever watches over many stands. Stateless. */
final class CareJson {
    private CareJson() {}

    static void write(JsonGenerator json, Care care) throws IOException {
        backup(json, care.backup().get());
        clock(json, care.clock().get());
        disk(json, care.disk().get());
    }

    private static void backup(JsonGenerator json, BackupState state) throws IOException {
        json.writeObjectFieldStart("backup");
        json.writeStringField("warning", word(state.warning()));
        json.writeBooleanField("sameDisk", state.sameDisk());
        json.writeNumberField("kept", state.kept());
        json.writeNumberField("nextAtMs", state.nextAtMs());
        if (state.last().isPresent()) {
            BackupState.Good last = state.last().get();
            json.writeNumberField("lastAtMs", last.atMs());
            json.writeNumberField("lastSeq", last.lastSeq());
            json.writeNumberField("bytes", last.bytes());
        }
        json.writeEndObject();
        if (state.origin().isPresent()) {
            origin(json, state.origin().get());
        }
    }

    private static void origin(JsonGenerator json, BackupState.Origin origin) throws IOException {
        json.writeObjectFieldStart("restored");
        json.writeNumberField("atMs", origin.atMs());
        json.writeNumberField("madeAtMs", origin.madeAtMs());
        json.writeNumberField("lastSeq", origin.lastSeq());
        if (origin.isMissingSome()) {
            json.writeNumberField("missingFromSeq", origin.lastSeq() + 1);
            json.writeNumberField("missingToSeq", origin.knownSeq());
        }
        json.writeEndObject();
    }

    private static void clock(JsonGenerator json, ClockState state) throws IOException {
        json.writeObjectFieldStart("clock");
        json.writeStringField("box", word(state.trust()));
        json.writeNumberField("boxMs", state.boxMs());
        json.writeNumberField("standMs", state.standMs());
        json.writeEndObject();
    }

    private static void disk(JsonGenerator json, DiskState state) throws IOException {
        json.writeObjectFieldStart("disk");
        json.writeStringField("state", word(state.kind()));
        if (state.freeBytes().isPresent()) {
            json.writeNumberField("freeBytes", state.freeBytes().getAsLong());
        }
        json.writeEndObject();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
