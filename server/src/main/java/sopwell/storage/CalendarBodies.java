package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.prep.calendar.NamedOccasion;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerCalendar;

/** The written form of the owner's calendar, version 1. Stateless. */
final class CalendarBodies {
    private CalendarBodies() {}

    static void write(BodyWriter body, CalendarEvent event) throws IOException {
        OwnerCalendar calendar = ((CalendarEvent.CalendarSet) event).calendar();
        body.objects("days", List.copyOf(calendar.days().values()), CalendarBodies::day);
        body.objects(
                "guesses",
                List.copyOf(calendar.pieces().entrySet()),
                (fields, guess) -> {
                    fields.text("item", guess.getKey());
                    fields.number("pieces", guess.getValue());
                });
        TermsBodies.write(body, calendar.terms());
    }

    private static void day(BodyWriter body, CalendarDay day) throws IOException {
        body.text("date", day.date().toString());
        body.flag("closed", day.closed());
        if (day.hours().isPresent()) {
            body.numberIfAny("fromMinute", day.hours().get().fromMinute());
            body.number("toMinute", day.hours().get().toMinute());
        }
        body.objects(
                "occasions",
                day.occasions(),
                (fields, occasion) -> {
                    fields.text("name", occasion.name());
                    fields.number("percent", occasion.percent());
                });
    }

    static CalendarEvent read(BodyReader body) throws IOException {
        List<CalendarDay> days = body.objects("days", CalendarBodies::day);
        Map<String, Integer> guesses = new TreeMap<>();
        body.objects("guesses", each -> Map.entry(each.text("item"), each.whole("pieces")))
                .forEach(guess -> guesses.put(guess.getKey(), guess.getValue()));
        return new CalendarEvent.CalendarSet(
                OwnerCalendar.of(days, guesses).with(TermsBodies.read(body)));
    }

    private static CalendarDay day(BodyReader body) throws IOException {
        LocalDate date = LocalDate.parse(body.text("date"));
        boolean closed = body.flag("closed");
        int from = (int) body.numberOr("fromMinute");
        int to = (int) body.numberOr("toMinute");
        Optional<OpenHours> hours =
                to == 0 ? Optional.empty() : Optional.of(new OpenHours(from, to));
        return new CalendarDay(
                date,
                closed,
                hours,
                body.objects(
                        "occasions",
                        each -> new NamedOccasion(each.text("name"), each.whole("percent"))));
    }
}
