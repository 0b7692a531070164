package sopwell.boards;

import java.util.List;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.call.ReadBack;
import sopwell.kitchen.Answers;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Query;
import sopwell.menu.Lang;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.orders.Order;
import sopwell.orders.OrderLine;
import sopwell.orders.Orders;

/** Draws up the questions that wait for the counter. Stateless. */
final class CounterQueries {
    private CounterQueries() {}

    /** The open queries, oldest first. */
    static List<CounterQuery> of(Orders orders, Kitchen kitchen, Function<String, Menu> menus) {
        return kitchen.queries().open().stream()
                .limit(Limits.COUNTER_QUERIES_MAX)
                .map(query -> of(query, orders, menus))
                .toList();
    }

    private static CounterQuery of(Query query, Orders orders, Function<String, Menu> menus) {
        Order order = orders.find(query.id().part().order()).orElseThrow();
        Menu menu = menus.apply(order.menuRevision());
        OrderLine line =
                order.lines().stream()
                        .filter(one -> one.line() == query.id().part().line())
                        .findFirst()
                        .orElseThrow();
        return new CounterQuery(
                RowQuery.of(query, menu),
                order.number(),
                order.name(),
                menu.station(query.id().part().station()).name(),
                words(menu, line.quantity(), line.selection()),
                line.quantity(),
                Answers.of(menu, query, line));
    }

    private static LocalText words(Menu menu, int quantity, Selection selection) {
        return new LocalText(
                ReadBack.say(menu, Lang.EN, quantity, selection),
                ReadBack.say(menu, Lang.ES, quantity, selection));
    }
}
