package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import sopwell.menu.Lang;
import sopwell.mix.GuestWaits;
import sopwell.mix.HalfHours;
import sopwell.mix.PartWaits;
import sopwell.mix.WaitSummary;
import sopwell.mix.Waits;

/** How long guests waited, for programs. Stateless. */
final class WaitsJson {
    private WaitsJson() {}

    static void write(JsonGenerator json, Waits waits, Lang lang) throws IOException {
        json.writeStartObject();
        guests(json, waits.guests());
        json.writeNumberField("staffOrders", waits.staffOrders());
        json.writeNumberField("targetSeconds", waits.targetSeconds());
        json.writeObjectFieldStart("quotes");
        json.writeNumberField("sooner", waits.quotes().sooner());
        json.writeNumberField("within", waits.quotes().within());
        json.writeNumberField("later", waits.quotes().later());
        json.writeEndObject();
        json.writeArrayFieldStart("halfHours");
        for (Waits.HalfHour half : waits.halfHours()) {
            json.writeStartObject();
            json.writeStringField("begins", HalfHours.begins(half.index()).toString());
            guests(json, half.guests());
            json.writeEndObject();
        }
        json.writeEndArray();
        parts(json, "stations", "station", waits.stations(), lang);
        parts(json, "items", "item", waits.items(), lang);
        json.writeStringField("percentiles", "NIST 7.2.6.2: place p(N+1), interpolated");
        json.writeEndObject();
    }

    private static void guests(JsonGenerator json, GuestWaits guests) throws IOException {
        json.writeNumberField("orders", guests.orders());
        summary(json, "placedToStarted", "orders", guests.toStarted());
        summary(json, "placedToUp", "orders", guests.toUp());
        summary(json, "upToHanded", "orders", guests.onPass());
        summary(json, "placedToHanded", "orders", guests.toHanded());
        json.writeNumberField("upWithinTarget", guests.within().some());
    }

    private static void parts(
            JsonGenerator json, String field, String kind, List<PartWaits> all, Lang lang)
            throws IOException {
        json.writeArrayFieldStart(field);
        for (PartWaits one : all) {
            json.writeStartObject();
            json.writeStringField(kind, one.id());
            json.writeStringField("name", one.name().in(lang));
            json.writeNumberField("parts", one.parts());
            json.writeNumberField("pieces", one.pieces());
            summary(json, "placedToUp", "parts", one.toUp());
            summary(json, "placedToStarted", "parts", one.forHands());
            summary(json, "startedToUp", "parts", one.beingMade());
            summary(json, "upToHanded", "parts", one.onPass());
            json.writeNumberField("upWithinTarget", one.within().some());
            json.writeObjectFieldStart("spentSeconds");
            json.writeNumberField("forHands", one.spent().forHands());
            json.writeNumberField("beingMade", one.spent().beingMade());
            json.writeNumberField("untold", one.spent().untold());
            json.writeNumberField("onPass", one.spent().onPass());
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void summary(
            JsonGenerator json, String field, String measured, WaitSummary summary)
            throws IOException {
        json.writeObjectFieldStart(field);
        json.writeNumberField(measured, summary.measured());
        json.writeNumberField("medianSeconds", summary.medianSeconds());
        json.writeNumberField("ninetiethSeconds", summary.ninetiethSeconds());
        json.writeEndObject();
    }
}
