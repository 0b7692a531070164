package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForCalendar;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.web.Reply;

/** The owner's calendar: closed days, other hours, occasions, first guesses. Thread-safe. */
final class CalendarRoutes {
    private static final String PATH = "/prep/calendar";

    private final PageContext context;
    private final PageHandling handling;

    CalendarRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.handler(ask -> page(ask, 200, ask.in("day"), "")));
        routes.post(PATH, handling.handler(this::press));
    }

    private Reply press(Ask ask) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForCalendar(command(ask)),
                events -> done(ask),
                (status, why) -> page(ask, status, ask.field("date"), why));
    }

    private static CalendarCommand command(Ask ask) {
        String date = ask.field("date");
        return switch (ask.field("do")) {
            case "add" ->
                    new CalendarCommand.AddOccasion(date, ask.field("name"), ask.field("percent"));
            case "remove" -> new CalendarCommand.RemoveOccasion(date, ask.field("name"));
            case "guess" -> new CalendarCommand.Guess(ask.field("item"), ask.field("pieces"));
            case "close" -> new CalendarCommand.SetHours(date, true, "", "");
            default ->
                    new CalendarCommand.SetHours(
                            date, false, ask.field("opens"), ask.field("closes"));
        };
    }

    private static Reply done(Ask ask) {
        return PageHandling.redirect(
                ask.field("do").equals("guess")
                        ? PATH + "#guesses"
                        : PATH + "?day=" + ask.field("date").strip() + "#day");
    }

    /**
     * The calendar with one day open.
     *
     * @param day the date; today for what is none
     * @param sentence what is wrong with what was typed, which then stays; empty when nothing is
     */
    private Reply page(Ask ask, int status, String day, String sentence)
            throws PageHandling.Interrupted {
        OwnerCalendar calendar = PageHandling.await(context.follower().ask(Stand::calendar));
        LocalDate today = LocalDate.ofInstant(context.clock().instant(), context.settings().zone());
        CalendarView view =
                new CalendarView(
                        ask.screen().t(),
                        calendar,
                        context.follower().menu(),
                        today,
                        CalendarView.chosen(day, today));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", view);
        params.put("sentence", sentence);
        params.put("typed", sentence.isEmpty() ? Map.of() : ask.shown());
        params.put("keys", context.keys());
        return PageHandling.html(status, context.pages().render("prep/calendar/page", params));
    }
}
