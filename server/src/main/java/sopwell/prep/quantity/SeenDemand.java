package sopwell.prep.quantity;

import java.util.List;
import sopwell.Check;

/** A demand that was seen: amounts, and how often each. Ties are decided exactly. Immutable. */
public final class SeenDemand implements Demand {
    private final List<Seen> seen;
    private final long times;
    private final double mean;
    private final double variance;

    /**
     * One amount. Immutable.
     *
     * @param times how often it was asked for, above 0
     */
    public record Seen(long amount, long times) {}

    /**
     * From what was seen.
     *
     * @param seen with rising amounts, at least one
     */
    public SeenDemand(List<Seen> seen) {
        this.seen = List.copyOf(seen);
        this.times = seen.stream().mapToLong(Seen::times).sum();
        Check.that(times > 0, "something was seen");
        double sum = 0;
        double squares = 0;
        for (Seen one : seen) {
            sum += (double) one.amount() * one.times();
            squares += (double) one.amount() * one.amount() * one.times();
        }
        this.mean = sum / times;
        this.variance = squares / times - mean * mean;
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
        long upTo = seen.stream().filter(s -> s.amount() <= amount).mapToLong(Seen::times).sum();
        return (double) upTo / times;
    }

    @Override
    public double missing(double amount) {
        return seen.stream().mapToDouble(s -> s.times() * Math.max(0, s.amount() - amount)).sum()
                / times;
    }

    @Override
    public double quantile(double probability) {
        long upTo = 0;
        for (Seen one : seen) {
            upTo += one.times();
            if (upTo >= probability * times) {
                return one.amount();
            }
        }
        return seen.get(seen.size() - 1).amount();
    }

    @Override
    public double enough(Stakes stakes) {
        long upTo = 0;
        for (Seen one : seen) {
            upTo += one.times();
            if (stakes.isReachedBy(upTo, times)) {
                return one.amount();
            }
        }
        return seen.get(seen.size() - 1).amount();
    }
}
