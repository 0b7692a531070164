package sopwell.till;

import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.money.CashRule;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;

/**
 * What may be paid and given back. Stateless and pure.
 *
 * <p>Cash is rounded, the amount settled is not: 4.92 paid with 4.90 leaves nothing due. A part
 * paid in cash is rounded for itself. Whoever's till is not open may still take money; it is noted
 * apart ({@link Till#apart()}).
 */
final class PayRules {
    private PayRules() {}

    static Decision pay(Till till, Orders orders, TillCommand.Pay command, CashRule cash) {
        Optional<Refusal> absent = OrderRules.absent(orders, command.order());
        if (absent.isPresent()) {
            return new Decision(List.of(), absent);
        }
        Order order = orders.find(command.order()).orElseThrow();
        if (order.isVoid()) {
            return Decision.refused(Reason.ORDER_VOID, order.number());
        }
        if (isFar(command.cents()) || isFar(command.tenderedCents()) || isFar(command.tipCents())) {
            return Decision.refused(Reason.AMOUNT_WRONG, Limits.AMOUNT_CENTS_MAX);
        }
        long dueCents = till.dueCents(order);
        if (dueCents <= 0) {
            return Decision.refused(Reason.NOTHING_DUE, order.number());
        }
        long cents = command.cents() == 0 ? dueCents : command.cents();
        if (cents > dueCents) {
            return Decision.refused(Reason.MORE_THAN_DUE, cents, dueCents);
        }
        long paidCents = command.means() == Means.CASH ? cash.rounding().roundCents(cents) : cents;
        long neededCents = paidCents + command.tipCents();
        long tenderedCents = command.tenderedCents() == 0 ? neededCents : command.tenderedCents();
        Optional<Refusal> fault = tenderFault(command.means(), tenderedCents, neededCents, cash);
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        Payment payment =
                new Payment(
                        cents,
                        command.tipCents(),
                        paidCents - cents,
                        tenderedCents,
                        tenderedCents - neededCents);
        return Decision.accepted(
                new TillEvent.OrderPaid(
                        order.id(),
                        cashier(till, command.cashier()),
                        command.means(),
                        payment,
                        dueCents - cents));
    }

    private static Optional<Refusal> tenderFault(
            Means means, long tenderedCents, long neededCents, CashRule cash) {
        if (tenderedCents < neededCents) {
            return Optional.of(Refusal.of(Reason.TENDERED_SHORT, tenderedCents, neededCents));
        }
        if (means == Means.CARD) {
            return tenderedCents > neededCents
                    ? Optional.of(Refusal.of(Reason.MORE_THAN_DUE, tenderedCents, neededCents))
                    : Optional.empty();
        }
        long least = cash.units().leastCents();
        return neededCents % least != 0 || tenderedCents % least != 0
                ? Optional.of(Refusal.of(Reason.NOT_IN_CASH, least))
                : Optional.empty();
    }

    static Decision refund(Till till, Orders orders, TillCommand.Refund command, CashRule cash) {
        Optional<Refusal> fault =
                OrderRules.absent(orders, command.order()).or(() -> Texts.reason(command.reason()));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        Order order = orders.find(command.order()).orElseThrow();
        long dueCents = till.dueCents(order);
        long keptCents = till.of(order.id()).keptCents(command.means());
        long cents =
                command.cents() == 0
                        ? Math.min(Math.max(0, -dueCents), keptCents)
                        : command.cents();
        if (cents < 1 || isFar(cents)) {
            return Decision.refused(Reason.AMOUNT_WRONG, Limits.AMOUNT_CENTS_MAX);
        }
        if (cents > keptCents) {
            return Decision.refused(
                    Reason.MORE_THAN_PAID, order.number(), keptCents, command.means().name());
        }
        if (command.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        long backCents = command.means() == Means.CASH ? cash.rounding().roundCents(cents) : cents;
        Optional<Drawer> drawer = till.meant(command.cashier());
        if (command.means() == Means.CASH
                && drawer.isPresent()
                && backCents > drawer.get().expectedCents()) {
            return Decision.refused(
                    Reason.TILL_SHORT, drawer.get().cashier(), drawer.get().expectedCents());
        }
        long goodwillCents = command.dueAgain() ? 0 : Math.max(0, cents - Math.max(0, -dueCents));
        return Decision.accepted(
                new TillEvent.OrderRefunded(
                        order.id(),
                        cashier(till, command.cashier()),
                        command.means(),
                        cents,
                        backCents - cents,
                        goodwillCents,
                        command.reason(),
                        dueAfter(till, order, cents, goodwillCents)));
    }

    private static long dueAfter(Till till, Order order, long cents, long goodwillCents) {
        Takings before = till.of(order.id());
        long totalCents = order.isVoid() ? 0 : order.totals().totalCents();
        long costCents = Math.max(0, totalCents - before.goodwillCents() - goodwillCents);
        return costCents - (before.keptCents() - cents);
    }

    /** Whose till it is: as that till has the name, else as it was given. */
    private static String cashier(Till till, String asked) {
        return till.meant(asked).map(Drawer::cashier).orElse(asked);
    }

    private static boolean isFar(long cents) {
        return cents < 0 || cents > Limits.AMOUNT_CENTS_MAX;
    }
}
