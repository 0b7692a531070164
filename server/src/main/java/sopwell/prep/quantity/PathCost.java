package sopwell.prep.quantity;

import java.util.List;

/**
 * What a quantity costs over days that are played through: oldest first, waste only when a lot
 * expires. Immutable.
 */
public final class PathCost {
    /** Missing parts of a demand below this share come from rounding alone. */
    private static final double NOISE = 1e-12;

    private final double[][] paths;
    private final List<Lot> stock;
    private final Window window;

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
        this.stock = List.copyOf(stock);
        this.window = window;
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
        double sum = 0;
        for (double[] path : paths) {
            sum += one(path, amount, stakes);
        }
        return sum / paths.length;
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

    private double one(double[] path, double amount, Stakes stakes) {
        int held = stock.size() + 1;
        double[] left = new double[held];
        int[] from = new int[held];
        int[] last = new int[held];
        fill(amount, left, from, last);
        double lost = 0;
        double nights = 0;
        double wasted = 0;
        int until = Math.min(path.length - 1, Math.max(window.last(), window.keepsTo()));
        for (int day = 0; day <= until; day++) {
            double asked = path[day];
            for (int i = 0; i < held && asked > 0; i++) {
                if (from[i] <= day && day <= last[i]) {
                    double taken = Math.min(asked, left[i]);
                    left[i] -= taken;
                    asked -= taken;
                }
            }
            boolean counts = window.from() <= day && day <= window.last();
            lost += counts && asked > NOISE * path[day] ? asked : 0;
            for (int i = 0; i < held; i++) {
                boolean over = last[i] == day;
                wasted += over ? left[i] : 0;
                left[i] = over ? 0 : left[i];
                nights += from[i] <= day && day >= window.from() ? left[i] : 0;
            }
        }
        return stakes.shortage().doubleValue() * lost
                + stakes.waste().doubleValue() * wasted
                + stakes.night().doubleValue() * nights;
    }

    /** All lots, the first to expire first. */
    private void fill(double amount, double[] left, int[] from, int[] last) {
        int at = 0;
        boolean placed = false;
        for (Lot lot : stock) {
            if (!placed && window.keepsTo() < lot.last()) {
                set(at++, new Lot(amount, window.from(), window.keepsTo()), left, from, last);
                placed = true;
            }
            set(at++, lot, left, from, last);
        }
        if (!placed) {
            set(at, new Lot(amount, window.from(), window.keepsTo()), left, from, last);
        }
    }

    private static void set(int at, Lot lot, double[] left, int[] from, int[] last) {
        left[at] = lot.amount();
        from[at] = lot.from();
        last[at] = lot.last();
    }
}
