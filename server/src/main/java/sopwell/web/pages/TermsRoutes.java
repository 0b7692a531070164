package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForCalendar;
import sopwell.prep.MadePlan;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.calendar.TermsCommand;
import sopwell.web.Reply;

/** What the owner sets for the prep plan. Thread-safe. */
final class TermsRoutes {
    private static final String PATH = "/prep/terms";

    private final PageContext context;
    private final PageHandling handling;

    TermsRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.handler(ask -> page(ask, 200, "")));
        routes.post(PATH, handling.handler(this::press));
    }

    private Reply press(Ask ask) throws PageHandling.Interrupted {
        String what = ask.field("do");
        return handling.press(
                ask,
                new ForCalendar(new CalendarCommand.SetTerms(command(ask, what))),
                events -> PageHandling.redirect(PATH + "#" + section(what)),
                (status, why) -> page(ask, status, why));
    }

    private static TermsCommand command(Ask ask, String what) {
        return switch (what) {
            case "costs" ->
                    new TermsCommand.SetCosts(
                            ask.field("goodwill"), ask.field("without"), ask.field("night"));
            case "day" ->
                    new TermsCommand.SetDay(
                            ask.field("guess"),
                            ask.field("opens"),
                            ask.field("delivered"),
                            ask.field("hands"));
            case "hours" -> new TermsCommand.SetKitchen(times(ask, "from"), times(ask, "to"));
            case "hours-book" -> new TermsCommand.SetKitchen(List.of(), List.of());
            case "away" -> new TermsCommand.CloseKitchen(ask.field("date"));
            case "back" -> new TermsCommand.OpenKitchen(ask.field("date"));
            case "out" ->
                    new TermsCommand.TakeOut(
                            ask.field("resource"),
                            ask.field("slots"),
                            ask.field("from"),
                            ask.field("until"));
            case "in-order" -> new TermsCommand.BringBack(ask.field("resource"), ask.field("from"));
            case "review" -> new TermsCommand.SetReview(ask.field("makes"), ask.field("days"));
            case "each" ->
                    new TermsCommand.SetCost(
                            ask.field("ingredient"), ask.field("short"), ask.field("waste"));
            default -> new TermsCommand.SetOpening(ask.field("date"));
        };
    }

    private static List<String> times(Ask ask, String which) {
        List<String> times = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            times.add(ask.field(which + day.getValue()));
        }
        return times;
    }

    private static String section(String what) {
        return switch (what) {
            case "hours-book" -> "hours";
            case "back" -> "away";
            case "in-order" -> "out";
            case "costs", "day", "hours", "away", "out", "review", "each" -> what;
            default -> "opening";
        };
    }

    /**
     * The settings.
     *
     * @param sentence what is wrong with what was typed, which then stays; empty when nothing is
     */
    private Reply page(Ask ask, int status, String sentence) throws PageHandling.Interrupted {
        OwnerCalendar calendar = PageHandling.await(context.follower().ask(Stand::calendar));
        MadePlan plan = PageHandling.await(context.plans().now()).plan();
        TermsView view =
                new TermsView(
                        ShelfRoutes.words(context, ask),
                        calendar.terms(),
                        ShelfRoutes.now(context).book(),
                        plan,
                        sentence.isEmpty() ? Map.of() : ask.shown());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", view);
        params.put("sentence", sentence);
        params.put("keys", context.keys());
        return PageHandling.html(status, context.pages().render("prep/terms/page", params));
    }
}
