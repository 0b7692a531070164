package sopwell.till;

import java.time.LocalDate;
import java.util.List;
import sopwell.money.Discount;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * What a day came to in money. Immutable.
 *
 * <p>It adds up: what the orders cost, less goodwill, is what was settled less what was given back,
 * plus what is unpaid, less what is due back; and what is settled at the tills and apart is what is
 * settled in all.
 *
 * @param takings everything that was paid and given back
 * @param apart what of it was at no open till
 * @param unpaid what is still due on the day's orders
 * @param dueBack what is still to be given back on them
 * @param goodwillCents what the orders cost less because of goodwill
 * @param reopenings when and why the day went on after it was closed, oldest first
 */
public record DayReport(
        LocalDate date,
        Sales sales,
        Takings takings,
        Takings apart,
        List<Drawer> drawers,
        List<Move> moves,
        Owed unpaid,
        Owed dueBack,
        long goodwillCents,
        List<Orders.Reopening> reopenings) {
    public DayReport {
        reopenings = List.copyOf(reopenings);
        drawers = List.copyOf(drawers);
        moves = List.copyOf(moves);
    }

    /**
     * What was sold, void orders left out. All in cents but the counts. Immutable.
     *
     * @param subtotalCents at the menu's prices
     * @param discountCents taken off for guests
     * @param staffMealCents taken off for the stand's own people
     * @param netCents what was earned: without discounts and without tax
     * @param taxCents sales tax
     * @param totalCents net and tax
     */
    public record Sales(
            int orders,
            int voids,
            long subtotalCents,
            long discountCents,
            long staffMealCents,
            long netCents,
            long taxCents,
            long totalCents) {}

    /** So much on so many orders. */
    public record Owed(int orders, long cents) {
        Owed with(long more) {
            return new Owed(orders + 1, cents + more);
        }
    }

    /** The report on the newest day; there must have been one. */
    public static DayReport of(Orders orders, Till till) {
        Owed unpaid = new Owed(0, 0);
        Owed dueBack = new Owed(0, 0);
        Takings all = till.apart();
        long goodwillCents = 0;
        for (Drawer drawer : till.drawers()) {
            all = all.plus(drawer.takings());
        }
        for (Order order : orders.all()) {
            long dueCents = till.dueCents(order);
            unpaid = dueCents > 0 ? unpaid.with(dueCents) : unpaid;
            dueBack = dueCents < 0 ? dueBack.with(-dueCents) : dueBack;
            if (!order.isVoid()) {
                goodwillCents += order.totals().totalCents() - till.costCents(order);
            }
        }
        return new DayReport(
                orders.date().orElseThrow(),
                sales(orders),
                all,
                till.apart(),
                till.drawers(),
                till.moves(),
                unpaid,
                dueBack,
                goodwillCents,
                orders.reopenings());
    }

    private static Sales sales(Orders orders) {
        int sold = 0;
        int voids = 0;
        long subtotal = 0;
        long off = 0;
        long staff = 0;
        long tax = 0;
        long total = 0;
        for (Order order : orders.all()) {
            if (order.isVoid()) {
                voids++;
                continue;
            }
            sold++;
            subtotal += order.totals().subtotalCents();
            if (order.discount().kind() == Discount.Kind.STAFF_MEAL) {
                staff += order.totals().discountCents();
            } else {
                off += order.totals().discountCents();
            }
            tax += order.totals().taxCents();
            total += order.totals().totalCents();
        }
        return new Sales(sold, voids, subtotal, off, staff, total - tax, tax, total);
    }
}
