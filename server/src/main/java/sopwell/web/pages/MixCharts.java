package sopwell.web.pages;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sopwell.mix.Against;
import sopwell.mix.DayCurve;
import sopwell.mix.DayTally;
import sopwell.mix.HalfHours;
import sopwell.mix.ItemCount;
import sopwell.mix.Mix;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.ShareRun;
import sopwell.web.T;
import sopwell.web.pages.Chart.Axes;
import sopwell.web.pages.Chart.Cell;
import sopwell.web.pages.Chart.Kind;
import sopwell.web.pages.Chart.Role;
import sopwell.web.pages.Chart.Row;

/** The pictures of the mix, each with its finding as a sentence. Immutable. */
final class MixCharts {
    /** Days that are named in a sentence; more than that are counted. */
    private static final int NAMED_MAX = 4;

    private static final double CENTS = 100;

    private final T t;
    private final Names names;

    MixCharts(T t, Names names) {
        this.t = t;
        this.names = names;
    }

    /**
     * What a day's page draws.
     *
     * @param before the same weekdays before, of which the last four are compared with
     * @param run the days up to this one, oldest first
     */
    List<Chart> ofDay(
            Mix mix,
            DayTally day,
            Optional<Against> against,
            List<DayTally> before,
            List<DayTally> run) {
        List<DayTally> four =
                against.map(a -> before.stream().filter(d -> in(a.lastFour(), d)).toList())
                        .filter(days -> days.size() > 1)
                        .orElse(List.of());
        List<Chart> charts = new ArrayList<>();
        charts.add(curve(DayCurve.of(mix.period(), day, four), mix.period().from(), four.size()));
        charts.add(items(mix));
        if (!run.isEmpty()) {
            shares(Mix.of(over(mix.period(), run), run, names), run).ifPresent(charts::add);
        }
        return charts;
    }

    /** What a page of several days draws. */
    List<Chart> ofDays(Mix mix, List<DayTally> days) {
        List<Chart> charts = new ArrayList<>();
        if (days.size() > 1) {
            charts.add(sales(mix.period(), days));
            weekdays(mix.period(), days).ifPresent(charts::add);
            charts.add(hours(mix.period(), days));
        }
        charts.add(items(mix));
        shares(mix, days).ifPresent(charts::add);
        return charts;
    }

    private static boolean in(Mix mix, DayTally day) {
        return !day.date().isBefore(mix.period().from()) && !day.date().isAfter(mix.period().to());
    }

    private static Period over(Period part, List<DayTally> days) {
        return new Period(
                days.get(0).date(),
                days.get(days.size() - 1).date(),
                part.beginHalfHour(),
                part.endHalfHour());
    }

