package sopwell.prep.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * What a quantity costs over days that are played through: oldest first, waste only when a lot
 * expires. Immutable.
 */
public final class PathCost {
    /** Missing parts of a demand below this share come from rounding alone. */
    private static final double NOISE = 1e-12;

    private final double[][] paths;
    private final Window window;

    /** The stock's first and last days, the decided lot among them where it expires. */
    private final int[] from;

    private final int[] last;

    /** Which of them is the decided lot. */
    private final int decided;

    /** What is left of them on each path when the window begins. */
    private final double[][] begun;

    /**
     * For one decision.
     *
     * @param paths demand by path and day; all paths have the same weight and as many days; they
     *     are shared and not changed
     * @param stock what is there or comes without a decision, the first to expire first
     * @param window the days that the decision answers for
     */
    public PathCost(double[][] paths, List<Lot> stock, Window window) {
        this.paths = paths;
        this.window = window;
        int before = 0;
        while (before < stock.size() && stock.get(before).last() <= window.keepsTo()) {
            before++;
        }
        this.decided = before;
        List<Lot> all = new ArrayList<>(stock);
        all.add(before, new Lot(0, window.from(), window.keepsTo()));
        this.from = all.stream().mapToInt(Lot::from).toArray();
        this.last = all.stream().mapToInt(Lot::last).toArray();
        double[] amounts = all.stream().mapToDouble(Lot::amount).toArray();
        this.begun = new double[paths.length][];
        for (int i = 0; i < paths.length; i++) {
            begun[i] = amounts.clone();
            for (int day = 0; day < Math.min(window.from(), paths[i].length); day++) {
                take(begun[i], day, paths[i][day]);
            }
        }
    }

    /**
     * An amount that is usable on some days. Immutable.
     *
     * @param from the first day, counted from 0
     * @param last the last day; waste after it, unless it lies beyond the paths
     */
    public record Lot(double amount, int from, int last) {}

    /**
     * The days on which a shortage counts. Immutable.
     *
     * @param from the day on which the decided lot is there
     * @param last the last day before another decision takes effect
     * @param keepsTo the decided lot's last day
     */
    public record Window(int from, int last, int keepsTo) {}

    /** What this amount costs on average, in the stakes' money. */
    public double of(double amount, Stakes stakes) {
        double lost = 0;
        double nights = 0;
        double wasted = 0;
        double[] left = new double[from.length];
        for (int i = 0; i < paths.length; i++) {
            double[] path = paths[i];
            System.arraycopy(begun[i], 0, left, 0, left.length);
            left[decided] = amount;
            int until = Math.min(path.length - 1, Math.max(window.last(), window.keepsTo()));
            for (int day = window.from(); day <= until; day++) {
                double missing = take(left, day, path[day]);
                lost += day <= window.last() && missing > NOISE * path[day] ? missing : 0;
                for (int n = 0; n < left.length; n++) {
                    boolean held = from[n] <= day;
                    wasted += held && last[n] == day ? left[n] : 0;
                    nights += held && last[n] > day ? left[n] : 0;
                }
            }
        }
        return (stakes.shortage().doubleValue() * lost
                        + stakes.waste().doubleValue() * wasted
                        + stakes.night().doubleValue() * nights)
                / paths.length;
    }

    /**
     * The best number of lots: from a first guess on, it is changed by one while that costs less.
     *
     * @param lot what one lot gives, above 0
     * @param guess from where the search begins, from 0 and at most {@code most}
     * @param most lots that can be had, from 0
     */
    public LotChoice choose(double lot, Stakes stakes, long guess, long most) {
        long lots = guess;
        double cost = of(lots * lot, stakes);
        double below = lots > 0 ? of((lots - 1) * lot, stakes) : Double.POSITIVE_INFINITY;
        double above = lots < most ? of((lots + 1) * lot, stakes) : Double.POSITIVE_INFINITY;
        while (below <= cost) {
            above = cost;
            cost = below;
            lots--;
            below = lots > 0 ? of((lots - 1) * lot, stakes) : Double.POSITIVE_INFINITY;
        }
        while (above < cost) {
            below = cost;
            cost = above;
            lots++;
            above = lots < most ? of((lots + 1) * lot, stakes) : Double.POSITIVE_INFINITY;
        }
        return below < above
                ? new LotChoice(lots, cost, lots - 1, below)
                : new LotChoice(lots, cost, lots + 1, above);
    }

    /** Takes what is asked for on a day, the first to expire first; the rest is missing. */
    private double take(double[] left, int day, double asked) {
        double open = asked;
        for (int n = 0; n < left.length && open > 0; n++) {
            if (from[n] <= day && day <= last[n]) {
                double taken = Math.min(open, left[n]);
                left[n] -= taken;
                open -= taken;
            }
        }
        return open;
    }
}
