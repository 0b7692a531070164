package sopwell.stock;

import java.util.List;

/**
 * How much sales take in how long. Immutable.
 *
 * <p>No order counts for more than three times the median order, so that one large order does not
 * raise an alarm; and the time is not less than ten minutes.
 *
 * @param amount what is taken, in any unit, above 0
 * @param inMs in how many milliseconds
 */
public record SalePace(long amount, long inMs) {
    /** How far back sales tell the pace, in milliseconds. */
    public static final long WINDOW_MS = 45 * 60_000L;

    private static final long LEAST_MS = 10 * 60_000L;
    private static final int MEDIANS_MAX = 3;

    /**
     * The pace of some sales.
     *
     * @param amounts what each order took, at least one
     * @param sinceMs for how long there have been sales, at most the window is looked at
     */
    public static SalePace of(List<Long> amounts, long sinceMs) {
        List<Long> sorted = amounts.stream().sorted().toList();
        long most = MEDIANS_MAX * sorted.get((sorted.size() - 1) / 2);
        long amount = sorted.stream().mapToLong(one -> Math.min(one, most)).sum();
        return new SalePace(amount, Math.max(LEAST_MS, Math.min(WINDOW_MS, sinceMs)));
    }

    /** How long an amount lasts at this pace, in milliseconds. */
    public long lastsMs(long left) {
        return left / amount * inMs + left % amount * inMs / amount;
    }
}
