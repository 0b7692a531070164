package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import sopwell.boards.CounterQuery;
import sopwell.kitchen.Answers;
import sopwell.kitchen.Query;

/** Writes queries as JSON. Stateless. */
final class QueryJson {
    private QueryJson() {}

    /** What there is to say of a query, inside an object that is open. */
    static void fields(JsonGenerator json, Query query) throws IOException {
        json.writeStringField("query", query.id().toString());
        json.writeStringField("state", OrderJson.word(query.state()));
        if (!query.question().options().isEmpty()) {
            OrderJson.texts(json, "options", query.question().options());
        }
        text(json, "text", query.question().text());
        OrderJson.time(json, "askedAt", query.askedAtMs());
        if (query.state() == Query.State.ANSWERED) {
            OrderJson.time(json, "answeredAt", query.endedAtMs());
            json.writeBooleanField("changed", query.changed());
            text(json, "answer", query.answer());
        }
    }

    /** The queries that wait for the counter, with the answers that each allows. */
    static void open(JsonGenerator json, List<CounterQuery> queries) throws IOException {
        json.writeArrayFieldStart("queries");
        for (CounterQuery query : queries) {
            json.writeStartObject();
            fields(json, query.asked().query());
            json.writeStringField("part", query.asked().query().id().part().toString());
            json.writeNumberField("number", query.number());
            json.writeStringField("name", query.name());
            JsonFrames.text(json, "line", query.line());
            json.writeArrayFieldStart("choices");
            for (Answers.Choice choice : query.choices()) {
                json.writeStartObject();
                OrderJson.texts(json, "options", choice.options());
                JsonFrames.text(json, "name", choice.name());
                json.writeBooleanField("asOrdered", choice.asOrdered());
                json.writeNumberField("moreCents", choice.moreCents());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void text(JsonGenerator json, String field, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(field, text);
        }
    }
}
