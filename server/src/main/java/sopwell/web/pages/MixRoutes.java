package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.web.DayFigures;
import sopwell.web.Reply;

/** The day mix of today and of closed days. Thread-safe. */
final class MixRoutes {
    private final PageContext context;
    private final PageHandling handling;

    MixRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/mix", handling.handler(ask -> PageHandling.redirect("/mix/today")));
        routes.get("/mix/{date}", handling.handler(this::day));
    }

    private Reply day(Ask ask) throws PageHandling.Interrupted {
        AskedDay<DayFigures> day = AskedDay.of(ask, context, DayFigures::of, context.days());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("data", day.found().orElse(null));
        params.put("sentence", day.sentence());
        if (!ask.partial()) {
            params.put("date", day.date());
            params.put("live", AskedDay.isToday(ask));
        }
        String template = ask.partial() ? "mix/body" : "mix/page";
        return PageHandling.html(day.status(), context.pages().render(template, params));
    }
}
