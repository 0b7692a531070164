package sopwell.prep.forecast;

import java.util.BitSet;
import java.util.Map;
import java.util.TreeMap;
import sopwell.prep.forecast.PastDay.OutSpan;

/**
 * What could be sold when on one day: the open bins, and the items that were out for a part of it.
 * Built once, then only read.
 */
final class DayStock {
    private static final double[] WHOLE = new double[0];

    private final int bins;
    private final double[] open;
    private final Map<Integer, double[]> stock = new TreeMap<>();
    private final BitSet mains = new BitSet();
    private final BitSet untimed = new BitSet();
    private boolean closedWhole;

    /**
     * A day on which nothing was out.
     *
     * @param open what part of each bin the stand was open; empty for the usual hours
     */
    DayStock(int bins, double[] open) {
        this.bins = bins;
        this.open = open.clone();
    }

    /**
     * Something was out.
     *
     * @param covered what part of each bin it was
     * @param isMain whether guests will have taken something else instead
     */
    void out(OutSpan span, double[] covered, BitSet items, boolean isMain) {
        for (int i = items.nextSetBit(0); i >= 0; i = items.nextSetBit(i + 1)) {
            if (span.from() == OutSpan.UNKNOWN) {
                untimed.set(i);
                continue;
            }
            double[] left = stock.computeIfAbsent(i, item -> ones());
            for (int b = 0; b < bins; b++) {
                left[b] = Math.max(0, left[b] - covered[b]);
            }
            if (isMain) {
                mains.set(i);
            }
        }
        closedWhole |= Needs.isEverything(span.what());
    }

    /** Whether it was a day of the usual hours on which everything could be sold. */
    boolean isWhole() {
        return open.length == 0 && stock.isEmpty();
    }

    /** Whether an item ran out at a time that nobody kept. */
    boolean isUntimed(int item) {
        return untimed.get(item);
    }

    /** Whether anything did. */
    boolean hasUntimed() {
        return !untimed.isEmpty();
    }

    /** Whether an item was out for a while. */
    boolean wasOut(int item) {
        return stock.containsKey(item);
    }

    /** What part of each bin an item could be sold in, seen through a window. */
    double[] of(int item, double[] window) {
        double[] parts = stock.containsKey(item) ? stock.get(item).clone() : ones();
        for (int b = 0; b < bins; b++) {
            parts[b] *= at(open, b) * at(window, b);
        }
        return parts;
    }

    /** What part of everything could be sold in each bin. */
    double[] ofAll(double[] shares, double[] window) {
        double[] parts = ones();
        stock.forEach(
                (item, left) -> {
                    for (int b = 0; b < bins; b++) {
                        parts[b] -= shares[item] * (1 - left[b]);
                    }
                });
        for (int b = 0; b < bins; b++) {
            parts[b] = Math.max(0, parts[b]) * at(open, b) * at(window, b);
        }
        return parts;
    }

    /** The bins in which no main item but this one was out; -1 for no exception. */
    double[] window(int except) {
        boolean alone = except >= 0 && mains.get(except) && mains.cardinality() == 1;
        if (mains.isEmpty() || closedWhole || alone) {
            return WHOLE;
        }
        double[] window = ones();
        for (int i = mains.nextSetBit(0); i >= 0; i = mains.nextSetBit(i + 1)) {
            for (int b = 0; b < bins; b++) {
                window[b] = i != except && stock.get(i)[b] < 1 ? 0 : window[b];
            }
        }
        return window;
    }

    private static double at(double[] parts, int bin) {
        return parts.length == 0 ? 1 : parts[bin];
    }

    private double[] ones() {
        double[] ones = new double[bins];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }
}
