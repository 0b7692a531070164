package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.Limits;
import sopwell.mix.Against;
import sopwell.mix.DayTally;
import sopwell.mix.Names;
import sopwell.mix.OrderStory;
import sopwell.mix.Period;
import sopwell.mix.Waits;
import sopwell.web.AskedPeriod;
import sopwell.web.DayFigures;
import sopwell.web.Reply;
import sopwell.web.past.PastDay;

/** The waits of a day, a part of it, or many days. Thread-safe. */
final class WaitRoutes {
    private final PageContext context;
    private final PageHandling handling;

    WaitRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/waits", handling.handler(this::days));
        routes.get("/waits/{date}", handling.handler(this::day));
        routes.get("/waits/{date}/slowest", handling.handler(this::slowest));
    }

    private Reply day(Ask ask) throws PageHandling.Interrupted {
        AskedDay<DayFigures> day = AskedDay.of(ask, context, DayFigures::of, context.days());
        AskedPeriod part = AskedPeriod.of(day.date(), ask::in, ask.screen().t());
        boolean there = day.found().isPresent() && part.period().isPresent();
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("data", day.found().orElse(null));
        params.put("v", there ? view(ask, day.found().orElseThrow(), part.period().get()) : null);
        params.put("x", there ? exceptions(ask, day.found().orElseThrow()) : null);
        params.put("sentence", day.sentence().isEmpty() ? part.sentence() : day.sentence());
        if (!ask.partial()) {
            params.put("date", day.date());
            params.put("part", part.period().map(AskedPeriod::query).orElse(""));
            params.put("live", AskedDay.isToday(ask));
        }
        String template = ask.partial() ? "waits/body" : "waits/page";
        int status = part.period().isEmpty() ? 422 : day.status();
        return PageHandling.html(status, context.pages().render(template, params));
    }

    private Reply slowest(Ask ask) throws PageHandling.Interrupted {
        AskedDay<LocalDate> day =
                AskedDay.of(
                        ask,
                        context,
                        stand -> stand.orders().date().orElseThrow(),
                        date -> context.past().day(date).thenApply(d -> d.map(PastDay::date)));
        List<OrderStory> stories =
                day.found().isEmpty()
                        ? List.of()
                        : PageHandling.await(
                                        context.past()
                                                .slowest(day.date(), Limits.SLOWEST_ORDERS_MAX))
                                .orElse(List.of());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("date", day.date());
        params.put(
                "v",
                new StoriesView(
                        ask.screen().t(),
                        context.settings().zone(),
                        context.tallies().names().get(),
                        stories));
        params.put("sentence", day.sentence());
        return PageHandling.html(day.status(), context.pages().render("waits/slowest", params));
    }

    private ExceptionsView exceptions(Ask ask, DayFigures figures) throws PageHandling.Interrupted {
        List<DayTally> before = List.of();
        if (!figures.outs().isEmpty()) {
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

    private Reply days(Ask ask) throws PageHandling.Interrupted {
        if (ask.in("from").isBlank() && ask.in("to").isBlank()) {
            return PageHandling.redirect("/waits/today");
        }
        LocalDate today = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        AskedPeriod asked = AskedPeriod.of(ask::in, ask.screen().t(), today);
        if (asked.isOneDay()) {
            Period one = asked.period().orElseThrow();
            return PageHandling.redirect("/waits/" + one.from() + AskedPeriod.query(one));
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("asked", ask.named());
        params.put("sentence", asked.sentence());
        params.put("v", asked.period().isEmpty() ? null : view(ask, asked));
        return PageHandling.html(
                asked.period().isEmpty() ? 422 : 200, context.pages().render("waits/days", params));
    }

    private WaitsView view(Ask ask, AskedPeriod asked) throws PageHandling.Interrupted {
        Period period = asked.period().orElseThrow();
        List<LocalDate> dates =
                period.from().datesUntil(period.to().plusDays(1)).filter(asked::holds).toList();
        Names names = context.tallies().names().get();
        return new WaitsView(
                ask.screen().t(),
                Waits.of(
                        period,
                        PageHandling.await(context.tallies().waits(dates)),
                        context.settings().targetSeconds(),
                        names));
    }
}
