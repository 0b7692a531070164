package sopwell.prep.quantity;

import java.util.Arrays;
import sopwell.Check;

/** A demand in whole pieces, told by the probability of each count. Immutable. */
public final class CountDemand implements Demand {
    private static final double TAIL = 1e-15;

    /** Counts beyond it are not looked at. */
    private static final int PIECES_MAX = 1_000_000;

    private final double[] upTo;
    private final double mean;
    private final double variance;

    private CountDemand(double[] chances) {
        double sum = Arrays.stream(chances).sum();
        this.upTo = new double[chances.length];
        double so = 0;
        double first = 0;
        double second = 0;
        for (int k = 0; k < chances.length; k++) {
            double p = chances[k] / sum;
            so += p;
            upTo[k] = Math.min(1, so);
            first += p * k;
            second += p * k * k;
        }
        upTo[chances.length - 1] = 1;
        this.mean = first;
        this.variance = second - first * first;
    }

    /** From the chances of 0, 1, 2 … pieces; they are brought to the sum 1. */
    public static CountDemand of(double... chances) {
        Check.that(Arrays.stream(chances).sum() > 0, "some count has a chance");
        return new CountDemand(chances.clone());
    }

    /** Poisson's. */
    public static CountDemand poisson(double mean) {
        return negativeBinomial(mean, 0);
    }

    /**
     * With the variance mean + phi mean².
     *
     * @param mean from 0
     * @param phi from 0; with 0 it is Poisson's
     */
    public static CountDemand negativeBinomial(double mean, double phi) {
        Check.that(mean >= 0 && phi >= 0, "a count has a mean and a width");
        double spread = Math.sqrt(mean + phi * mean * mean);
        int mode = (int) Math.max(0, Math.floor(phi < 1 ? mean * (1 - phi) : 0));
        double[] found = new double[Math.min(PIECES_MAX, 64 + 2 * mode + (int) (16 * spread))];
        found[mode] = 1;
        for (int k = mode; k > 0; k--) {
            found[k - 1] = found[k] / ratio(k - 1, mean, phi);
        }
        int last = mode;
        while (last + 1 < PIECES_MAX && (found[last] > TAIL || last < mean)) {
            if (last + 1 == found.length) {
                found = Arrays.copyOf(found, found.length * 2);
            }
            found[last + 1] = found[last] * ratio(last, mean, phi);
            last++;
        }
        return new CountDemand(Arrays.copyOf(found, last + 1));
    }

    @Override
    public double mean() {
        return mean;
    }

    @Override
    public double variance() {
        return variance;
    }

    @Override
    public double atMost(double amount) {
        if (amount < 0) {
            return 0;
        }
        return upTo[(int) Math.min(upTo.length - 1.0, Math.floor(amount))];
    }

    @Override
    public double missing(double amount) {
        if (amount <= 0) {
            return mean - amount;
        }
        int whole = (int) Math.min(upTo.length, Math.floor(amount));
        double beyond = 0;
        for (int k = whole; k < upTo.length; k++) {
            beyond += 1 - upTo[k];
        }
        double part = amount - whole;
        return Math.max(0, beyond - (whole < upTo.length ? part * (1 - upTo[whole]) : 0));
    }

    @Override
    public double quantile(double probability) {
        int at = Arrays.binarySearch(upTo, probability);
        int found = at >= 0 ? at : -at - 1;
        while (found > 0 && upTo[found - 1] >= probability) {
            found--;
        }
        return Math.min(found, upTo.length - 1);
    }

    /** P(k + 1) / P(k). */
    private static double ratio(int k, double mean, double phi) {
        return (phi * k + 1) / (k + 1) * (mean / (1 + phi * mean));
    }
}
