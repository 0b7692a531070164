package sopwell.desk;

import java.util.Optional;
import java.util.Set;
import sopwell.audit.Who;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand.VoidOrder;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;

/**
 * Who voids an order that was paid. The gate asks for the right and the password when the request
 * comes; the desk asks for the role once more, where no payment can come in between. Stateless.
 */
final class PaidVoid {
    private static final Set<String> MAY = Set.of("lead", "owner");

    private PaidVoid() {}

    /**
     * Why somebody's void of an order is not done, if it was paid and they are no lead or owner.
     */
    static Optional<Refusal> refused(Stand stand, Who who, StandCommand command) {
        if (MAY.contains(who.role())
                || !(command instanceof StandCommand.ForOrders orders)
                || !(orders.command() instanceof VoidOrder asked)) {
            return Optional.empty();
        }
        return stand.orders()
                .find(asked.order())
                .filter(order -> !order.isVoid() && isPaid(stand, order))
                .map(order -> Refusal.of(Reason.PAID_VOID, order.number()));
    }

    private static boolean isPaid(Stand stand, Order order) {
        return stand.till().of(order.id()).keptCents() > 0;
    }
}
