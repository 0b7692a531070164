package sopwell.till;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sopwell.Limits;
import sopwell.log.Event;
import sopwell.money.CashRule;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;

/** What may be done to tills. Stateless and pure: looks, never changes. */
public final class TillRules {
    private TillRules() {}

    /** The events that a command comes to now, or why it is refused. */
    public static Decision decide(Till till, Orders orders, TillCommand command, Deciding with) {
        Optional<Refusal> unclear = Texts.cashier(command.cashier());
        if (unclear.isPresent()) {
            return new Decision(List.of(), unclear);
        }
        CashRule cash = with.settings().cash();
        return switch (command.kind()) {
            case PAY -> PayRules.pay(till, orders, (TillCommand.Pay) command, cash);
            case REFUND -> PayRules.refund(till, orders, (TillCommand.Refund) command, cash);
            case OPEN -> open(till, orders, (TillCommand.OpenTill) command, with);
            case PAY_IN -> {
                TillCommand.PayIn in = (TillCommand.PayIn) command;
                yield move(till, in, new Moved(in.cents(), in.reason(), true), cash);
            }
            case PAY_OUT -> {
                TillCommand.PayOut out = (TillCommand.PayOut) command;
                yield move(till, out, new Moved(out.cents(), out.reason(), false), cash);
            }
            case CLOSE -> close(till, (TillCommand.CloseTill) command, cash);
        };
    }

    /** Why the day can't be closed by hand, if it can't: its tills must be counted first. */
    public static Optional<Refusal> stillOpen(Till till) {
        return till.open().isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.TILLS_OPEN, cashiers(till)));
    }

    private static Decision open(
            Till till, Orders orders, TillCommand.OpenTill command, Deciding with) {
        if (command.cashier().isBlank()) {
            return Decision.refused(Reason.CASHIER_MISSING);
        }
        List<Event> before = OrderRules.beforeToday(orders, with);
        Optional<Drawer> already = till.open(command.cashier());
        if (already.isPresent() && !before.stream().anyMatch(event -> isNewDate(event, orders))) {
            return Decision.refused(Reason.TILL_OPEN, already.get().cashier());
        }
        Optional<Refusal> fault =
                command.floatCents() == 0
                        ? Optional.empty()
                        : cashFault(command.floatCents(), with.settings().cash());
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        return Decision.accepted(new TillEvent.TillOpened(command.cashier(), command.floatCents()))
                .after(before);
    }

    /** Yesterday's tills stay with yesterday, counted or not. */
    private static boolean isNewDate(Event event, Orders orders) {
        return event instanceof OrderEvent.DayOpened opened
                && !orders.date().filter(opened.date()::equals).isPresent();
    }

    private record Moved(long cents, String reason, boolean in) {}

    private static Decision move(Till till, TillCommand command, Moved moved, CashRule cash) {
        Optional<Refusal> fault =
                noTill(till, command.cashier())
                        .or(() -> cashFault(moved.cents(), cash))
                        .or(() -> Texts.reason(moved.reason()));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        if (moved.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        Drawer drawer = till.meant(command.cashier()).orElseThrow();
        if (!moved.in() && moved.cents() > drawer.expectedCents()) {
            return Decision.refused(Reason.TILL_SHORT, drawer.cashier(), drawer.expectedCents());
        }
        return Decision.accepted(
                moved.in()
                        ? new TillEvent.PaidIn(drawer.cashier(), moved.cents(), moved.reason())
                        : new TillEvent.PaidOut(drawer.cashier(), moved.cents(), moved.reason()));
    }

    private static Decision close(Till till, TillCommand.CloseTill command, CashRule cash) {
        Optional<Refusal> fault =
                noTill(till, command.cashier())
                        .or(() -> Counting.fault(command.counts(), cash.units()));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        Drawer drawer = till.meant(command.cashier()).orElseThrow();
        Counting counting = Counting.of(command.counts(), cash.units());
        return Decision.accepted(
                new TillEvent.TillClosed(
                        drawer.cashier(),
                        drawer.expectedCents(),
                        counting.cents(),
                        counting.counts()));
    }

    private static Optional<Refusal> noTill(Till till, String cashier) {
        if (till.meant(cashier).isPresent()) {
            return Optional.empty();
        }
        if (till.open().isEmpty()) {
            return Optional.of(Refusal.of(Reason.NO_TILL_OPEN));
        }
        return Optional.of(
                cashier.isBlank()
                        ? Refusal.of(Reason.WHICH_TILL, cashiers(till))
                        : Refusal.of(Reason.TILL_NOT_OPEN, cashier));
    }

    /** What is wrong with an amount of cash that is above zero, if anything. */
    static Optional<Refusal> cashFault(long cents, CashRule cash) {
        if (cents < 1 || cents > Limits.AMOUNT_CENTS_MAX) {
            return Optional.of(Refusal.of(Reason.AMOUNT_WRONG, Limits.AMOUNT_CENTS_MAX));
        }
        long least = cash.units().leastCents();
        return cents % least == 0
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.NOT_IN_CASH, least));
    }

    private static String cashiers(Till till) {
        return till.open().stream().map(Drawer::cashier).collect(Collectors.joining(", "));
    }
}
