package sopwell.boards;

import java.util.List;
import sopwell.kitchen.OrderStage;
import sopwell.orders.OrderLine;

/**
 * One open order as the counter sees it. Immutable.
 *
 * @param order the order's id
 * @param version what an edit must name
 * @param dueCents what is due on it; negative when money is due back
 * @param menuRevision the menu that the lines' words come from
 * @param placedAtMs since when its guest waits, milliseconds since 1970-01-01 UTC
 * @param atToldPrice whether its prices are those of an earlier menu, as its guest was told
 */
public record CounterRow(
        String order,
        int number,
        String name,
        boolean toGo,
        int version,
        OrderStage stage,
        List<OrderLine> lines,
        long totalCents,
        long dueCents,
        String menuRevision,
        long placedAtMs,
        boolean atToldPrice)
        implements Row {
    public CounterRow {
        lines = List.copyOf(lines);
    }

    @Override
    public String rowId() {
        return order;
    }
}
