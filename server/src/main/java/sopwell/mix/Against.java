package sopwell.mix;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import sopwell.menu.LocalText;
import sopwell.mix.MixTable.Way;
import sopwell.mix.MixTable.WayCount;

/**
 * A day beside the same weekdays before it, by the same part of the day. Immutable.
 *
 * @param lastFour the last four such days together, or fewer when there are no more
 * @param moved shares that differ by more than chance, as far as up to twelve such days can tell
 */
public record Against(Mix lastFour, List<Moved> moved) {
    /** Days that a day is compared with. */
    public static final int COMPARED_DAYS = 4;

    /** Days that say how much a share wanders by itself. */
    public static final int CHART_DAYS = 12;

    public Against {
        moved = List.copyOf(moved);
    }

    /**
     * A share that has really moved.
     *
     * @param before the share on all days before together, 0 to 1
     * @param days how many days before there were
     */
    public record Moved(
            LocalText item,
            LocalText way,
            Share now,
            double before,
            int days,
            ShareChart.Verdict verdict) {}

    /**
     * Compares a day.
     *
     * @param now the day, or a part of it
     * @param before the same weekdays before it, in any order; empty when there are none
     */
    public static Optional<Against> of(Mix now, List<DayTally> before, Names names) {
        List<DayTally> days =
                before.stream()
                        .filter(day -> day.date().isBefore(now.period().from()))
                        .sorted(Comparator.comparing(DayTally::date).reversed())
                        .limit(CHART_DAYS)
                        .toList();
        if (days.isEmpty()) {
            return Optional.empty();
        }
        List<DayTally> four = days.subList(0, Math.min(COMPARED_DAYS, days.size()));
        Period period = now.period();
        Period all =
                new Period(
                        four.get(four.size() - 1).date(),
                        four.get(0).date(),
                        period.beginHalfHour(),
                        period.endHalfHour());
        List<Mix> each = new ArrayList<>();
        for (DayTally day : days) {
            each.add(0, Mix.of(period.on(day.date()), List.of(day), names));
        }
        return Optional.of(new Against(Mix.of(all, four, names), moved(now, each)));
    }

    /** The dates of the same weekday before a date that may be compared with it, newest first. */
    public static List<LocalDate> weekdaysBefore(LocalDate date) {
        List<LocalDate> dates = new ArrayList<>();
        for (int weeks = 1; weeks <= 2 * CHART_DAYS; weeks++) {
            dates.add(date.minusWeeks(weeks));
        }
        return dates;
    }

    /** The share of a way on the last four days together; unknown when it was not sold then. */
    public Share rowShare(String item, Way way) {
        return lastFour.table(item)
                .map(table -> new Share(rowPieces(table, way), table.total()))
                .orElse(new Share(0, 0));
    }

    /** See {@link #rowShare}. */
    public Share columnShare(String item, Way way) {
        return lastFour.table(item)
                .map(table -> new Share(columnPieces(table, way), table.total()))
                .orElse(new Share(0, 0));
    }

    /** See {@link #rowShare}. */
    public Share besideShare(String item, Way way) {
        return lastFour.table(item)
                .map(table -> new Share(besidePieces(table, way), table.total()))
                .orElse(new Share(0, 0));
    }

    private static List<Moved> moved(Mix now, List<Mix> each) {
        List<Moved> moved = new ArrayList<>();
        for (MixTable table : now.tables()) {
            for (Way way : table.rows()) {
                look(table, way, t -> rowPieces(t, way), each).ifPresent(moved::add);
            }
            for (Way way : table.columns()) {
                look(table, way, t -> columnPieces(t, way), each).ifPresent(moved::add);
            }
            for (WayCount count : table.besides()) {
                Way way = count.way();
                look(table, way, t -> besidePieces(t, way), each).ifPresent(moved::add);
            }
        }
        return moved;
    }

    private static Optional<Moved> look(
            MixTable table, Way way, ToIntFunction<MixTable> pieces, List<Mix> each) {
        List<Share> before =
                each.stream()
                        .flatMap(mix -> mix.table(table.item()).stream())
                        .map(then -> new Share(pieces.applyAsInt(then), then.total()))
                        .toList();
        Share now = new Share(pieces.applyAsInt(table), table.total());
        ShareChart chart = ShareChart.of(before, now);
        return switch (chart.verdict()) {
            case CANT_TELL, STEADY -> Optional.empty();
            case UP, DOWN ->
                    Optional.of(
                            new Moved(
                                    table.name(),
                                    way.name(),
                                    now,
                                    chart.mean(),
                                    before.size(),
                                    chart.verdict()));
        };
    }

    private static int rowPieces(MixTable table, Way way) {
        int row = place(table.rows(), way);
        return row < 0 ? 0 : table.rowTotal(row);
    }

    private static int columnPieces(MixTable table, Way way) {
        int column = place(table.columns(), way);
        return column < 0 ? 0 : table.columnTotal(column);
    }

    private static int besidePieces(MixTable table, Way way) {
        return table.besides().stream()
                .filter(count -> count.way().id().equals(way.id()))
                .mapToInt(WayCount::pieces)
                .sum();
    }

    private static int place(List<Way> ways, Way way) {
        return ways.stream().map(Way::id).toList().indexOf(way.id());
    }
}
