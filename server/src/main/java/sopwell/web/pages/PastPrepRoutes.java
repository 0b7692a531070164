package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import sopwell.prep.MadePlan;
import sopwell.prep.past.PastLimits;
import sopwell.web.PastPreps;
import sopwell.web.PrepPlans;
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
        Optional<PrepPlans.Made> made =
                PageHandling.within(PastLimits.LOOK_MILLIS_MAX, context.plans().now());
        if (made.isEmpty()) {
            return counting(ask);
        }
        MadePlan plan = made.get().plan();
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
        CompletableFuture<PastPreps.Found> answer = context.pastPreps().upTo(last, plan);
        Optional<PastPreps.Found> found = PageHandling.within(PastLimits.LOOK_MILLIS_MAX, answer);
        if (found.isEmpty()) {
            return counting(ask);
        }
        context.pastPreps().shown(answer);
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put(
                "v",
                new PastPrepView(
                        ShelfRoutes.words(context, ask),
                        context.follower().menu(),
                        plan,
                        found.get(),
                        last));
        return PageHandling.html(200, context.pages().render("prep/past", params));
    }

    /** The days are read on; the page asks again by itself. */
    private Reply counting(Ask ask) {
        String to = ask.in("to");
        String path = to.matches("[0-9-]{10}") ? "/prep/past?to=" + to : "/prep/past";
        Map<String, Object> params = Map.of("s", ask.screen(), "path", path);
        return PageHandling.html(200, context.pages().render("prep/counting", params));
    }

    private Reply wrong(Ask ask, MadePlan plan) {
        return handling.sentence(422, ask.screen().t().of("past-prep.wrong", plan.today()), ask);
    }
}
