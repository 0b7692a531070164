package sopwell.mix;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import sopwell.Check;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * How long the guests of one business day waited, order by order and part by part: all that the
 * waits of a day, a part of it, or any number of days are made from, with percentiles as exact as
 * those of one day. Void orders and what was taken off an order are not in it. Immutable.
 *
 * <p>Waits are whole seconds from the same beginning; a second that has begun counts. What did not
 * happen, or of which nobody said when, is {@link #UNKNOWN} and never guessed.
 *
 * @param orders in the order in which they were placed
 */
public record WaitTally(LocalDate date, List<OrderWait> orders) {
    /** Stands for a wait that has no end, or none that anybody told. */
    public static final int UNKNOWN = -1;

    private static final long SECOND_MS = 1_000;

    public WaitTally {
        orders = List.copyOf(orders);
    }

    /** Whether an order came within the range that its guest was told. */
    public enum Quoted {
        /** It was not handed, or it was edited or taken before, so that the range says nothing. */
        UNJUDGED,
        /** It was handed sooner. */
        SOONER,
        /** It was handed within the range. */
        WITHIN,
        /** It was handed later. */
        LATER
    }

    /**
     * One order's waits, in seconds since its guest waits.
     *
     * @param halfHour that of the call, see {@link HalfHours}
     * @param staff whether it is a meal of the stand's own people
     * @param toStarted until work on its first part began; unknown too when a part went up before
     *     that of which nobody said when it was begun
     * @param toUp until its last part was up, when all of them are
     * @param toHanded until it was handed
     */
    public record OrderWait(
            int halfHour,
            boolean staff,
            Quoted quoted,
            int toStarted,
            int toUp,
            int toHanded,
            List<PartWait> parts) {
        public OrderWait {
            check(toStarted, toUp, toHanded);
            parts = List.copyOf(parts);
        }

        /** From up to handed: waiting on the pass; unknown unless both are known. */
        public int upToHanded() {
            return between(toUp, toHanded);
        }
    }

    /**
     * One part's waits, in seconds since its guest waits for it, which is later than for the order
     * when it was ordered later.
     *
     * @param pieces how many alike it is
     * @param toStarted until somebody first said that work began; unknown when nobody did
     * @param toUp until it was up for good: what was made again counts until it was made again
     * @param toHanded until its order was handed
     */
    public record PartWait(
            String station, String item, int pieces, int toStarted, int toUp, int toHanded) {
        public PartWait {
            check(toStarted, toUp, toHanded);
        }

        /** From started to up: being made; unknown unless both are known. */
        public int startedToUp() {
            return between(toStarted, toUp);
        }

        /** From up to handed: waiting on the pass; unknown unless both are known. */
        public int upToHanded() {
            return between(toUp, toHanded);
        }
    }

    /** The waits of a stand's newest day as they are now. */
    public static WaitTally of(LocalDate date, Orders orders, Kitchen kitchen, ZoneId zone) {
        List<OrderWait> waits = new ArrayList<>();
        for (Order order : orders.all()) {
            if (!order.isVoid()) {
                int halfHour = HalfHours.of(date, zone, order.takenAtMs());
                waits.add(wait(order, halfHour, List.copyOf(kitchen.parts(order.id()))));
            }
        }
        return new WaitTally(date, waits);
    }

    static OrderWait wait(Order order, int halfHour, List<Part> parts) {
        List<PartWait> waits =
                parts.stream().filter(p -> !p.cancelled()).map(p -> wait(order, p)).toList();
        boolean whole = !parts.isEmpty() && parts.stream().allMatch(Part::isDone);
        long since = order.takenAtMs();
        long upAtMs = parts.stream().mapToLong(Part::upAtMs).max().orElse(0);
        int toStarted = seconds(since, firstBegunAtMs(parts));
        int toUp = notBefore(toStarted, whole ? seconds(since, upAtMs) : UNKNOWN);
        int toHanded = seconds(since, order.handedAtMs());
        return new OrderWait(
                halfHour,
                order.isStaffMeal(),
                quoted(order),
                toStarted,
                toUp,
                notBefore(Math.max(toStarted, toUp), toHanded),
                waits);
    }

    private static PartWait wait(Order order, Part part) {
        long since = part.placedAtMs();
        int toStarted = seconds(since, part.tappedAtMs());
        int toUp = notBefore(toStarted, seconds(since, part.upAtMs()));
        int toHanded = seconds(since, order.handedAtMs());
        return new PartWait(
                part.id().station(),
                part.making().selection().item(),
                part.making().quantity(),
                toStarted,
                toUp,
                notBefore(Math.max(toStarted, toUp), toHanded));
    }

    /** When the first part was begun, or 0 when that is not known. */
    private static long firstBegunAtMs(List<Part> parts) {
        long begun = Long.MAX_VALUE;
        long unannounced = Long.MAX_VALUE;
        for (Part part : parts) {
            if (part.tappedAtMs() != 0) {
                begun = Math.min(begun, part.tappedAtMs());
            } else if (part.upAtMs() != 0) {
                unannounced = Math.min(unannounced, part.upAtMs());
            }
        }
        return begun <= unannounced && begun != Long.MAX_VALUE ? begun : 0;
    }

    /** The same orders as those that the stand's own quotes learn from. */
    private static Quoted quoted(Order order) {
        if (!order.isHanded() || order.version() > 1 || order.isTakenBefore()) {
            return Quoted.UNJUDGED;
        }
        long waited = (order.handedAtMs() - order.placedAtMs()) / SECOND_MS;
        if (waited < order.quote().fromSeconds()) {
            return Quoted.SOONER;
        }
        return waited > order.quote().toSeconds() ? Quoted.LATER : Quoted.WITHIN;
    }

    /** Never negative, whatever a clock did that was away from the stand. */
    private static int seconds(long sinceMs, long untilMs) {
        if (untilMs == 0) {
            return UNKNOWN;
        }
        return Math.toIntExact((Math.max(0, untilMs - sinceMs) + SECOND_MS - 1) / SECOND_MS);
    }

    private static int notBefore(int earlier, int later) {
        return later == UNKNOWN ? UNKNOWN : Math.max(earlier, later);
    }

    private static int between(int earlier, int later) {
        return earlier == UNKNOWN || later == UNKNOWN ? UNKNOWN : later - earlier;
    }

    private static void check(int toStarted, int toUp, int toHanded) {
        int least = UNKNOWN;
        for (int wait : new int[] {toStarted, toUp, toHanded}) {
            Check.that(wait == UNKNOWN || wait >= Math.max(0, least), "waits follow one another");
            least = Math.max(least, wait);
        }
    }
}
