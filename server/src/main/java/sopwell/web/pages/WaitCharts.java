package sopwell.web.pages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.mix.HalfHours;
import sopwell.mix.PartWaits;
import sopwell.mix.PartWaits.Spent;
import sopwell.mix.WaitSummary;
import sopwell.mix.Waits;
import sopwell.web.T;
import sopwell.web.pages.Chart.Axes;
import sopwell.web.pages.Chart.Cell;
import sopwell.web.pages.Chart.Kind;
import sopwell.web.pages.Chart.Role;
import sopwell.web.pages.Chart.Row;

/** The pictures of the waits, each with its finding as a sentence. Stateless. */
final class WaitCharts {
    private static final double MINUTE = 60;

    private WaitCharts() {}

    static List<Chart> of(T t, Waits waits) {
        List<Chart> charts = new ArrayList<>();
        halfHours(t, waits).ifPresent(charts::add);
        spent(t, waits).ifPresent(charts::add);
        return charts;
    }

    /** Median and 90th of placed to whole, by the half hour of the call, against the target. */
    private static Optional<Chart> halfHours(T t, Waits waits) {
        Optional<Waits.HalfHour> worst =
                waits.halfHours().stream()
                        .filter(half -> half.guests().toUp().measured() > 0)
                        .max(
                                Comparator.comparingDouble(
                                        half -> half.guests().toUp().ninetiethSeconds()));
        if (waits.halfHours().size() < 2 || worst.isEmpty()) {
            return Optional.empty();
        }
        String finding =
                t.of(
                        "waits.chart.worst",
                        HalfHours.begins(worst.get().index()),
                        t.minutes(worst.get().guests().toUp().ninetiethSeconds()));
        double target = waits.targetSeconds() / MINUTE;
        Axes axes = Axes.of(t.get("waits.from"), t.get("waits.chart.minutes"));
        return Optional.of(
                Chart.of(
                                Kind.LINES,
                                finding,
                                t.get("waits.chart.half-hours"),
                                axes.withTarget(target, t.get("waits.chart.target")))
                        .with(t.get("mix.median"), Role.VALUE)
                        .with(t.get("mix.ninetieth"), Role.VALUE)
                        .rows(waits.halfHours().stream().map(half -> row(t, half)).toList()));
    }

    private static Row row(T t, Waits.HalfHour half) {
        WaitSummary toUp = half.guests().toUp();
        boolean known = toUp.measured() > 0;
        return Row.of(
                HalfHours.begins(half.index()).toString(),
                known ? minutes(t, toUp.medianSeconds()) : Cell.told("–"),
                known ? minutes(t, toUp.ninetiethSeconds()) : Cell.told("–"));
    }

    private static Cell minutes(T t, double seconds) {
        return Cell.of(seconds / MINUTE, t.minutes(seconds));
    }

    /** Where the time of each station's parts went, in percent. */
    private static Optional<Chart> spent(T t, Waits waits) {
        List<PartWaits> stations =
                waits.stations().stream().filter(one -> one.spent().all() > 0).toList();
        if (stations.isEmpty()) {
            return Optional.empty();
        }
        boolean untold = stations.stream().anyMatch(one -> one.spent().untold() > 0);
        Chart chart =
                Chart.of(
                                Kind.STACK,
                                finding(t, stations),
                                t.get("waits.chart.spent"),
                                Axes.of(t.get("waits.station"), "%"))
                        .with(t.get("waits.for-hands"), Role.VALUE)
                        .with(t.get("waits.being-made"), Role.VALUE);
        chart = untold ? chart.with(t.get("waits.untold"), Role.VALUE) : chart;
        return Optional.of(
                chart.with(t.get("waits.pass"), Role.VALUE)
                        .rows(stations.stream().map(one -> row(t, one, untold)).toList()));
    }

    private static Row row(T t, PartWaits station, boolean untold) {
        Spent spent = station.spent();
        List<Cell> cells = new ArrayList<>();
        cells.add(share(t, spent, spent.forHands()));
        cells.add(share(t, spent, spent.beingMade()));
        if (untold) {
            cells.add(share(t, spent, spent.untold()));
        }
        cells.add(share(t, spent, spent.onPass()));
        return Row.of(t.local(station.name()), cells.toArray(Cell[]::new));
    }

    private static Cell share(T t, Spent spent, long seconds) {
        double share = (double) seconds / spent.all();
        return Cell.of(100 * share, t.percent(share));
    }

    /** At which station the largest share of the time went to waiting for hands. */
    private static String finding(T t, List<PartWaits> stations) {
        Map.Entry<PartWaits, Double> most =
                stations.stream()
                        .map(
                                one ->
                                        Map.entry(
                                                one,
                                                (double) one.spent().forHands()
                                                        / one.spent().all()))
                        .max(Map.Entry.comparingByValue())
                        .orElseThrow();
        return most.getValue() == 0
                ? t.get("waits.chart.no-hands")
                : t.of(
                        "waits.chart.hands",
                        t.local(most.getKey().name()),
                        t.percent(most.getValue()));
    }
}
