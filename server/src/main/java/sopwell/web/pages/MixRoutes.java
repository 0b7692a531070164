package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.mix.Against;
import sopwell.mix.DayTally;
import sopwell.mix.Mix;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.web.DayFigures;
import sopwell.web.Reply;

/** The mix of a day, a part of it, or many days. Thread-safe. */
final class MixRoutes {
    private final PageContext context;
    private final PageHandling handling;

    MixRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/mix", handling.handler(this::days));
        routes.get("/mix/{date}", handling.handler(this::day));
    }

    private Reply day(Ask ask) throws PageHandling.Interrupted {
        AskedDay<DayFigures> day = AskedDay.of(ask, context, DayFigures::of, context.days());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("data", day.found().orElse(null));
        params.put("sold", day.found().isEmpty() ? null : sold(ask, day));
        params.put("sentence", day.sentence());
        if (!ask.partial()) {
            params.put("date", day.date());
            params.put("live", AskedDay.isToday(ask));
        }
        String template = ask.partial() ? "mix/body" : "mix/page";
        return PageHandling.html(day.status(), context.pages().render(template, params));
    }

    /** The part of the day that was asked, beside the same weekdays before. */
    private MixView sold(Ask ask, AskedDay<DayFigures> day) throws PageHandling.Interrupted {
        DayFigures figures = day.found().orElseThrow();
        Names names = context.tallies().names().get();
        Period part = AskedPeriod.partOf(ask, day.date());
        Mix mix =
                part.isWholeDays() ? figures.mix() : Mix.of(part, List.of(figures.tally()), names);
        List<DayTally> before =
                PageHandling.await(context.tallies().of(Against.weekdaysBefore(day.date())));
        return new MixView(ask.screen().t(), mix, Against.of(mix, before, names), Optional.empty());
    }

    private Reply days(Ask ask) throws PageHandling.Interrupted {
        if (ask.in("from").isBlank() && ask.in("to").isBlank()) {
            return PageHandling.redirect("/mix/today");
        }
        LocalDate today = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        AskedPeriod asked = AskedPeriod.of(ask, today);
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("asked", ask.named());
        params.put("sentence", asked.sentence());
        params.put("sold", asked.period().isEmpty() ? null : sold(ask, asked));
        return PageHandling.html(
                asked.period().isEmpty() ? 422 : 200, context.pages().render("mix/days", params));
    }

    private MixView sold(Ask ask, AskedPeriod asked) throws PageHandling.Interrupted {
        Period period = asked.period().orElseThrow();
        List<DayTally> tallies =
                PageHandling.await(context.tallies().between(period.from(), period.to())).stream()
                        .filter(day -> asked.holds(day.date()))
                        .toList();
        Names names = context.tallies().names().get();
        List<Mix> each =
                tallies.stream()
                        .map(day -> Mix.of(period.on(day.date()), List.of(day), names))
                        .toList();
        return new MixView(
                ask.screen().t(),
                Mix.of(period, tallies, names),
                Optional.empty(),
                Optional.of(each));
    }
}
