package sopwell.prep.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * When to order known requirements at least cost, where each order costs something and so does what
 * is kept (Wagner and Whitin 1958). Immutable.
 *
 * @param orders by period
 * @param cost of orders and of keeping, exact
 */
public record LotSizes(List<Long> orders, BigDecimal cost) {
    /**
     * The orders that cost least.
     *
     * @param setup what one order costs
     * @param keep what one unit costs from one period to the next
     */
    public static LotSizes of(List<Long> needs, BigDecimal setup, BigDecimal keep) {
        int count = needs.size();
        BigDecimal[] best = new BigDecimal[count + 1];
        int[] next = new int[count + 1];
        best[count] = BigDecimal.ZERO;
        for (int t = count - 1; t >= 0; t--) {
            BigDecimal kept = BigDecimal.ZERO;
            for (int to = t + 1; to <= count; to++) {
                BigDecimal units = BigDecimal.valueOf(needs.get(to - 1) * (to - 1L - t));
                kept = kept.add(units.multiply(keep));
                BigDecimal all = setup.add(kept).add(best[to]);
                if (to == t + 1 || all.compareTo(best[t]) < 0) {
                    best[t] = all;
                    next[t] = to;
                }
            }
        }
        long[] orders = new long[count];
        for (int t = 0; t < count; t = next[t]) {
            for (int of = t; of < next[t]; of++) {
                orders[t] += needs.get(of);
            }
        }
        return new LotSizes(Arrays.stream(orders).boxed().toList(), best[0]);
    }
}
