package sopwell.web.pages;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import sopwell.Limits;
import sopwell.call.ReadBack;
import sopwell.desk.Stand;
import sopwell.kitchen.Part;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.web.T;

/**
 * The orders of the newest day, newest first. Immutable.
 *
 * @param more how many more there are than are shown
 */
public record DayOrders(List<Row> rows, int more) {
    public DayOrders {
        rows = List.copyOf(rows);
    }

    /**
     * One order.
     *
     * @param state how far it is, in words
     * @param open whether it can still be changed
     * @param stations the stations that have work with it, whose tickets can be printed
     */
    public record Row(
            Order order,
            String time,
            String words,
            String state,
            boolean open,
            List<Station> stations) {
        public Row {
            stations = List.copyOf(stations);
        }
    }

    /**
     * Those that a search finds.
     *
     * @param find a number or the beginning of a name; empty for all
     */
    static DayOrders of(Stand stand, String find, T t) {
        List<Order> all = new ArrayList<>(stand.orders().all());
        Collections.reverse(all);
        List<Order> found = all.stream().filter(order -> fits(order, find)).toList();
        List<Row> rows =
                found.stream()
                        .limit(Limits.DAY_ORDERS_SHOWN_MAX)
                        .map(order -> row(stand, order, t))
                        .toList();
        return new DayOrders(rows, found.size() - rows.size());
    }

    private static boolean fits(Order order, String find) {
        String wanted = find.strip().toLowerCase(Locale.ROOT);
        return wanted.isEmpty()
                || String.valueOf(order.number()).equals(wanted)
                || order.name().toLowerCase(Locale.ROOT).startsWith(wanted);
    }

    private static Row row(Stand stand, Order order, T t) {
        Menu menu = stand.menuOf(order.menuRevision());
        List<String> words = new ArrayList<>();
        for (OrderLine line : order.lines()) {
            words.add(ReadBack.say(menu, t.lang(), line.quantity(), line.selection()));
        }
        List<String> ids =
                stand.kitchen().parts(order.id()).stream()
                        .map(Part::id)
                        .map(id -> id.station())
                        .distinct()
                        .toList();
        return new Row(
                order,
                t.time(order.placedAtMs(), stand.settings().zone()),
                String.join(" · ", words),
                t.under("stage", stand.kitchen().stage(order).name()),
                order.isOpen() && stand.orders().isDayOpen(),
                menu.stations().stream().filter(s -> ids.contains(s.id())).toList());
    }
}
