package sopwell.mix;

import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * How sales ran over a day, half hour by half hour, beside the mean of days before. Immutable.
 *
 * @param first the half hour of the first step, see {@link HalfHours}
 * @param pieces sold to guests on the day, one figure a half hour
 * @param before the mean of the days before in the same half hours; empty when there are none
 */
public record DayCurve(int first, List<Integer> pieces, List<Double> before) {
    public DayCurve {
        pieces = List.copyOf(pieces);
        before = List.copyOf(before);
    }

    /**
     * The curve from the first to the last half hour in which anything was sold on any of the days.
     *
     * @param period the day, or a part of it
     * @param before days to compare with, by the same part of the day
     */
    public static DayCurve of(Period period, DayTally day, Collection<DayTally> before) {
        int[] now = pieces(period, day);
        double[] mean = new double[HalfHours.END_MAX];
        for (DayTally one : before) {
            int[] then = pieces(period.on(one.date()), one);
            for (int half = 0; half < then.length; half++) {
                mean[half] += (double) then[half] / before.size();
            }
        }
        OptionalInt first = any(now, mean).min();
        if (first.isEmpty()) {
            return new DayCurve(0, List.of(), List.of());
        }
        int last = any(now, mean).max().orElseThrow();
        return new DayCurve(
                first.getAsInt(),
                IntStream.rangeClosed(first.getAsInt(), last).mapToObj(i -> now[i]).toList(),
                before.isEmpty()
                        ? List.of()
                        : IntStream.rangeClosed(first.getAsInt(), last)
                                .mapToObj(i -> mean[i])
                                .toList());
    }

    /** The step in which most was sold, the first of several; none when nothing was sold. */
    public OptionalInt busiest() {
        return IntStream.range(0, pieces.size())
                .filter(step -> pieces.get(step) > 0)
                .reduce((most, step) -> pieces.get(step) > pieces.get(most) ? step : most);
    }

    /** Pieces sold to guests by half hour, a figure for each from midnight on. */
    public static int[] pieces(Period period, DayTally day) {
        int[] pieces = new int[HalfHours.END_MAX];
        for (DayTally.HalfHour half : day.halfHours()) {
            if (period.holds(day.date(), half.index())) {
                pieces[half.index()] =
                        half.sold().stream()
                                .filter(sold -> !sold.staff())
                                .mapToInt(DayTally.Sold::pieces)
                                .sum();
            }
        }
        return pieces;
    }

    private static IntStream any(int[] now, double[] mean) {
        return IntStream.range(0, now.length).filter(half -> now[half] > 0 || mean[half] > 0);
    }
}
