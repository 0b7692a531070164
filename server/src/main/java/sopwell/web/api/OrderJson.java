package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sopwell.call.ReadBack;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.kitchen.Query;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.money.Totals;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.OrderLine;
import sopwell.orders.Quote;

/** Writes orders as JSON. Stateless. */
final class OrderJson {
    private OrderJson() {}

    /** The answer to placing an order: all of it follows from the event and its menu. */
    static void placed(JsonGenerator json, OrderPlaced placed, long seq, Menu menu, Lang lang)
            throws IOException {
        json.writeStartObject();
        head(json, placed.order(), placed.number(), placed.name(), placed.toGo());
        json.writeNumberField("version", 1);
        lines(json, placed.lines(), menu, lang);
        totals(json, placed.totals());
        quote(json, placed.quote());
        json.writeNumberField("seq", seq);
        json.writeEndObject();
    }

    /** The answer to a change: the whole order as it is from now on. */
    static void changed(JsonGenerator json, OrderChanged changed, long seq, Menu menu, Lang lang)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("order", changed.order());
        json.writeStringField("name", changed.name());
        json.writeBooleanField("toGo", changed.toGo());
        json.writeNumberField("version", changed.version());
        lines(json, changed.lines(), menu, lang);
        totals(json, changed.totals());
        json.writeNumberField("seq", seq);
        json.writeEndObject();
    }

    /** An order with its parts, states and times. */
    static void whole(JsonGenerator json, Order order, Standing standing, Said said)
            throws IOException {
        json.writeStartObject();
        head(json, order.id(), order.number(), order.name(), order.toGo());
        json.writeNumberField("version", order.version());
        json.writeStringField("state", word(standing.kitchen().stage(order)));
        lines(json, order.lines(), said.menu(), said.lang());
        totals(json, order.totals());
        json.writeNumberField("dueCents", standing.dueCents());
        quote(json, order.quote());
        time(json, "placedAt", order.placedAtMs());
        if (order.isTakenBefore()) {
            time(json, "takenAt", order.takenAtMs());
        }
        if (order.isAtToldPrice()) {
            json.writeStringField("toldMenuRevision", order.toldMenu());
        }
        time(json, "handedAt", order.handedAtMs());
        if (order.isVoid()) {
            json.writeStringField("voidReason", order.voidReason());
        }
        json.writeArrayFieldStart("parts");
        for (Part part : standing.kitchen().parts(order.id())) {
            part(json, part, standing.kitchen());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** What a reading comes to, nothing placed. */
    static void reading(
            JsonGenerator json, List<OrderLine> lines, Totals totals, Quote quote, Said said)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("menuRevision", said.menu().revision());
        lines(json, lines, said.menu(), said.lang());
        totals(json, totals);
        quote(json, quote);
        json.writeEndObject();
    }

    /**
     * How an order stands.
     *
     * @param dueCents what is due on it; negative when money is due back
     */
    record Standing(Kitchen kitchen, long dueCents) {}

    /** Where words come from: a menu and a language. */
    record Said(Menu menu, Lang lang) {}

    static String word(Enum<?> state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    private static void part(JsonGenerator json, Part part, Kitchen kitchen) throws IOException {
        json.writeStartObject();
        json.writeStringField("part", part.id().toString());
        json.writeStringField("station", part.id().station());
        json.writeNumberField("line", part.id().line());
        json.writeNumberField("quantity", part.making().quantity());
        json.writeStringField("state", word(part.state()));
        json.writeBooleanField("unseen", kitchen.isUnseen(part));
        json.writeBooleanField("cancelled", part.cancelled());
        time(json, "startedAt", part.startedAtMs());
        time(json, "upAt", part.upAtMs());
        Optional<Query> query = kitchen.queries().inSight(part.id());
        if (query.isPresent()) {
            json.writeObjectFieldStart("query");
            QueryJson.fields(json, query.get());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void head(
            JsonGenerator json, String order, int number, String name, boolean toGo)
            throws IOException {
        json.writeStringField("order", order);
        json.writeNumberField("number", number);
        json.writeStringField("name", name);
        json.writeBooleanField("toGo", toGo);
    }

    private static void lines(JsonGenerator json, List<OrderLine> lines, Menu menu, Lang lang)
            throws IOException {
        StringBuilder readBack = new StringBuilder();
        json.writeArrayFieldStart("lines");
        for (OrderLine line : lines) {
            String said = ReadBack.say(menu, lang, line.quantity(), line.selection());
            readBack.append(readBack.length() == 0 ? "" : " ").append(said).append('.');
            json.writeStartObject();
            json.writeNumberField("line", line.line());
            json.writeNumberField("quantity", line.quantity());
            json.writeStringField("item", line.selection().item());
            if (!line.selection().size().isEmpty()) {
                json.writeStringField("size", line.selection().size());
            }
            texts(json, "modifiers", line.selection().options());
            texts(json, "without", line.selection().refused());
            json.writeNumberField("unitCents", line.unitCents());
            json.writeNumberField("cents", line.cents());
            json.writeStringField("text", said);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("readBack", readBack.toString());
    }

    static void texts(JsonGenerator json, String field, List<String> texts) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private static void totals(JsonGenerator json, Totals totals) throws IOException {
        MoneyJson.totals(json, totals);
    }

    private static void quote(JsonGenerator json, Quote quote) throws IOException {
        json.writeObjectFieldStart("quote");
        json.writeNumberField("fromSeconds", quote.fromSeconds());
        json.writeNumberField("toSeconds", quote.toSeconds());
        json.writeEndObject();
    }

    static void time(JsonGenerator json, String field, long atMs) throws IOException {
        if (atMs != 0) {
            json.writeStringField(field, Instant.ofEpochMilli(atMs).toString());
        }
    }
}
