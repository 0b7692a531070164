package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.Limits;
import sopwell.menu.Lang;
import sopwell.prep.MadePlan;
import sopwell.web.Reply;

/** What to start, how much, when and why. Thread-safe. */
final class PrepRoutes {
    private static final int DAYS = 5;

    private final PageContext context;
    private final PageHandling handling;

    PrepRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/prep", handling.handler(this::plan));
        routes.get("/prep/sheet", handling.handler(this::sheet));
    }

    private Reply plan(Ask ask) throws PageHandling.Interrupted {
        MadePlan plan = PageHandling.await(context.plans().now()).plan();
        String from = ask.in("from");
        String days = ask.in("days");
        LocalDate first = plan.today();
        int many = DAYS;
        try {
            first = from.isEmpty() ? first : LocalDate.parse(from);
            many = days.isEmpty() ? many : Integer.parseInt(days);
        } catch (DateTimeParseException | NumberFormatException wrong) {
            return wrong(ask, plan);
        }
        LocalDate last = plan.today().plusDays(Limits.PREP_DAYS_SHOWN_MAX);
        boolean isRight =
                !first.isBefore(plan.today())
                        && first.isBefore(last)
                        && many >= 1
                        && many <= Limits.PREP_DAYS_SHOWN_MAX;
        if (!isRight) {
            return wrong(ask, plan);
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", new PrepView(ShelfRoutes.words(context, ask), plan, first, many));
        params.put("key", context.keys());
        return PageHandling.html(200, context.pages().render("prep/page", params));
    }

    /** One date's tasks on paper, in the screen's language or in both. */
    private Reply sheet(Ask ask) throws PageHandling.Interrupted {
        MadePlan plan = PageHandling.await(context.plans().now()).plan();
        LocalDate date = plan.today();
        try {
            date = ask.in("day").isEmpty() ? date : LocalDate.parse(ask.in("day"));
        } catch (DateTimeParseException wrong) {
            return wrong(ask, plan);
        }
        boolean isPlanned =
                !date.isBefore(plan.today())
                        && date.isBefore(plan.today().plusDays(Limits.PREP_DAYS_SHOWN_MAX));
        if (!isPlanned) {
            return wrong(ask, plan);
        }
        List<PrepView> views = new ArrayList<>();
        views.add(new PrepView(ShelfRoutes.words(context, ask), plan, date, 1));
        for (Lang lang : Lang.values()) {
            if (ask.in("both").equals("1") && lang != ask.screen().t().lang()) {
                StockWords words =
                        new StockWords(
                                context.texts().in(lang),
                                context.settings().zone(),
                                context.settings().safety());
                views.add(new PrepView(words, plan, date, 1));
            }
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", new PrepSheet(views, date));
        return PageHandling.html(200, context.pages().render("prep/sheet", params));
    }

    private Reply wrong(Ask ask, MadePlan plan) {
        String text =
                ask.screen()
                        .t()
                        .of(
                                "prep.wrong",
                                plan.today(),
                                plan.today().plusDays(Limits.PREP_DAYS_SHOWN_MAX - 1L),
                                Limits.PREP_DAYS_SHOWN_MAX);
        return handling.sentence(422, text, ask);
    }
}
