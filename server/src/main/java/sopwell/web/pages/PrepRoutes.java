package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.Limits;
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