    private Chart curve(DayCurve curve, LocalDate date, int compared) {
        String weekdays = t.get("weekdays." + date.getDayOfWeek().getValue());
        String about =
                compared == 0
                        ? t.get("mix.curve.about")
                        : t.of("mix.curve.compared", compared, weekdays);
        Chart chart =
                Chart.of(
                                Kind.COLUMNS,
                                busiest(curve, weekdays, compared),
                                about,
                                Axes.of(t.get("mix.curve.from"), t.get("mix.pieces")))
                        .with(t.get("mix.curve.today"), Role.VALUE);
        if (compared > 0) {
            chart = chart.with(t.of("mix.curve.mean", compared, weekdays), Role.COMPARED);
        }
        List<Row> rows = new ArrayList<>();
        for (int step = 0; step < curve.pieces().size(); step++) {
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.of(curve.pieces().get(step)));
            if (compared > 0) {
                cells.add(decimal(curve.before().get(step)));
            }
            String time = time(curve.first() + step);
            rows.add(new Row(time, time, "", "", cells));
        }
        return chart.rows(rows);
    }

    private String busiest(DayCurve curve, String weekdays, int compared) {
        if (curve.busiest().isEmpty()) {
            return t.get("mix.none-in-part");
        }
        int step = curve.busiest().getAsInt();
        String time = time(curve.first() + step);
        int pieces = curve.pieces().get(step);
        return compared == 0
                ? t.of("mix.curve.busiest", time, pieces)
                : t.of(
                        "mix.curve.busiest-than",
                        time,
                        pieces,
                        Math.round(curve.before().get(step)),
                        compared,
                        weekdays);
    }

    private Chart items(Mix mix) {
        Comparator<ItemCount> most = Comparator.comparingInt(ItemCount::pieces).reversed();
        List<ItemCount> items = mix.items().stream().sorted(most).toList();
        String finding =
                items.isEmpty()
                        ? t.get("mix.none")
                        : t.of(
                                "mix.most",
                                item(items.get(0)),
                                items.get(0).pieces(),
                                mix.pieces(),
                                t.percent(items.get(0).pieces(), mix.pieces()));
        return Chart.of(
                        Kind.BARS,
                        finding,
                        t.get("mix.most.about"),
                        Axes.of(t.get("mix.item"), t.get("mix.pieces")))
                .with(t.get("mix.pieces"), Role.VALUE)
                .rows(items.stream().map(one -> Row.of(item(one), Cell.of(one.pieces()))).toList());
    }

    private Optional<Chart> shares(Mix mix, List<DayTally> days) {
        return ShareRun.of(mix, days, names).filter(ShareRun::tells).map(run -> shares(run));
    }

    private Chart shares(ShareRun run) {
        String mean = t.percent(run.mean());
        List<Row> rows = run.days().stream().map(day -> row(day, run.mean())).toList();
        return Chart.of(
                        Kind.LINES,
                        finding(run, mean),
                        t.of("mix.run.about", t.local(run.way()), t.local(run.item())),
                        Axes.of(t.get("mix.day"), "%"))
                .with(t.local(run.way()), Role.VALUE)
                .with(t.of("mix.run.mean", mean), Role.COMPARED)
                .with(t.get("mix.run.low"), Role.LOW)
                .with(t.get("mix.run.high"), Role.HIGH)
                .rows(rows);
    }

    private String finding(ShareRun run, String mean) {
        String item = t.local(run.item());
        String way = t.local(run.way());
        List<ShareRun.Day> outside = run.outside();
        if (outside.isEmpty()) {
            return t.of("mix.run.steady", item, way, run.days().size(), mean);
        }
        if (outside.size() > NAMED_MAX) {
            return t.of("mix.run.many", item, way, outside.size(), run.days().size(), mean);
        }
        List<String> named =
                outside.stream()
                        .map(
                                day ->
                                        t.of(
                                                "mix.run.day",
                                                t.date(day.date(), "date.brief"),
                                                t.percent(day.share().value())))
                        .toList();
        return t.of("mix.run.outside", item, way, t.list(named), mean);
    }

    private Row row(ShareRun.Day day, double mean) {
        boolean known = day.chart().high() < 1 || day.chart().low() > 0;
        Cell low = known ? percent(day.chart().low()) : Cell.told("–");
        Cell high = known ? percent(day.chart().high()) : Cell.told("–");
        return Row.of(t.date(day.date()), percent(day.share().value()), percent(mean), low, high)
                .briefly(t.date(day.date(), "date.brief"))
                .marked(day.standsOut() ? t.date(day.date(), "date.brief") : "");
    }

    private Cell percent(double share) {
        return Cell.of(share * CENTS, t.percent(share));
    }

    private Chart sales(Period period, List<DayTally> days) {
        Comparator<DayTally> bySales = Comparator.comparingLong(day -> cents(period, day));
        DayTally best = days.stream().max(bySales).orElseThrow();
        long all = days.stream().mapToLong(day -> cents(period, day)).sum();
        return Chart.of(
                        Kind.COLUMNS,
                        t.of(
                                "mix.sales.best",
                                t.date(best.date()),
                                t.money(cents(period, best)),
                                t.money(Math.round((double) all / days.size()))),
                        t.get("mix.sales.about"),
                        Axes.of(t.get("mix.day"), "$"))
                .with(t.get("mix.sales"), Role.VALUE)
                .rows(
                        days.stream()
                                .map(
                                        day ->
                                                Row.of(t.date(day.date()), money(period, day))
                                                        .briefly(t.date(day.date(), "date.brief")))
                                .toList());
    }

    private static long cents(Period period, DayTally day) {
        return day.counts(period).subtotalCents();
    }

    private Cell money(Period period, DayTally day) {
        long cents = cents(period, day);
        return Cell.of(cents / CENTS, t.money(cents));
    }

    /** How many pieces a weekday sells; with one weekday alone there is nothing to compare. */
    private Optional<Chart> weekdays(Period period, List<DayTally> days) {
        Map<DayOfWeek, List<DayTally>> by = byWeekday(days);
        if (by.size() < 2) {
            return Optional.empty();
        }
        Map<DayOfWeek, Double> means = new TreeMap<>();
        by.forEach((day, some) -> means.put(day, Arrays.stream(mean(period, some)).sum()));
        DayOfWeek most =
                means.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
        List<Row> rows = new ArrayList<>();
        means.forEach(
                (day, mean) ->
                        rows.add(
                                Row.of(
                                                t.get("weekdays." + day.getValue()),
                                                decimal(mean),
                                                Cell.of(by.get(day).size()))
                                        .briefly(brief(by, day))));
        return Optional.of(
                Chart.of(
                                Kind.COLUMNS,
                                t.of(
                                        "mix.weekday.most",
                                        t.get("weekdays." + most.getValue()),
                                        Math.round(means.get(most))),
                                t.get("mix.weekday.about"),
                                Axes.of(t.get("mix.weekday"), t.get("mix.pieces")))
                        .with(t.get("mix.weekday.mean"), Role.VALUE)
                        .with(t.get("mix.weekday.days"), Role.TOLD)
                        .rows(rows));
    }

    /** Weekdays down, half hours across. */
    private Chart hours(Period period, List<DayTally> days) {
        double[] all = mean(period, days);
        int first = IntStream.range(0, all.length).filter(h -> all[h] > 0).min().orElse(0);
        int last = IntStream.range(0, all.length).filter(h -> all[h] > 0).max().orElse(0);
        Map<DayOfWeek, List<DayTally>> by = byWeekday(days);
        Map<DayOfWeek, double[]> means = new TreeMap<>();
        by.forEach((day, some) -> means.put(day, mean(period, some)));
        int top =
                IntStream.rangeClosed(first, last)
                        .reduce((a, b) -> all[b] > all[a] ? b : a)
                        .orElse(first);
        Chart chart =
                Chart.of(
                        Kind.HEAT,
                        t.of("mix.hours.most", time(top), time(top + 1)),
                        t.get("mix.hours.about"),
                        Axes.of(t.get("mix.weekday"), t.get("mix.pieces")));
        for (int half = first; half <= last; half++) {
            chart = chart.with(time(half), Role.VALUE);
        }
        List<Row> rows = new ArrayList<>();
        means.forEach(
                (day, mean) ->
                        rows.add(
                                new Row(
                                        t.get("weekdays." + day.getValue()),
                                        brief(by, day),
                                        "",
                                        "",
                                        IntStream.rangeClosed(first, last)
                                                .mapToObj(h -> whole(mean[h]))
                                                .toList())));
        return chart.rows(rows);
    }

    private static Map<DayOfWeek, List<DayTally>> byWeekday(List<DayTally> days) {
        return days.stream()
                .collect(
                        Collectors.groupingBy(
                                day -> day.date().getDayOfWeek(),
                                TreeMap::new,
                                Collectors.toList()));
    }

    private String brief(Map<DayOfWeek, List<DayTally>> by, DayOfWeek day) {
        return t.date(by.get(day).get(0).date(), "date.weekday");
    }

    /** Mean pieces by half hour. */
    private static double[] mean(Period period, List<DayTally> days) {
        double[] mean = new double[HalfHours.END_MAX];
        for (DayTally day : days) {
            int[] pieces = DayCurve.pieces(period.on(day.date()), day);
            for (int half = 0; half < mean.length; half++) {
                mean[half] += (double) pieces[half] / days.size();
            }
        }
        return mean;
    }

    private static Cell decimal(double value) {
        double tenths = Math.round(value * 10) / 10.0;
        return Cell.of(value, Double.toString(tenths).replaceAll("\\.0$", ""));
    }

    private static Cell whole(double value) {
        return Cell.of(value, Long.toString(Math.round(value)));
    }

    private String item(ItemCount item) {
        String size = t.local(item.sizeName());
        return size.isEmpty() ? t.local(item.name()) : t.local(item.name()) + ", " + size;
    }

    private static String time(int halfHour) {
        return HalfHours.begins(halfHour).toString();
    }
}
