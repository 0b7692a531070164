package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.mix.Against;
import sopwell.mix.DayTally;
import sopwell.mix.Mix;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.web.AskedPeriod;
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
        AskedPeriod part = AskedPeriod.of(day.date(), ask::in, ask.screen().t());
        boolean there = day.found().isPresent() && part.period().isPresent();
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("data", day.found().orElse(null));
        params.put("sold", there ? sold(ask, day, part.period().get()) : null);
        params.put("sentence", day.sentence().isEmpty() ? part.sentence() : day.sentence());
        if (!ask.partial()) {
            params.put("date", day.date());
            params.put("part", part.period().map(AskedPeriod::query).orElse(""));
            params.put("live", AskedDay.isToday(ask));
        }
        String template = ask.partial() ? "mix/body" : "mix/page";
        int status = part.period().isEmpty() ? 422 : day.status();
        return PageHandling.html(status, context.pages().render(template, params));
    }

    /** The part of the day that was asked, beside the same weekdays before. */
    private MixView sold(Ask ask, AskedDay<DayFigures> day, Period part)
            throws PageHandling.Interrupted {
        DayFigures figures = day.found().orElseThrow();
        Names names = context.tallies().names().get();
        Mix mix =
                part.isWholeDays() ? figures.mix() : Mix.of(part, List.of(figures.tally()), names);
        List<DayTally> before =
                PageHandling.await(context.tallies().of(Against.weekdaysBefore(day.date())));
        LocalDate first = day.date().minusDays(Limits.MIX_RUN_DAYS - 1L);
        List<DayTally> run =
                PageHandling.await(context.tallies().between(first, day.date())).stream()
                        .filter(one -> part.on(one.date()).holdsAny(one))
                        .toList();
        MixCharts charts = new MixCharts(ask.screen().t(), names);
        Optional<Against> against = Against.of(mix, before, names);
        return new MixView(
                ask.screen().t(),
                mix,
                against,
                List.of(),
                0,
                charts.ofDay(mix, figures.tally(), against, before, run));
    }

    private Reply days(Ask ask) throws PageHandling.Interrupted {
        if (ask.in("from").isBlank() && ask.in("to").isBlank()) {
            return PageHandling.redirect("/mix/today");
        }
        LocalDate today = context.clock().instant().atZone(context.settings().zone()).toLocalDate();
        AskedPeriod asked = AskedPeriod.of(ask::in, ask.screen().t(), today);
        if (asked.isOneDay()) {
            Period one = asked.period().orElseThrow();
            return PageHandling.redirect("/mix/" + one.from() + AskedPeriod.query(one));
        }
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
                PageHandling.await(context.tallies().of(asked)).stream()
                        .filter(period::holdsAny)
                        .toList();
        Names names = context.tallies().names().get();
        int left = Math.max(0, tallies.size() - Limits.MIX_DAYS_SHOWN_MAX);
        List<MixView.Day> newestFirst = new ArrayList<>();
        for (DayTally day : tallies.subList(left, tallies.size())) {
            newestFirst.add(0, new MixView.Day(day.date(), day.counts(period), day.pieces(period)));
        }
        Mix mix = Mix.of(period, tallies, names);
        return new MixView(
                ask.screen().t(),
                mix,
                Optional.empty(),
                newestFirst,
                left,
                new MixCharts(ask.screen().t(), names).ofDays(mix, tallies));
    }
}
