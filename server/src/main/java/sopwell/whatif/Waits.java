package sopwell.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import sopwell.mix.Percentile;
import sopwell.mix.WaitSummary;

/**
 * Waits from the call to whole, condensed. Immutable.
 *
 * @param orders how many; with none, the other figures are 0
 * @param medianSeconds half waited no longer
 * @param ninetiethSeconds nine of ten waited no longer
 * @param withinShare the share that was whole within the target, 0 to 1
 */
public record Waits(
        double orders, double medianSeconds, double ninetiethSeconds, double withinShare) {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    static Waits of(List<Long> waitsMs, int targetSeconds) {
        WaitSummary summary = WaitSummary.ofMillis(waitsMs);
        long within = waitsMs.stream().filter(ms -> ms <= targetSeconds * 1000L).count();
        return new Waits(
                summary.measured(),
                summary.medianSeconds(),
                summary.ninetiethSeconds(),
                waitsMs.isEmpty() ? 0 : (double) within / waitsMs.size());
    }

    /**
     * Each figure over many runs: its middle, and between what it was in eight of ten.
     *
     * @param low the figure that one run in ten is below
     * @param high the figure that one run in ten is above
     */
    public record Band(Waits low, Waits middle, Waits high) {
        static Band of(List<Waits> runs) {
            return new Band(at(runs, LOW), at(runs, 0.5), at(runs, HIGH));
        }

        private static Waits at(List<Waits> runs, double share) {
            List<Waits> some = runs.stream().filter(run -> run.orders() > 0).toList();
            return some.isEmpty()
                    ? new Waits(0, 0, 0, 0)
                    : new Waits(
                            place(some, share, Waits::orders),
                            place(some, share, Waits::medianSeconds),
                            place(some, share, Waits::ninetiethSeconds),
                            place(some, share, Waits::withinShare));
        }
    }

    static double place(List<Waits> runs, double share, ToDoubleFunction<Waits> figure) {
        List<Double> all = new ArrayList<>();
        runs.forEach(run -> all.add(figure.applyAsDouble(run)));
        return Percentile.of(
                all.stream().mapToDouble(Double::doubleValue).sorted().toArray(), share);
    }
}
