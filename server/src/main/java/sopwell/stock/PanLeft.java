package sopwell.stock;

import java.util.List;
import java.util.Optional;
import sopwell.menu.Pan;
import sopwell.stock.Pans.Sale;

/**
 * What is left in one pan, and when the next batch must be put on to reheat. Immutable.
 *
 * <p>The pace is that of the last 45 minutes of sales, or of the time since the day's first order
 * if that is shorter, but not of less than 10 minutes. No order counts for more than three times
 * the median order, so that one large order does not call for a batch that nobody eats. What is
 * ordered and not made yet is taken off first.
 *
 * @param refilledAtMs when it was refilled last today, milliseconds since 1970-01-01 UTC; 0 if
 *     never: then nothing is known of it, and the rest is 0
 * @param left what is in it, in its unit
 * @param promised what the open orders still take
 * @param builds for how many more pieces it lasts after those, at what a piece took of late
 * @param startByMs when the next batch must be put on to reheat; 0 when the pace tells nothing
 */
public record PanLeft(
        Pan pan, long refilledAtMs, long left, long promised, int builds, long startByMs) {
    /**
     * What is left in a pan.
     *
     * @param promised what open orders still take, in its unit
     */
    public static PanLeft of(Pan pan, Pans pans, long promised, long nowMs) {
        Optional<Long> left = pans.left(pan.id());
        if (left.isEmpty()) {
            return new PanLeft(pan, 0, 0, promised, 0, 0);
        }
        List<Sale> sales = pans.salesSince(pan.id(), nowMs - Pans.WINDOW_MS);
        long free = Math.max(0, left.get() - promised);
        return new PanLeft(
                pan,
                pans.refilledAtMs(pan.id()).orElse(0L),
                left.get(),
                promised,
                (int) (free / each(pan, sales)),
                sales.isEmpty() ? 0 : startByMs(pan, free, pace(sales, pans, nowMs), nowMs));
    }

    /** The same with another time to put the next batch on. */
    public PanLeft startingBy(long otherMs) {
        return new PanLeft(pan, refilledAtMs, left, promised, builds, otherMs);
    }

    /** Whether anybody said today how full it is. */
    public boolean isKnown() {
        return refilledAtMs != 0;
    }

    /** Whether the next batch must be put on by now. */
    public boolean isDue(long nowMs) {
        return isKnown() && (startByMs != 0 ? startByMs <= nowMs : builds == 0);
    }

    /** What a piece takes: on average of late; before any sale, the most that an item takes. */
    private static long each(Pan pan, List<Sale> sales) {
        long amount = sales.stream().mapToLong(Sale::amount).sum();
        int pieces = sales.stream().mapToInt(Sale::pieces).sum();
        if (pieces > 0) {
            return Math.max(1, amount / pieces);
        }
        return pan.uses().stream().mapToInt(Pan.Use::amount).reduce(1, Math::max);
    }

    private static SalePace pace(List<Sale> sales, Pans pans, long nowMs) {
        return SalePace.of(sales.stream().map(Sale::amount).toList(), nowMs - pans.firstSaleAtMs());
    }

    private static long startByMs(Pan pan, long free, SalePace pace, long nowMs) {
        long lastsMs = pace.lastsMs(free);
        return Math.max(1, nowMs + lastsMs - pan.reheatMinutes() * 60_000L);
    }
}
