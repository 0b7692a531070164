package sopwell.prep.forecast;

import java.time.DayOfWeek;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import sopwell.prep.forecast.PastDay.Hours;

/**
 * When the stand is usually open, and when in the day it sells: how much of a plain day a part of a
 * day is. Not thread-safe.
 */
final class Clockwork {
    private static final double KEEP = 0.97;
    private static final int REMEMBERED = 8;

    private final int binMinutes;
    private final int bins;
    private final Curve pooled;
    private final Curve[] weekdays = new Curve[Priors.WEEK];
    private final Map<Integer, Deque<Hours>> remembered = new HashMap<>();

    Clockwork(int binMinutes, int bins) {
        this.binMinutes = binMinutes;
        this.bins = bins;
        this.pooled = new Curve(bins, KEEP);
        for (int w = 0; w < Priors.WEEK; w++) {
            weekdays[w] = new Curve(bins, KEEP);
        }
    }

    static int weekday(DayOfWeek day) {
        return day.getValue() - 1;
    }

    /** What part of each bin a stretch of the day covers. */
    double[] covered(int from, int to) {
        double[] parts = new double[bins];
        for (int b = from / binMinutes; b < bins && b * binMinutes < to; b++) {
            int starts = Math.max(from, b * binMinutes);
            int ends = Math.min(to, (b + 1) * binMinutes);
            parts[b] = Math.max(0, ends - starts) / (double) binMinutes;
        }
        return parts;
    }

    /** The hours of most of a weekday's last days; the newer of two as frequent. */
    Hours usual(int weekday) {
        Map<Hours, Integer> counts = new HashMap<>();
        Hours most = Hours.UNKNOWN;
        for (Hours hours : remembered.getOrDefault(weekday, new ArrayDeque<>())) {
            int count = counts.merge(hours, 1, Integer::sum);
            if (count >= counts.getOrDefault(most, 0)) {
                most = hours;
            }
        }
        return most;
    }

    /** Whether a day of these hours is a day like its weekday's others. */
    boolean isUsual(int weekday, Hours hours) {
        Hours usual = usual(weekday);
        return !hours.isKnown() || !usual.isKnown() || usual.equals(hours);
    }

    /** What these hours see of a day of the usual hours. */
    double hours(int weekday, Hours hours) {
        if (isUsual(weekday, hours)) {
            return 1;
        }
        return Math.max(0.05, Math.min(1.5, mass(weekday, covered(hours.from(), hours.to()))));
    }

    /** What the parts of bins see of a day of the usual hours. */
    double mass(int weekday, double[] parts) {
        return mass(weekday, parts, pooled, false);
    }

    /** The same of an item, whose own curve leans on that of everything. */
    double mass(int weekday, double[] parts, Curve own) {
        return mass(weekday, parts, own, true);
    }

    private double mass(int weekday, double[] parts, Curve own, boolean isItem) {
        Hours usual = usual(weekday);
        double[] whole = usual.isKnown() ? covered(usual.from(), usual.to()) : new double[0];
        double seen = 0;
        double all = 0;
        for (int b = 0; b < bins; b++) {
            double plain = pooled.share(b, 1.0 / bins);
            double share = isItem ? own.share(b, plain) : weekdays[weekday].share(b, plain);
            seen += share * parts[b];
            all += share * (whole.length == 0 ? 1 : whole[b]);
        }
        return all <= 0 ? 0 : seen / all;
    }

    /**
     * Takes in a day.
     *
     * @param could what part of each bin things could be sold in; empty for all of it
     * @param whole what the whole day would have sold
     */
    void learn(int weekday, Hours hours, int[] counts, double[] could, double whole) {
        pooled.learn(counts, could, whole);
        weekdays[weekday].learn(counts, could, whole);
        if (hours.isKnown()) {
            Deque<Hours> last = remembered.computeIfAbsent(weekday, w -> new ArrayDeque<>());
            last.addLast(hours);
            if (last.size() > REMEMBERED) {
                last.removeFirst();
            }
        }
    }
}
