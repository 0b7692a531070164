package sopwell.mix;

import java.util.List;

/**
 * Waits condensed. Immutable.
 *
 * @param measured how many were measured; with none, the other figures are 0
 * @param medianSeconds see {@link Percentile}
 * @param ninetiethSeconds nine of ten waited no longer, see {@link Percentile}
 */
public record WaitSummary(int measured, double medianSeconds, double ninetiethSeconds) {
    /** Nothing was measured. */
    public static final WaitSummary NONE = new WaitSummary(0, 0, 0);

    /** The summary of waits given in milliseconds, in any order. */
    public static WaitSummary ofMillis(List<Long> waitsMs) {
        if (waitsMs.isEmpty()) {
            return NONE;
        }
        double[] seconds = waitsMs.stream().mapToDouble(ms -> ms / 1000.0).sorted().toArray();
        return new WaitSummary(
                seconds.length, Percentile.of(seconds, 0.5), Percentile.of(seconds, 0.9));
    }
}
