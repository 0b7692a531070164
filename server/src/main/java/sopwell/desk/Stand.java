package sopwell.desk;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.Check;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.WaitQuote;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.menu.MenuEvent;
import sopwell.orders.Deciding;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.orders.Orders;
import sopwell.orders.Sold;
import sopwell.orders.StandSettings;

/**
 * Everything that is known of the stand's open day. Built by {@link #apply} alone, so that the same
 * events always give the same stand. Not thread-safe: its owner is one thread.
 */
public final class Stand {
    private final StandSettings settings;
    private final Orders orders = new Orders();
    private final Map<String, Menu> menus = new HashMap<>();
    private final Kitchen kitchen = new Kitchen(this::menuOf);
    private Menu menu;
    private Sold sold;
    private long seq;
    private long atMs;

    /** A stand of which nothing is known yet. */
    public Stand(StandSettings settings) {
        this.settings = settings;
    }

    /** Takes in what happened; never refuses. */
    public void apply(Recorded recorded) {
        Event event = recorded.event();
        if (event instanceof OrderEvent orderEvent) {
            orders.apply(orderEvent, recorded.atMs());
            Optional<Order> order = orderEvent.about().flatMap(orders::find);
            kitchen.apply(orderEvent, order, recorded.atMs());
        } else if (event instanceof KitchenEvent kitchenEvent) {
            kitchen.apply(kitchenEvent, recorded.atMs());
        } else if (event instanceof QueryEvent queryEvent) {
            kitchen.apply(queryEvent, recorded.atMs());
        } else if (event instanceof MenuEvent.MenuAdopted adopted) {
            menu = adopted.menu();
            menus.put(menu.revision(), menu);
            sold = new Sold(menu);
        } else {
            throw new IllegalStateException("an event of no family: " + event.getClass());
        }
        seq = recorded.seq();
        atMs = recorded.atMs();
    }

    public StandSettings settings() {
        return settings;
    }

    public Orders orders() {
        return orders;
    }

    public Kitchen kitchen() {
        return kitchen;
    }

    /** Whether a menu was ever adopted; without one nothing can be sold. */
    public boolean hasMenu() {
        return menu != null;
    }

    /** The menu in force. */
    public Menu menu() {
        Check.that(menu != null, "a stand that sells has a menu");
        return menu;
    }

    /** The menu of a revision that an order of the day names. */
    public Menu menuOf(String revision) {
        Menu found = menus.get(revision);
        Check.that(found != null, "the day's orders name menus that were adopted");
        return found;
    }

    /** The place of the last event taken in. */
    public long seq() {
        return seq;
    }

    /** When the last event was decided, milliseconds since 1970-01-01 UTC. */
    public long atMs() {
        return atMs;
    }

    Deciding deciding(long nowMs) {
        return new Deciding(
                settings, menu(), nowMs, sold, lines -> WaitQuote.quote(kitchen, menu(), lines));
    }
}
