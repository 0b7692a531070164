package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.mix.Against;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
import sopwell.mix.OrderStory;
import sopwell.mix.Period;
import sopwell.mix.Waits;
import sopwell.web.AskedPeriod;
import sopwell.web.DayFigures;
import sopwell.web.Reply;
import sopwell.web.T;

/** The waits of a day, a part of it, or many days. Thread-safe. */
final class WaitRoutes {
    private final PageContext context;
    private final PageHandling handling;
    private final FigurePages pages;

    WaitRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
        this.pages = new FigurePages(context, "waits");
    }

    void add(RoutingHandler routes) {
        routes.get("/waits", handling.handler(ask -> pages.days(ask, this::days)));
        routes.get("/waits/{date}", handling.handler(ask -> pages.day(ask, this::day)));
        routes.get("/waits/{date}/slowest", handling.handler(this::slowest));
    }

    private Map<String, Object> day(Ask ask, DayFigures figures, Period part)
            throws PageHandling.Interrupted {
        return Map.of("v", view(ask, figures, part), "x", exceptions(ask, figures));
    }

    private Reply slowest(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        AskedDay<LocalDate> day = PastDate.of(ask, context);
        Optional<List<OrderStory>> found =
                day.found().isEmpty()
                        ? Optional.empty()
                        : PageHandling.await(
                                context.past().slowest(day.date(), Limits.SLOWEST_ORDERS_MAX));
        LocalDate today = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        boolean known = found.isPresent() || !day.sentence().isEmpty();
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("date", day.date());
        params.put(
                "v",
                new StoriesView(
                        t,
                        context.settings().zone(),
                        context.tallies().names().get(),
                        found.orElse(List.of())));
        params.put("sentence", found.isPresent() ? "" : PastDate.sentence(day, t, "mix", today));
        return PageHandling.html(
                known ? day.status() : 404, context.pages().render("waits/slowest", params));
    }

    private ExceptionsView exceptions(Ask ask, DayFigures figures) throws PageHandling.Interrupted {
        List<DayTally> before = List.of();
        if (!figures.troubles().outs().isEmpty()) {
            List<LocalDate> weekdays = Against.weekdaysBefore(figures.tally().date());
            List<DayTally> known = PageHandling.await(context.tallies().of(weekdays));
            int left = Math.max(0, known.size() - Against.COMPARED_DAYS);
            before = known.subList(left, known.size());
        }
        return new ExceptionsView(
                ask.screen().t(),
                context.settings().zone(),
                context.tallies().names().get(),
                figures,
                before);
    }

    private WaitsView view(Ask ask, DayFigures figures, Period part) {
        return new WaitsView(
                ask.screen().t(),
                part.isWholeDays()
                        ? figures.waits()
                        : Waits.of(
                                part,
                                List.of(figures.waitTally()),
                                context.settings().targetSeconds(),
                                context.tallies().names().get()));
    }

    /** What did not go straight has no time of day: it is shown of whole days alone. */
    private Map<String, Object> days(Ask ask, AskedPeriod asked) throws PageHandling.Interrupted {
        Period period = asked.period().orElseThrow();
        WaitsView view =
                new WaitsView(
                        ask.screen().t(),
                        Waits.of(
                                period,
                                PageHandling.await(context.tallies().waits(asked)),
                                context.settings().targetSeconds(),
                                context.tallies().names().get()));
        DayExceptions exceptions = DayExceptions.NONE;
        if (period.isWholeDays()) {
            for (ExceptionTally day : PageHandling.await(context.tallies().exceptions(asked))) {
                exceptions = exceptions.plus(day.exceptions());
            }
        }
        return Map.of("v", view, "exceptions", exceptions);
    }
}
