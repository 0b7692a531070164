package sopwell.kitchen;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Station;
import sopwell.menu.Wish;
import sopwell.menu.Wishes;
import sopwell.orders.Asked;
import sopwell.orders.OrderLine;
import sopwell.orders.Quote;

/**
 * The wait to tell a guest: the work in front of this order and its own, shared over the hands of
 * each station, each with its load, by the menu's service times; the slowest station decides.
 * Stateless.
 *
 * <p>The spread is a plain guess, 15 % under to 35 % over and a minute for the counter, rounded to
 * half minutes.
 */
public final class WaitQuote {
    private static final int STEP_SECONDS = 30;

    private WaitQuote() {}

    /**
     * The wait that a guest is told who orders one of the house's own thing, the first on the menu,
     * now; empty when a station has no part in that, or the menu asks for choices to be made.
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
                                List.of(OrderLine.priced(menu, 1, new Asked(1, house)))))
                : Optional.empty();
    }

    /** The wait for an order of these lines placed now. */
    public static Quote quote(Kitchen kitchen, Menu menu, List<OrderLine> lines) {
        Map<String, Long> ownSeconds = new HashMap<>();
        Map<String, Long> longestSeconds = new HashMap<>();
        for (OrderLine line : lines) {
            for (String station : Router.stations(menu, line.selection())) {
                long each = Router.seconds(menu, line.selection(), station);
                ownSeconds.merge(station, each * line.quantity(), Long::sum);
                longestSeconds.merge(station, each, Math::max);
            }
        }
        long seconds = 0;
        for (Station station : menu.stations()) {
            Long own = ownSeconds.get(station.id());
            if (own != null) {
                long atOnce = (long) kitchen.hands(station) * station.load();
                long shared = (kitchen.backlogSeconds(station.id()) + own + atOnce - 1) / atOnce;
                seconds = Math.max(seconds, Math.max(shared, longestSeconds.get(station.id())));
            }
        }
        long from = seconds * 85 / 100 / STEP_SECONDS * STEP_SECONDS;
        long to = (seconds * 135 / 100 + 60) / STEP_SECONDS * STEP_SECONDS + STEP_SECONDS;
        return new Quote(Math.toIntExact(from), Math.toIntExact(to));
    }
}
