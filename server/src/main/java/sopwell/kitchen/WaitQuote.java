package sopwell.kitchen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;
import sopwell.orders.Quote;

/**
 * The wait to tell a guest, as a range in whole minutes: when the order would be whole if it came
 * behind everything that is open, how long a whole order stays on the pass, and how far off such
 * quotes were of late ({@link Quoted}). Stateless.
 */
public final class WaitQuote {
    /** What an order that is not placed is called. */
    private static final String NEW = "new";

    private WaitQuote() {}

    /**
     * The wait that a guest is told who orders one of the house's own thing, the first on the menu,
     * when the kitchen last changed; empty when a station has no part in that, or the menu asks for
     * choices to be made.
     */
    public static Optional<Quote> now(Kitchen kitchen, Menu menu, String station) {
        Wish wish = new Wish(menu.items().get(0).id(), "", List.of(), List.of(), List.of());
        if (Wishes.fault(menu, wish).isPresent()) {
            return Optional.empty();
        }
        Selection house = Wishes.select(menu, wish);
        return Router.stations(menu, house).contains(station)
                ? Optional.of(
                        quote(
                                kitchen,
                                menu,
                                List.of(OrderLine.priced(menu, 1, new Asked(1, house))),
                                kitchen.atMs()))
                : Optional.empty();
    }

    /** The wait for an order of these lines placed now. */
    public static Quote quote(Kitchen kitchen, Menu menu, List<OrderLine> lines, long nowMs) {
        return kitchen.pace().quoted().range(wholeMs(kitchen, menu, lines, nowMs));
    }

    /** How long it would take until an order of these lines is whole, in milliseconds. */
    static long wholeMs(Kitchen kitchen, Menu menu, List<OrderLine> lines, long nowMs) {
        List<Work> parts = new ArrayList<>();
        for (OrderLine line : lines) {
            Making making = new Making(line.selection(), line.quantity(), true, menu.revision());
            for (String station : Router.stations(menu, line.selection())) {
                PartId id = new PartId(NEW, line.line(), station);
                parts.add(Work.of(Part.fresh(id, 0, "", making, nowMs), menu));
            }
        }
        return Planner.wholeMs(kitchen, menu, parts, nowMs);
    }
}
