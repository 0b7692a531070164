package sopwell.kitchen;

import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;

/**
 * What is to be made. Immutable.
 *
 * @param quantity how many alike, 1 to 99
 * @param toGo whether it leaves the stand
 * @param menuRevision the menu that its words come from
 */
public record Making(Selection selection, int quantity, boolean toGo, String menuRevision) {
    /** Whether a piece of both is made the same way. */
    public boolean isLike(Making other) {
        return of(1).equals(other.of(1));
    }

    /** So many made the same way. */
    public Making of(int pieces) {
        return new Making(selection, pieces, toGo, menuRevision);
    }

    /** What an order asks of each station, line by line. */
    static Map<PartId, Making> of(Order order, Menu menu) {
        Map<PartId, Making> wanted = new LinkedHashMap<>();
        for (OrderLine line : order.lines()) {
            Making making =
                    new Making(
                            line.selection(), line.quantity(), order.toGo(), order.menuRevision());
            for (String station : Router.stations(menu, line.selection())) {
                wanted.put(new PartId(order.id(), line.line(), station), making);
            }
        }
        return wanted;
    }
}
