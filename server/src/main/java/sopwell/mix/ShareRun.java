package sopwell.mix;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sopwell.menu.LocalText;
import sopwell.mix.MixTable.Way;

/**
 * One share day by day, with the limits of chance about its mean: a p-chart, see {@link
 * ShareChart}. Immutable.
 *
 * @param item what was sold
 * @param way how it was made
 * @param mean the share of all days together, 0 to 1
 * @param days oldest first; those on which the item was not sold are left out
 */
public record ShareRun(LocalText item, LocalText way, double mean, List<Day> days) {
    public ShareRun {
        days = List.copyOf(days);
    }

    /**
     * One day of the run.
     *
     * @param chart its limits, and what its share says
     */
    public record Day(LocalDate date, Share share, ShareChart chart) {
        /** Whether the share lies outside what chance explains. */
        public boolean standsOut() {
            return switch (chart.verdict()) {
                case UP, DOWN -> true;
                case CANT_TELL, STEADY -> false;
            };
        }
    }

    /**
     * The run of the way that matters most: of the item with a table that sold most, and of its
     * first group the way asked for most beside what the house does by itself; what the house does
     * when there was nothing else.
     *
     * @param period which days, and which part of each
     */
    public static Optional<ShareRun> of(Period period, List<DayTally> tallies, Names names) {
        return Mix.of(period, tallies, names).tables().stream()
                .max(Comparator.comparingInt(MixTable::total))
                .map(table -> of(table, row(table, names), period, tallies, names));
    }

    /** The days whose share lies outside what chance explains, oldest first. */
    public List<Day> outside() {
        return days.stream().filter(Day::standsOut).toList();
    }

    /** Whether there are enough days and pieces to tell anything. */
    public boolean tells() {
        return days.stream().anyMatch(day -> day.chart().verdict() != ShareChart.Verdict.CANT_TELL);
    }

    private static Way row(MixTable table, Names names) {
        Comparator<Integer> byPieces = Comparator.comparingInt(table::rowTotal);
        int best =
                IntStream.range(0, table.rows().size())
                        .boxed()
                        .max(
                                Comparator.comparing((Integer row) -> asked(table, row, names))
                                        .thenComparing(byPieces))
                        .orElseThrow();
        return table.rows().get(best);
    }

    private static boolean asked(MixTable table, int row, Names names) {
        return !names.isHouseWay(table.item(), table.rows().get(row).id());
    }

    private static ShareRun of(
            MixTable table, Way way, Period period, List<DayTally> tallies, Names names) {
        List<LocalDate> dates = new ArrayList<>();
        List<Share> shares = new ArrayList<>();
        for (DayTally tally : tallies) {
            Mix.of(period.on(tally.date()), List.of(tally), names)
                    .table(table.item())
                    .ifPresent(
                            day -> {
                                dates.add(tally.date());
                                shares.add(new Share(pieces(day, way), day.total()));
                            });
        }
        List<ShareChart> charts = ShareChart.run(shares);
        return new ShareRun(
                table.name(),
                way.name(),
                charts.get(0).mean(),
                IntStream.range(0, dates.size())
                        .mapToObj(i -> new Day(dates.get(i), shares.get(i), charts.get(i)))
                        .toList());
    }

    private static int pieces(MixTable table, Way way) {
        return IntStream.range(0, table.rows().size())
                .filter(row -> table.rows().get(row).id().equals(way.id()))
                .map(table::rowTotal)
                .sum();
    }
}
