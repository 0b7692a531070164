package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.prep.MadePlan;
import sopwell.web.PastPreps;
import sopwell.web.Reply;

/** What became of past plans of prep. Thread-safe. */
final class PastPrepRoutes {
    private final PageContext context;
    private final PageHandling handling;

    PastPrepRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/prep/past", handling.handler(this::past));
    }

    private Reply past(Ask ask) throws PageHandling.Interrupted {
        MadePlan plan = PageHandling.await(context.plans().now()).plan();
        String to = ask.in("to");
        LocalDate last = plan.today();
        try {
            last = to.isEmpty() ? last : LocalDate.parse(to);
        } catch (DateTimeParseException wrong) {
            return wrong(ask, plan);
        }
        if (last.isAfter(plan.today())) {
            return wrong(ask, plan);
        }
        PastPreps.Found found = PageHandling.await(context.pastPreps().upTo(last, plan));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put(
                "v",
                new PastPrepView(
                        ShelfRoutes.words(context, ask),
                        context.follower().menu(),
                        plan,
                        found,
                        last));
        return PageHandling.html(200, context.pages().render("prep/past", params));
    }

    private Reply wrong(Ask ask, MadePlan plan) {
        return handling.sentence(422, ask.screen().t().of("past-prep.wrong", plan.today()), ask);
    }
}
