package sopwell.web.api;

import com.fasterxml.jackson.core.JsonGenerator;
import io.undertow.server.HttpServerExchange;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import sopwell.desk.StandCommand.ForCalendar;
import sopwell.log.Recorded;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.NamedOccasion;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;
import sopwell.web.T;

/** What the owner knows of coming days, for programs. Thread-safe. */
final class CalendarApi {
    private final ApiContext context;

    CalendarApi(ApiContext context) {
        this.context = context;
    }

    CompletableFuture<Reply> get(HttpServerExchange exchange, T text) {
        return context.follower()
                .ask(
                        stand -> {
                            OwnerCalendar calendar = stand.calendar();
                            long seq = stand.seq();
                            return Reply.json(200, json -> calendar(json, calendar, seq));
                        });
    }

    CompletableFuture<Reply> hours(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        CalendarCommand command =
                new CalendarCommand.SetHours(
                        fields.text("date"),
                        fields.flag("closed", false),
                        fields.text("opens", ""),
                        fields.text("closes", ""));
        fields.nothingElse();
        return submit(ask, command);
    }

    CompletableFuture<Reply> add(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        CalendarCommand command =
                new CalendarCommand.AddOccasion(
                        fields.text("date"),
                        fields.text("name"),
                        Integer.toString(fields.number("percent", 0)));
        fields.nothingElse();
        return submit(ask, command);
    }

    CompletableFuture<Reply> remove(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        CalendarCommand command =
                new CalendarCommand.RemoveOccasion(fields.text("date"), fields.text("name"));
        fields.nothingElse();
        return submit(ask, command);
    }

    CompletableFuture<Reply> guess(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        CalendarCommand command =
                new CalendarCommand.Guess(
                        fields.text("item"), Integer.toString(fields.number("pieces")));
        fields.nothingElse();
        return submit(ask, command);
    }

    private CompletableFuture<Reply> submit(Ask ask, CalendarCommand command) {
        return Doing.submit(context.desk(), ask, new ForCalendar(command), CalendarApi::done);
    }

    /** What was said already came to no event. */
    private static Reply done(List<Recorded> events) {
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeBooleanField("changed", !events.isEmpty());
                    if (!events.isEmpty()) {
                        json.writeNumberField("seq", events.get(0).seq());
                    }
                    json.writeEndObject();
                });
    }

    private static void calendar(JsonGenerator json, OwnerCalendar calendar, long seq)
            throws IOException {
        json.writeStartObject();
        json.writeNumberField("seq", seq);
        json.writeArrayFieldStart("days");
        for (CalendarDay day : calendar.days().values()) {
            day(json, day);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("guesses");
        for (Map.Entry<String, Integer> guess : calendar.pieces().entrySet()) {
            json.writeStartObject();
            json.writeStringField("item", guess.getKey());
            json.writeNumberField("pieces", guess.getValue());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void day(JsonGenerator json, CalendarDay day) throws IOException {
        json.writeStartObject();
        json.writeStringField("date", day.date().toString());
        json.writeBooleanField("closed", day.closed());
        if (day.hours().isPresent()) {
            OpenHours hours = day.hours().get();
            json.writeStringField("opens", hours.from());
            json.writeStringField("closes", hours.to());
        }
        json.writeArrayFieldStart("occasions");
        for (NamedOccasion occasion : day.occasions()) {
            json.writeStartObject();
            json.writeStringField("name", occasion.name());
            json.writeNumberField("percent", occasion.percent());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
