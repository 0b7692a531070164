package sopwell.stock;

import java.util.Optional;
import sopwell.menu.Pan;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;

/** What may be said about pans. Stateless and pure: looks, never changes. */
public final class PanRules {
    private static final int FULL_PERCENT = 100;

    private PanRules() {}

    /** The events that a command comes to now, or why it is refused. */
    public static Decision decide(Orders orders, PanCommand command, Deciding with) {
        return switch (command.kind()) {
            case REFILL -> refill(orders, (PanCommand.Refill) command, with);
        };
    }

    /** Opens the day if none is open: pans are filled before the first guest. */
    private static Decision refill(Orders orders, PanCommand.Refill refill, Deciding with) {
        Optional<Pan> pan = with.menu().pan(refill.pan());
        if (pan.isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_PAN, refill.pan());
        }
        if (refill.percent() < 1 || refill.percent() > FULL_PERCENT) {
            return Decision.refused(Reason.LEVEL_RANGE, refill.percent());
        }
        long amount = (long) pan.get().full() * refill.percent() / FULL_PERCENT;
        return Decision.accepted(
                        new PanEvent.PanRefilled(pan.get().id(), (int) Math.max(1, amount)))
                .after(OrderRules.beforeToday(orders, with));
    }
}
