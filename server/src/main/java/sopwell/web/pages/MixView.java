package sopwell.web.pages;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.mix.Against;
import sopwell.mix.DayTally;
import sopwell.mix.HalfHours;
import sopwell.mix.ItemCount;
import sopwell.mix.Mix;
import sopwell.mix.MixTable;
import sopwell.mix.Share;
import sopwell.mix.ShareChart;
import sopwell.mix.WaitSummary;
import sopwell.web.T;

/**
 * What was sold, in one language. Immutable.
 *
 * @param against the same weekdays before, for a single day that has any
 * @param each the newest days by themselves, the newest first, when several were asked for
 * @param daysLeft how many earlier days are not listed by themselves
 * @param charts pictures of the same, in the order of the page
 */
public record MixView(
        T t, Mix mix, Optional<Against> against, List<Day> each, int daysLeft, List<Chart> charts) {
    /** From what share of a table's pieces on a cell is set heavy, in percent. */
    private static final int HEAVY_PERCENT = 15;

    /** Shades of a cell's ground, without that of nothing. */
    private static final int SHADES = 5;

    private static final Share UNKNOWN = new Share(0, 0);

    /**
     * A day by itself.
     *
     * @param pieces that guests bought
     */
    public record Day(LocalDate date, DayTally.Counts counts, int pieces) {}

    /** What a table shows. */
    public String title(MixTable table) {
        return t.of(
                "mix.table", t.local(table.name()), t.local(table.down()), t.local(table.across()));
    }

    /** A cell's pieces; nothing is a dot, so that zeros don't shout. */
    public String cell(MixTable table, int row, int column) {
        int pieces = table.pieces().get(row).get(column);
        return pieces == 0 ? "·" : Integer.toString(pieces);
    }

    /** How heavy a cell is set, and how dark its ground is. */
    public String weight(MixTable table, int row, int column) {
        int pieces = table.pieces().get(row).get(column);
        if (pieces == 0) {
            return "heat zero";
        }
        int shade = (percentOfMost(table, row, column) * SHADES + 99) / 100;
        boolean heavy = pieces * 100 >= table.total() * HEAVY_PERCENT;
        return "heat h" + shade + (heavy ? " heavy" : "");
    }

    /** A cell's pieces against those of the fullest cell, in whole percent. */
    public int percentOfMost(MixTable table, int row, int column) {
        int most =
                table.pieces().stream()
                        .flatMap(List::stream)
                        .mapToInt(Integer::intValue)
                        .max()
                        .orElse(1);
        return table.pieces().get(row).get(column) * 100 / Math.max(1, most);
    }

    /** A share in whole percent, or a dash of nothing. */
    public String share(Share share) {
        return share.isKnown() ? t.percent(share.value()) : "–";
    }

    /** Between which shares the true one lies, as far as so few pieces can tell. */
    public String range(Share share) {
        return share.isKnown()
                ? t.of("mix.range", Math.round(share.low() * 100), Math.round(share.high() * 100))
                : "";
    }

    /** What the share was on the last such weekdays, or nothing when that is not known. */
    public String before(Share then) {
        return then.isKnown() ? t.of("mix.then", t.percent(then.value())) : "";
    }

    /** The share of a row on the last such weekdays. */
    public Share rowBefore(MixTable table, int row) {
        return against.map(a -> a.rowShare(table.item(), table.rows().get(row))).orElse(UNKNOWN);
    }

    /** The share of a column on the last such weekdays. */
    public Share columnBefore(MixTable table, int column) {
        return against.map(a -> a.columnShare(table.item(), table.columns().get(column)))
                .orElse(UNKNOWN);
    }

    /** The share of a way beside the table on the last such weekdays. */
    public Share besideBefore(MixTable table, MixTable.Way way) {
        return against.map(a -> a.besideShare(table.item(), way)).orElse(UNKNOWN);
    }

    /** What has really moved, a sentence each. */
    public List<String> moved() {
        return against.map(Against::moved).orElse(List.of()).stream().map(this::sentence).toList();
    }

    /** With which days the day is compared. */
    public String comparedWith() {
        return against.map(
                        a ->
                                t.of(
                                        "mix.compared",
                                        a.lastFour().days(),
                                        weekdays(mix.period().from())))
                .orElse("");
    }

    /** Which days are shown, and which part of them. */
    public String period() {
        String days =
                mix.period().isOneDay()
                        ? t.date(mix.period().from())
                        : t.of(
                                "mix.from-to",
                                t.date(mix.period().from()),
                                t.date(mix.period().to()));
        return mix.period().isWholeDays()
                ? days
                : t.of(
                        "mix.part",
                        days,
                        time(mix.period().beginHalfHour()),
                        time(mix.period().endHalfHour()));
    }

    /** A wait, or a dash when none was measured. */
    public String wait(WaitSummary summary, double seconds) {
        return summary.measured() == 0 ? "–" : t.minutes(seconds);
    }

    /** An item with its size. */
    public String item(ItemCount item) {
        String size = t.local(item.sizeName());
        return size.isEmpty() ? t.local(item.name()) : t.local(item.name()) + ", " + size;
    }

    private String sentence(Against.Moved moved) {
        boolean up = moved.verdict() == ShareChart.Verdict.UP;
        return t.of(
                up ? "mix.moved.up" : "mix.moved.down",
                t.local(moved.item()),
                t.local(moved.way()),
                t.percent(moved.now().value()),
                t.percent(moved.before()),
                moved.days(),
                weekdays(mix.period().from()));
    }

    private String weekdays(LocalDate date) {
        return t.get("weekdays." + date.getDayOfWeek().getValue());
    }

    private static String time(int halfHour) {
        return HalfHours.begins(halfHour).toString();
    }
}
