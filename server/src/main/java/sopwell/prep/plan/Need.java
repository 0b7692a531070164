package sopwell.prep.plan;

import java.util.Arrays;
import java.util.List;
import sopwell.prep.quantity.PathCost.Lot;

/**
 * What is asked for of one ingredient, date by date from the plan's first, on every path. Not
 * thread-safe: for one plan.
 */
final class Need {
    private final double[][] paths;
    private final long[] by;
    private final double[] means;

    /**
     * From what is sold.
     *
     * @param paths shared with nobody: recipes' takings are added to them
     * @param by by date, until which minute what is asked for must be there; {@link Spans#FAR} when
     *     nothing is
     */
    Need(double[][] paths, long[] by) {
        this.paths = paths;
        this.by = by;
        this.means = new double[by.length];
        for (double[] path : paths) {
            for (int date = 0; date < means.length; date++) {
                means[date] += path[date] / paths.length;
            }
        }
    }

    /** Adds what recipes take on a date, which is sure. */
    void add(int date, double amount, long minute) {
        for (double[] path : paths) {
            path[date] += amount;
        }
        means[date] += amount;
        by[date] = Math.min(by[date], minute);
    }

    double[][] paths() {
        return paths;
    }

    int dates() {
        return by.length;
    }

    boolean isOn(int date) {
        return by[date] < Spans.FAR;
    }

    long by(int date) {
        return by[date];
    }

    boolean isAny() {
        return Arrays.stream(by).anyMatch(minute -> minute < Spans.FAR);
    }

    /** The first date after this one on which something is asked for, so many such dates on. */
    int next(int date, int steps) {
        int at = date;
        int left = steps;
        while (left > 0 && at < by.length) {
            at++;
            left -= at < by.length && isOn(at) ? 1 : 0;
        }
        return at;
    }

    double mean(int date) {
        return means[date];
    }

    double mean(int from, int last) {
        double sum = 0;
        for (int date = from; date <= last; date++) {
            sum += mean(date);
        }
        return sum;
    }

    /** What each path asks for over some dates. */
    double[] sums(int from, int last) {
        double[] sums = new double[paths.length];
        for (int i = 0; i < sums.length; i++) {
            for (int date = from; date <= last; date++) {
                sums[i] += paths[i][date];
            }
        }
        return sums;
    }

    /** What is usable on a date of some lots, after earlier dates took their means. */
    double usable(List<Lot> lots, int date) {
        double[] left = lots.stream().mapToDouble(Lot::amount).toArray();
        for (int day = 0; day < date; day++) {
            take(lots, left, day, mean(day));
        }
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            Lot lot = lots.get(i);
            sum += lot.from() <= date && date <= lot.last() ? left[i] : 0;
        }
        return sum;
    }

    /** What is missing on average over the dates before one, with these lots alone. */
    double missing(List<Lot> lots, int before) {
        double[] left = lots.stream().mapToDouble(Lot::amount).toArray();
        double missing = 0;
        for (int day = 0; day < before; day++) {
            missing += take(lots, left, day, mean(day));
        }
        return missing;
    }

    private static double take(List<Lot> lots, double[] left, int day, double asked) {
        double open = asked;
        for (int i = 0; i < left.length && open > 0; i++) {
            Lot lot = lots.get(i);
            if (lot.from() <= day && day <= lot.last()) {
                double taken = Math.min(open, left[i]);
                left[i] -= taken;
                open -= taken;
            }
        }
        return open;
    }
}
