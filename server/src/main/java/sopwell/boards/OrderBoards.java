package sopwell.boards;

import java.util.List;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.kitchen.Kitchen;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.Orders;
import sopwell.orders.Outs;
import sopwell.till.Till;

/** Draws up the board of open orders at the counter. Stateless. */
public final class OrderBoards {
    private OrderBoards() {}

    /** The counter: open orders, newest first, what is out, and what stations ask. */
    public static CounterBoard counter(
            Orders orders, Till till, Kitchen kitchen, Outs outs, Function<String, Menu> menus) {
        List<CounterRow> rows =
                orders.openNewestFirst().stream()
                        .limit(Limits.BOARD_ROWS_MAX)
                        .map(order -> counterRow(order, till.dueCents(order), kitchen))
                        .toList();
        return new CounterBoard(
                rows,
                orders.openCount() - rows.size(),
                outs.all(),
                CounterQueries.of(orders, kitchen, menus));
    }

    private static CounterRow counterRow(Order order, long dueCents, Kitchen kitchen) {
        return new CounterRow(
                order.id(),
                order.number(),
                order.name(),
                order.toGo(),
                order.version(),
                kitchen.stage(order),
                order.lines(),
                order.totals().totalCents(),
                dueCents,
                order.menuRevision(),
                order.takenAtMs(),
                order.isAtToldPrice());
    }
}
