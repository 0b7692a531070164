package sopwell.web.pages;

import java.util.stream.Collectors;
import sopwell.boards.CounterRow;
import sopwell.menu.Menu;
import sopwell.orders.OrderLine;
import sopwell.web.T;

/**
 * The open orders at the counter in one language. Immutable.
 *
 * @param menu the menu in force, for names; an item that it no longer has keeps its id
 */
public record CounterView(T t, Menu menu) {
    /** What stations ask, in words. */
    public QueryView queries() {
        return new QueryView(t);
    }

    /** What an order has on it, short. */
    public String summary(CounterRow row) {
        return row.lines().stream().map(this::line).collect(Collectors.joining(", "));
    }

    private String line(OrderLine line) {
        String id = line.selection().item();
        String name = menu.hasItem(id) ? t.local(menu.item(id).name()) : id;
        return line.quantity() == 1 ? name : line.quantity() + " " + name;
    }
}
