package sopwell.kitchen;

import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;

/** What may be done at the pass. Stateless and pure: looks, never changes. */
public final class PassRules {
    private PassRules() {}

    /** The event that a command comes to, or why it is refused. */
    public static Decision decide(Pass pass, Kitchen kitchen, Orders orders, PassCommand command) {
        Optional<Refusal> closed = OrderRules.notOpen(orders, command.order());
        if (closed.isPresent()) {
            return new Decision(List.of(), closed);
        }
        Order order = orders.find(command.order()).orElseThrow();
        return switch (command.kind()) {
            case CALL -> call(pass, kitchen, order);
            case COUNT_BAGS -> count(pass, order, ((PassCommand.CountBags) command).bags());
        };
    }

    private static Decision call(Pass pass, Kitchen kitchen, Order order) {
        Optional<Refusal> notWhole = KitchenRules.notWhole(kitchen, order);
        if (notWhole.isPresent()) {
            return new Decision(List.of(), notWhole);
        }
        int before = pass.of(order.id()).callsSince(kitchen.wholeAtMs(order.id()));
        return Decision.accepted(new PassEvent.NumberCalled(order.id(), before + 1));
    }

    private static Decision count(Pass pass, Order order, int bags) {
        if (bags < 1 || bags > Limits.BAGS_MAX) {
            return Decision.refused(Reason.BAGS_RANGE, bags, Limits.BAGS_MAX);
        }
        return pass.of(order.id()).bags() == bags
                ? Decision.refused(Reason.NOTHING_CHANGED, order.number())
                : Decision.accepted(new PassEvent.BagsCounted(order.id(), bags));
    }
}
