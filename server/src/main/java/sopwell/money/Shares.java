package sopwell.money;

import java.math.BigInteger;
import sopwell.Check;

/**
 * Parts an amount in proportion to weights, in whole cents, so that the parts add up to it: each
 * gets its share rounded down, and the cents left over go to the largest fractions, one each, the
 * earlier of two equal ones first (the method of largest remainders). Stateless.
 */
final class Shares {
    private Shares() {}

    /**
     * The parts, in the order of the weights. A part is never more than its weight when the amount
     * is not more than all of them together.
     *
     * @param amountCents 0 or more; 0 when all weights are
     * @param weights each 0 or more
     */
    static long[] of(long amountCents, long[] weights) {
        long total = 0;
        for (long weight : weights) {
            Check.that(weight >= 0, "a weight is zero or more");
            total = Math.addExact(total, weight);
        }
        long[] parts = new long[weights.length];
        if (amountCents == 0) {
            return parts;
        }
        Check.that(amountCents > 0 && total > 0, "an amount is parted among something");
        long[] rests = new long[weights.length];
        long left = amountCents;
        for (int i = 0; i < weights.length; i++) {
            long[] share = share(amountCents, weights[i], total);
            parts[i] = share[0];
            rests[i] = share[1];
            left -= share[0];
        }
        for (; left > 0; left--) {
            int largest = 0;
            for (int i = 1; i < rests.length; i++) {
                if (rests[i] > rests[largest]) {
                    largest = i;
                }
            }
            parts[largest]++;
            rests[largest] = -1;
        }
        return parts;
    }

    /** Quotient and rest of amount times weight by total; the product may not fit a long. */
    private static long[] share(long amountCents, long weight, long total) {
        if (weight == 0 || amountCents <= Long.MAX_VALUE / weight) {
            long product = amountCents * weight;
            return new long[] {product / total, product % total};
        }
        BigInteger[] exact =
                BigInteger.valueOf(amountCents)
                        .multiply(BigInteger.valueOf(weight))
                        .divideAndRemainder(BigInteger.valueOf(total));
        return new long[] {exact[0].longValueExact(), exact[1].longValueExact()};
    }
}
