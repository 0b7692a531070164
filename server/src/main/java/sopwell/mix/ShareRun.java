package sopwell.mix;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sopwell.menu.LocalText;
import sopwell.mix.DayTally.HalfHour;
import sopwell.mix.DayTally.Sold;
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
        return of(Mix.of(period, tallies, names), tallies, names);
    }

    /**
     * The same of days that were added up already.
     *
     * @param mix all the days together
     */
    public static Optional<ShareRun> of(Mix mix, List<DayTally> tallies, Names names) {
        return mix.tables().stream()
                .max(Comparator.comparingInt(MixTable::total))
                .map(
                        table ->
                                of(
                                        new Making(
                                                table,
                                                row(table, names),
                                                names.groups(table.item())),
                                        mix.period(),
                                        tallies));
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

    private static ShareRun of(Making making, Period period, List<DayTally> tallies) {
        List<LocalDate> dates = new ArrayList<>();
        List<Share> shares = new ArrayList<>();
        for (DayTally tally : tallies) {
            Share share = making.share(period.on(tally.date()), tally);
            if (share.isKnown()) {
                dates.add(tally.date());
                shares.add(share);
            }
        }
        List<ShareChart> charts = ShareChart.run(shares);
        return new ShareRun(
                making.table().name(),
                making.way().name(),
                charts.get(0).mean(),
                IntStream.range(0, dates.size())
                        .mapToObj(i -> new Day(dates.get(i), shares.get(i), charts.get(i)))
                        .toList());
    }

    /**
     * A way of the first group of an item.
     *
     * @param groups of the item; none when no menu has it
     */
    private record Making(MixTable table, Way way, List<String> groups) {
        /** The share of one day, without all else that a day's mix has. */
        Share share(Period period, DayTally day) {
            int made = 0;
            int all = 0;
            for (HalfHour half : day.halfHours()) {
                if (period.holds(day.date(), half.index())) {
                    for (Sold sold : half.sold()) {
                        boolean counts = counts(sold);
                        all += counts ? sold.pieces() : 0;
                        made += counts && isMadeSo(sold) ? sold.pieces() : 0;
                    }
                }
            }
            return new Share(made, all);
        }

        private boolean counts(Sold sold) {
            return !sold.staff() && sold.ways().size() >= 2 && sold.item().equals(table.item());
        }

        private boolean isMadeSo(Sold sold) {
            String group = groups.size() >= 2 ? groups.get(0) : Ways.group(sold.ways().get(0));
            return Ways.chosen(sold.ways(), group).equals(way.id());
        }
    }
}
