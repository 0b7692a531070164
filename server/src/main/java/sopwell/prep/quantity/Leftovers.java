package sopwell.prep.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import sopwell.prep.quantity.PathCost.Lot;

/**
 * What is left of some lots on every path, played from day to day, the first to expire first. One
 * decision after another goes on from here, so that no day is played twice. Not thread-safe.
 */
public final class Leftovers {
    private final double[][] paths;
    private final List<Lot> lots = new ArrayList<>();

    /** Of each lot, what is left by path. */
    private final List<double[]> left = new ArrayList<>();

    private int day;

    /**
     * Before the first day.
     *
     * @param paths demand by path and day; all paths have the same weight and as many days; they
     *     are shared and not changed
     * @param stock what is there or comes without a decision
     */
    public Leftovers(double[][] paths, List<Lot> stock) {
        this.paths = paths;
        stock.forEach(this::add);
    }

    /** Adds a lot that nothing has been taken of, behind those that expire no later. */
    public void add(Lot lot) {
        int at = lots.size();
        while (at > 0 && lots.get(at - 1).last() > lot.last()) {
            at--;
        }
        double[] amounts = new double[paths.length];
        Arrays.fill(amounts, lot.amount());
        lots.add(at, lot);
        left.add(at, amounts);
    }

    /** Plays all days before this one, which is no earlier than the last time. */
    void playTo(int until) {
        double[] open = new double[paths.length];
        int end = Math.min(until, paths[0].length);
        while (day < end) {
            for (int i = 0; i < open.length; i++) {
                open[i] = paths[i][day];
            }
            for (int n = 0; n < lots.size(); n++) {
                if (lots.get(n).from() <= day && day <= lots.get(n).last()) {
                    take(open, left.get(n));
                }
            }
            day++;
        }
        while (!lots.isEmpty() && lots.get(0).last() < until) {
            lots.remove(0);
            left.remove(0);
        }
    }

    private static void take(double[] open, double[] left) {
        for (int i = 0; i < open.length; i++) {
            double taken = open[i] < left[i] ? open[i] : left[i];
            left[i] -= taken;
            open[i] -= taken;
        }
    }

    double[][] paths() {
        return paths;
    }

    /** The lots that have not expired, the first to expire first. */
    List<Lot> lots() {
        return lots;
    }

    /** What is left of one of them, by path; shared. */
    double[] left(int lot) {
        return left.get(lot);
    }
}
