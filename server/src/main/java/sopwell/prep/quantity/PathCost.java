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
    private final Window window;
    private final int until;

    /** What the lots that expire before the decided one leave open, by path and day. */
    private final double[] open;

    /** What is left of them after a day, by path, day and lot. */
    private final double[] kept;

    /** How many of them there are, and how many of those expire before and until a day's end. */
    private final int sooner;

    private final int[] expired;

    /**
     * The lots that expire after the decided one, and what is left of them as the window begins.
     */
    private final List<Lot> later;

    private final double[][] laterLeft;

    /**
     * For one decision.
     *
     * @param paths demand by path and day; all paths have the same weight and as many days; they
     *     are shared and not changed
     * @param stock what is there or comes without a decision
     * @param window the days that the decision answers for
     */
    public PathCost(double[][] paths, List<Lot> stock, Window window) {
        this(new Leftovers(paths, stock), window);
    }

    /**
     * For the next decision on the same lots.
     *
     * @param leftovers is played on to the window's first day, which no later window comes before
     * @param window the days that the decision answers for
     */
    public PathCost(Leftovers leftovers, Window window) {
        leftovers.playTo(window.from());
        this.paths = leftovers.paths();
        this.window = window;
        this.until = Math.min(paths[0].length - 1, Math.max(window.last(), window.keepsTo()));
        List<Lot> lots = leftovers.lots();
        int before = 0;
        while (before < lots.size() && lots.get(before).last() <= window.keepsTo()) {
            before++;
        }
        this.sooner = before;
        int days = Math.max(0, until - window.from() + 1);
        this.expired = new int[days + 1];
        for (int d = 0; d <= days; d++) {
            int day = window.from() + d;
            expired[d] = (int) lots.stream().limit(sooner).filter(l -> l.last() < day).count();
        }
        this.open = new double[paths.length * days];
        this.kept = new double[paths.length * days * sooner];
        int[] from = lots.stream().limit(sooner).mapToInt(Lot::from).toArray();
        double[][] columns = new double[sooner][];
        for (int n = 0; n < sooner; n++) {
            columns[n] = leftovers.left(n);
        }
        for (int i = 0; i < paths.length; i++) {
            playSooner(i, from, columns);
        }
        this.later = List.copyOf(lots.subList(sooner, lots.size()));
        this.laterLeft = new double[later.size()][];
        for (int n = 0; n < laterLeft.length; n++) {
            laterLeft[n] = leftovers.left(sooner + n).clone();
        }
    }

    /** The decided lot changes nothing about the lots that expire before it. */
    private void playSooner(int path, int[] from, double[][] columns) {
        double[] left = new double[sooner];
        for (int n = 0; n < sooner; n++) {
            left[n] = columns[n][path];
        }
        int days = expired.length - 1;
        for (int d = 0; d < days; d++) {
            int day = window.from() + d;
            double asked = paths[path][day];
            int at = (path * days + d) * sooner;
            for (int n = expired[d]; n < sooner; n++) {
                if (from[n] <= day) {
                    double taken = Math.min(asked, left[n]);
                    left[n] -= taken;
                    asked -= taken;
                    kept[at + n] = left[n];
                }
            }
            open[path * days + d] = asked;
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
        boolean keeping = stakes.night().signum() > 0;
        int days = expired.length - 1;
        double lost = 0;
        double nights = 0;
        double wasted = 0;
        double[] left = new double[later.size()];
        for (int i = 0; i < paths.length; i++) {
            double own = amount;
            for (int n = 0; n < left.length; n++) {
                left[n] = laterLeft[n][i];
            }
            for (int d = 0; d < days; d++) {
                int day = window.from() + d;
                int at = i * days + d;
                double missing = open[at];
                if (day <= window.keepsTo()) {
                    double taken = Math.min(missing, own);
                    own -= taken;
                    missing -= taken;
                }
                missing = takeLater(left, day, missing);
                lost += day <= window.last() && missing > NOISE * paths[i][day] ? missing : 0;
                for (int n = expired[d]; n < expired[d + 1]; n++) {
                    wasted += kept[at * sooner + n];
                }
                wasted += day == window.keepsTo() ? own : 0;
                for (int n = 0; n < left.length; n++) {
                    Lot lot = later.get(n);
                    wasted += lot.from() <= day && lot.last() == day ? left[n] : 0;
                }
                if (keeping) {
                    for (int n = expired[d + 1]; n < sooner; n++) {
                        nights += kept[at * sooner + n];
                    }
                    nights += day < window.keepsTo() ? own : 0;
                    for (int n = 0; n < left.length; n++) {
                        Lot lot = later.get(n);
                        nights += lot.from() <= day && lot.last() > day ? left[n] : 0;
                    }
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
    private double takeLater(double[] left, int day, double asked) {
        double missing = asked;
        for (int n = 0; n < left.length; n++) {
            if (later.get(n).from() <= day && day <= later.get(n).last()) {
                double taken = Math.min(missing, left[n]);
                left[n] -= taken;
                missing -= taken;
            }
        }
        return missing;
    }
}
