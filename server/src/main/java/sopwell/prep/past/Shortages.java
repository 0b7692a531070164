package sopwell.prep.past;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.menu.Selection;
import sopwell.mix.DayTally;
import sopwell.mix.HalfHours;
import sopwell.prep.PrepDays;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.stock.larder.Measures;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Usage;

/**
 * What guests would have taken while something was out: as much more of it as is usually sold in
 * that part of a day. An estimate, and only of what somebody marked as out. Immutable.
 */
final class Shortages {
    private static final int BINS = HalfHours.END_MAX;

    /** More than nine tenths of a day is never made up for: too little was seen of it. */
    private static final double MOST = 0.9;

    /** Of an ingredient of which a tenth of the day's use was left, there was enough. */
    private static final long LEFT_PART = 10;

    private final RecipeBook book;
    private final List<DayTally> days;

    /**
     * Shortages by a book of recipes.
     *
     * @param days what is usually sold when
     */
    Shortages(RecipeBook book, List<DayTally> days) {
        this.book = book;
        this.days = List.copyOf(days);
    }

    /**
     * What was missing on a day, in thousandths of the base unit, of ingredients that something out
     * needs and of which hardly any was left.
     *
     * @param sold what the day sold
     */
    Map<String, Long> of(DayPrep day, DayTally sold, List<OutSpan> outs) {
        Map<String, Long> missing = new TreeMap<>();
        if (outs.isEmpty()) {
            return missing;
        }
        double[] curve = curve(sold);
        Map<String, BigDecimal> sums = new HashMap<>();
        for (DayTally.HalfHour half : sold.halfHours()) {
            for (DayTally.Sold some : half.sold()) {
                double part = Math.min(MOST, out(curve, some, outs));
                if (part > 0 && !some.staff()) {
                    add(sums, some, part / (1 - part));
                }
            }
        }
        sums.forEach(
                (id, amount) -> {
                    Long left = day.left().get(id);
                    long used = day.used().getOrDefault(id, 0L);
                    if (left != null && left * LEFT_PART <= used) {
                        missing.put(id, Measures.thousandths(amount));
                    }
                });
        return missing;
    }

    private void add(Map<String, BigDecimal> sums, DayTally.Sold some, double factor) {
        Selection made =
                new Selection(some.item(), some.size(), PrepDays.options(some.ways()), List.of());
        BigDecimal pieces = BigDecimal.valueOf(factor * some.pieces());
        Usage.of(book, made)
                .forEach((id, each) -> sums.merge(id, each.multiply(pieces), BigDecimal::add));
    }

    /** What part of a day's pieces is usually sold while a piece like this was out. */
    private static double out(double[] curve, DayTally.Sold some, List<OutSpan> outs) {
        double sum = 0;
        for (int bin = 0; bin < BINS; bin++) {
            double most = 0;
            for (OutSpan span : outs) {
                most = Math.max(most, needs(some, span.what()) ? overlap(bin, span) : 0);
            }
            sum += most * curve[bin];
        }
        return sum;
    }

    private static boolean needs(DayTally.Sold some, String what) {
        return what.equals(some.item())
                || what.equals(some.item() + " " + some.size())
                || PrepDays.options(some.ways()).contains(what);
    }

    private static double overlap(int bin, OutSpan span) {
        int from = Math.max(bin * PrepDays.BIN_MINUTES, span.from());
        int to = Math.min((bin + 1) * PrepDays.BIN_MINUTES, span.to());
        return span.from() == OutSpan.UNKNOWN
                ? 0
                : Math.max(0, to - from) / (double) PrepDays.BIN_MINUTES;
    }

    /** How a day's pieces usually fall on its half hours: as on days of that weekday, or on all. */
    private double[] curve(DayTally day) {
        List<DayTally> alike =
                days.stream()
                        .filter(one -> !one.date().equals(day.date()))
                        .filter(one -> one.date().getDayOfWeek() == day.date().getDayOfWeek())
                        .toList();
        double[] curve = new double[BINS];
        double all = 0;
        for (DayTally one : alike.isEmpty() ? days : alike) {
            for (DayTally.HalfHour half : one.halfHours()) {
                int pieces = half.sold().stream().mapToInt(DayTally.Sold::pieces).sum();
                curve[Math.min(BINS - 1, half.index())] += pieces;
                all += pieces;
            }
        }
        for (int bin = 0; bin < BINS && all > 0; bin++) {
            curve[bin] /= all;
        }
        return curve;
    }
}
