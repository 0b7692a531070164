package sopwell.mix;

import java.util.function.IntToDoubleFunction;
import sopwell.Check;

/**
 * Percentiles by one stated definition, the NIST handbook's: the value at place p (N + 1) of the
 * sorted values, with linear interpolation between neighbours, and the first or last value outside
 * (type 6 of Hyndman and Fan). Stateless.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.6.2.
 */
public final class Percentile {
    private Percentile() {}

    /**
     * A percentile of sorted values.
     *
     * @param sorted at least one value, ascending
     * @param share 0 to 1; 0.5 is the median
     */
    public static double of(double[] sorted, double share) {
        return of(sorted.length, place -> sorted[place], share);
    }

    /**
     * A percentile of values that are sorted by whoever tells them.
     *
     * @param size how many there are, at least one
     * @param values the value at a place of them in ascending order, from 0
     * @param share 0 to 1; 0.5 is the median
     */
    static double of(int size, IntToDoubleFunction values, double share) {
        Check.that(size > 0, "a percentile needs a value");
        Check.that(share >= 0 && share <= 1, "a percentile's share is 0 to 1");
        double place = share * (size + 1);
        int below = (int) Math.floor(place);
        if (below < 1) {
            return values.applyAsDouble(0);
        }
        if (below >= size) {
            return values.applyAsDouble(size - 1);
        }
        double low = values.applyAsDouble(below - 1);
        return low + (place - below) * (values.applyAsDouble(below) - low);
    }
}
