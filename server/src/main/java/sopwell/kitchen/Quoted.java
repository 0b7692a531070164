package sopwell.kitchen;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import sopwell.orders.Order;
import sopwell.orders.Quote;

/**
 * What the stand's own quotes have taught it. Not thread-safe: its owner is one thread.
 *
 * <p>A range is the expected wait, less one margin and plus another. After each order that is
 * handed the margins move: the lower one out by nine tenths of a step when the order came sooner
 * than it was told and in by one tenth when not, and so the upper one when it came later. They
 * stand still when one order in ten comes sooner and one in ten later, whatever the errors look
 * like, and drift with them when they change. (Adaptive conformal inference, Gibbs and Candès 2021,
 * for each end by itself.)
 */
public final class Quoted {
    /** Of ten orders one may come sooner than told, and one later. */
    private static final double OUTSIDE = 0.1;

    private static final double STEP = 0.06;
    private static final double FIRST_STEP = 0.3;
    private static final int RECENT_ORDERS = 60;
    private static final double MARGIN_MIN = -2;
    private static final double MARGIN_MAX = 8;
    private static final long LAG_SURPRISE_MS_MAX = 30_000;
    private static final long PRIOR_LAG_MS = 25_000;
    private static final double PRIOR_MARGIN = 1.2;

    /** What is uncertain about an order that takes no time at all, and what of one that does. */
    private static final double UNIT_BASE_MS = 25_000;

    private static final double UNIT_SHARE = 0.16;

    private final Set<String> counted = new HashSet<>();
    private LocalDate date;
    private int orders;
    private double lagMs = PRIOR_LAG_MS;
    private double below = PRIOR_MARGIN;
    private double above = PRIOR_MARGIN;
    private int handed;
    private int within;

    /** The range to tell for an order that is expected to be whole after so long. */
    Quote range(long wholeMs) {
        double waitMs = wholeMs + lagMs;
        double unitMs = UNIT_BASE_MS + UNIT_SHARE * waitMs;
        long from = minutes(waitMs - below * unitMs);
        long to = minutes(waitMs + above * unitMs);
        from = Math.max(0, from);
        return new Quote(Math.toIntExact(from * 60), Math.toIntExact(Math.max(from + 1, to) * 60));
    }

    /** Orders of the newest day that were handed as they were placed. */
    public int handed() {
        return handed;
    }

    /** How many of those were handed within what their guests were told. */
    public int within() {
        return within;
    }

    /** An order is handed that was whole since then; an edited one teaches nothing. */
    void handed(Order order, long wholeAtMs) {
        if (order.version() > 1 || order.isTakenBefore() || !counted.add(order.id())) {
            return;
        }
        orders++;
        double share = 1.0 / Math.min(orders + 5, RECENT_ORDERS);
        double surprise = order.handedAtMs() - wholeAtMs - lagMs;
        lagMs += share * Math.max(-LAG_SURPRISE_MS_MAX, Math.min(LAG_SURPRISE_MS_MAX, surprise));
        long waitSeconds = (order.handedAtMs() - order.placedAtMs()) / 1000;
        boolean sooner = waitSeconds < order.quote().fromSeconds();
        boolean later = waitSeconds > order.quote().toSeconds();
        double step = Math.max(STEP, FIRST_STEP / Math.sqrt(orders));
        below = moved(below, step, sooner);
        above = moved(above, step, later);
        handed++;
        within += sooner || later ? 0 : 1;
    }

    private static double moved(double margin, double step, boolean missed) {
        double to = margin + step * (missed ? 1 - OUTSIDE : -OUTSIDE);
        return Math.max(MARGIN_MIN, Math.min(MARGIN_MAX, to));
    }

    private static long minutes(double ms) {
        return Math.round(ms / 60_000);
    }

    PaceEvent.Quoting carried() {
        return new PaceEvent.Quoting(
                Math.min(orders, RECENT_ORDERS),
                Math.round(lagMs),
                Math.round(below * 1e6),
                Math.round(above * 1e6));
    }

    void restore(PaceEvent.Quoting quoting) {
        orders = quoting.orders();
        lagMs = quoting.lagMs();
        below = quoting.belowMillionths() / 1e6;
        above = quoting.aboveMillionths() / 1e6;
    }

    void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            counted.clear();
            handed = 0;
            within = 0;
        }
        date = opened;
    }
}
