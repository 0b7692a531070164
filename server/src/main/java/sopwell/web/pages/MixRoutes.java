package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.util.ArrayList;
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

/** The mix of a day, a part of it, or many days. Thread-safe. */
final class MixRoutes {
    private final PageContext context;
    private final PageHandling handling;
    private final FigurePages pages;

    MixRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
        this.pages = new FigurePages(context, "mix");
    }

    void add(RoutingHandler routes) {
        routes.get("/mix", handling.handler(ask -> pages.days(ask, this::days)));
        routes.get("/mix/{date}", handling.handler(ask -> pages.day(ask, this::day)));
    }

    private Map<String, Object> day(Ask ask, DayFigures figures, Period part)
            throws PageHandling.Interrupted {
        return Map.of("v", sold(ask, figures, part));
    }

    /** The part of the day that was asked, beside the same weekdays before. */
    private MixView sold(Ask ask, DayFigures figures, Period part) throws PageHandling.Interrupted {
        LocalDate date = figures.tally().date();
        Names names = context.tallies().names().get();
        Mix mix =
                part.isWholeDays() ? figures.mix() : Mix.of(part, List.of(figures.tally()), names);
        List<DayTally> before =
                PageHandling.await(context.tallies().of(Against.weekdaysBefore(date)));
        LocalDate first = date.minusDays(Limits.MIX_RUN_DAYS - 1L);
        List<DayTally> run =
                PageHandling.await(context.tallies().between(first, date)).stream()
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

    private Map<String, Object> days(Ask ask, AskedPeriod asked) throws PageHandling.Interrupted {
        return Map.of("v", sold(ask, asked));
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
