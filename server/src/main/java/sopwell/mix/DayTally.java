package sopwell.mix;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;

/**
 * What one business day sold, counted by half hours: all that the mix of a day, a part of it, or
 * any number of days is made from. Immutable.
 *
 * @param halfHours those in which anything was ordered, in their order
 */
public record DayTally(LocalDate date, List<HalfHour> halfHours) {
    public DayTally {
        halfHours = List.copyOf(halfHours);
    }

    /**
     * What was ordered in one half hour.
     *
     * @param index see {@link HalfHours}
     */
    public record HalfHour(int index, Counts counts, List<Sold> sold) {
        public HalfHour {
            sold = List.copyOf(sold);
        }
    }

    /**
     * Orders counted.
     *
     * @param orders those that count, handed or not; staff meals are not among them
     * @param voids cancelled, not among the orders
     * @param staffOrders meals of the stand's own people, not among the orders
     * @param takenBefore orders taken while the stand could not be asked
     * @param toldPrices orders at the prices of an earlier menu, as their guests were told
     * @param subtotalCents sales before tax and before what was taken off, of the orders
     */
    public record Counts(
            int orders,
            int voids,
            int staffOrders,
            int takenBefore,
            int toldPrices,
            long subtotalCents) {
        /** No orders. */
        public static final Counts NONE = new Counts(0, 0, 0, 0, 0, 0);

        /** Both counted together. */
        public Counts plus(Counts more) {
            return new Counts(
                    orders + more.orders,
                    voids + more.voids,
                    staffOrders + more.staffOrders,
                    takenBefore + more.takenBefore,
                    toldPrices + more.toldPrices,
                    Math.addExact(subtotalCents, more.subtotalCents));
        }

        private static Counts of(Order order) {
            if (order.isVoid()) {
                return new Counts(0, 1, 0, 0, 0, 0);
            }
            if (order.isStaffMeal()) {
                return new Counts(0, 0, 1, 0, 0, 0);
            }
            return new Counts(
                    1,
                    0,
                    0,
                    order.isTakenBefore() ? 1 : 0,
                    order.isAtToldPrice() ? 1 : 0,
                    order.totals().subtotalCents());
        }
    }

    /**
     * Pieces made alike.
     *
     * @param size the size's id, or empty
     * @param ways see {@link Ways}
     * @param staff whether they were a meal of the stand's own people
     * @param cents what they cost by the menu, before tax and before what was taken off
     */
    public record Sold(
            String item, String size, List<String> ways, boolean staff, int pieces, long cents) {
        public Sold {
            ways = List.copyOf(ways);
        }

        private Sold plus(Sold more) {
            return new Sold(
                    item,
                    size,
                    ways,
                    staff,
                    pieces + more.pieces,
                    Math.addExact(cents, more.cents));
        }

        private Sold kind() {
            return new Sold(item, size, ways, staff, 0, 0);
        }
    }

    /** The orders of a period's half hours. */
    public Counts counts(Period period) {
        Counts counts = Counts.NONE;
        for (HalfHour half : halfHours) {
            if (period.holds(date, half.index())) {
                counts = counts.plus(half.counts());
            }
        }
        return counts;
    }

    /** The pieces that guests bought in a period's half hours. */
    public int pieces(Period period) {
        int pieces = 0;
        for (HalfHour half : halfHours) {
            if (period.holds(date, half.index())) {
                for (Sold some : half.sold()) {
                    pieces += some.staff() ? 0 : some.pieces();
                }
            }
        }
        return pieces;
    }

    /**
     * Counts a day's orders, each at the time it was taken.
     *
     * @param menus the menu of a revision that an order of the day names
     */
    public static DayTally of(
            LocalDate date, Orders orders, ZoneId zone, Function<String, Menu> menus) {
        Map<Integer, Counts> counts = new TreeMap<>();
        Map<Integer, Map<Sold, Sold>> sold = new TreeMap<>();
        for (Order order : orders.all()) {
            int index = HalfHours.of(date, zone, order.takenAtMs());
            counts.merge(index, Counts.of(order), Counts::plus);
            Map<Sold, Sold> here = sold.computeIfAbsent(index, i -> new LinkedHashMap<>());
            if (!order.isVoid()) {
                Menu menu = menus.apply(order.menuRevision());
                for (OrderLine line : order.lines()) {
                    Sold pieces = sold(menu, line, order.isStaffMeal());
                    here.merge(pieces.kind(), pieces, Sold::plus);
                }
            }
        }
        List<HalfHour> halfHours = new ArrayList<>();
        counts.forEach(
                (index, some) ->
                        halfHours.add(
                                new HalfHour(index, some, List.copyOf(sold.get(index).values()))));
        return new DayTally(date, halfHours);
    }

    private static Sold sold(Menu menu, OrderLine line, boolean staff) {
        return new Sold(
                line.selection().item(),
                line.selection().size(),
                Ways.of(menu, line.selection()),
                staff,
                line.quantity(),
                line.cents());
    }
}
