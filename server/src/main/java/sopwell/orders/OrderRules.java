package sopwell.orders;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sopwell.Limits;
import sopwell.log.Event;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.money.Bill;
import sopwell.money.Discount;
import sopwell.money.TaxRule;
import sopwell.money.Totals;

/** What may be done to orders and the day. Stateless and pure: looks, never changes. */
public final class OrderRules {
    private OrderRules() {}

    /** The events that a command comes to now, or why it is refused. */
    public static Decision decide(Orders orders, OrderCommand command, Deciding with) {
        return switch (command.kind()) {
            case OPEN_DAY ->
                    orders.isDayOpen()
                            ? Decision.accepted()
                            : Decision.accepted()
                                    .after(Days.openings(orders, with.settings(), with.nowMs()));
            case CLOSE_DAY -> closeDay(orders);
            case CUT_DAY ->
                    Days.isPastCut(orders, with.nowMs())
                            ? Decision.accepted(Days.closing(orders, true))
                            : Decision.accepted();
            case REOPEN_DAY -> reopenDay(orders, (OrderCommand.ReopenDay) command, with);
            case PLACE -> place(orders, (OrderCommand.Place) command, with);
            case CHANGE -> change(orders, (OrderCommand.Change) command, with);
            case DISCOUNT -> discount(orders, (OrderCommand.SetDiscount) command, with);
            case VOID -> voidOrder(orders, (OrderCommand.VoidOrder) command);
            case HAND -> hand(orders, (OrderCommand.Hand) command);
            case BRING_BACK -> bringBack(orders, (OrderCommand.BringBack) command);
        };
    }

    private static Decision closeDay(Orders orders) {
        if (!orders.isDayOpen()) {
            return Decision.refused(Reason.NO_DAY_OPEN);
        }
        if (orders.openCount() > 0) {
            List<String> numbers =
                    orders.open().stream().map(order -> "" + order.number()).toList();
            return Decision.refused(Reason.ORDERS_OPEN, String.join(", ", numbers));
        }
        return Decision.accepted(Days.closing(orders, false));
    }

    private static Decision reopenDay(
            Orders orders, OrderCommand.ReopenDay command, Deciding with) {
        Optional<Refusal> fault = Texts.reason(command.reason());
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        if (orders.isDayOpen()) {
            return Decision.refused(Reason.DAY_OPEN, orders.date().orElseThrow());
        }
        LocalDate date = command.date().or(orders::date).orElse(LocalDate.EPOCH);
        if (orders.date().filter(date::equals).isEmpty()) {
            return Decision.refused(Reason.NOT_NEWEST_DAY, date);
        }
        if (with.nowMs() >= orders.cutAtMs()) {
            return Decision.refused(Reason.DAY_CUT, date);
        }
        if (command.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        List<OrderEvent> events = Days.reopening(orders, with.settings(), command.reason());
        return Decision.accepted(events.get(0), events.get(1));
    }

    private static Decision place(Orders orders, OrderCommand.Place place, Deciding with) {
        Optional<Refusal> fault =
                Texts.name(place.name())
                        .or(() -> linesFault(List.of(), place.lines(), with))
                        .or(() -> Telling.fault(place, with));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        Slot slot = Slot.next(orders, with.settings(), with.nowMs());
        if (slot.number().isEmpty()) {
            return Decision.refused(Reason.NUMBERS_USED_UP);
        }
        Menu prices = place.told().map(Told::menu).orElse(with.menu());
        List<OrderLine> lines = Edits.fresh(prices, place.lines());
        OrderEvent.OrderPlaced placed =
                new OrderEvent.OrderPlaced(
                        slot.order(),
                        slot.number().get(),
                        place.name(),
                        place.toGo(),
                        lines,
                        totals(lines, Discount.NONE, with.settings().tax()),
                        with.quoting().quote(lines),
                        with.menu().revision());
        return Telling.event(slot.order(), place, with)
                .map(told -> Decision.accepted(placed, told))
                .orElseGet(() -> Decision.accepted(placed))
                .after(slot.before());
    }

    private static Decision change(Orders orders, OrderCommand.Change change, Deciding with) {
        Optional<Refusal> closed = notOpen(orders, change.order());
        if (closed.isPresent()) {
            return new Decision(List.of(), closed);
        }
        Order order = orders.find(change.order()).orElseThrow();
        Optional<Refusal> fault =
                staleVersion(order, change.version())
                        .or(() -> Texts.name(change.name()))
                        .or(() -> Texts.reason(change.reason()))
                        .or(() -> linesFault(order.lines(), change.lines(), with));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        List<OrderLine> lines =
                Edits.fit(with.menu(), order.lines(), order.linesEver(), change.lines());
        if (lines.equals(order.lines())
                && change.name().equals(order.name())
                && change.toGo() == order.toGo()) {
            return Decision.refused(Reason.NOTHING_CHANGED, order.number());
        }
        return Decision.accepted(
                new OrderEvent.OrderChanged(
                        order.id(),
                        order.version() + 1,
                        change.name(),
                        change.toGo(),
                        lines,
                        totals(lines, order.discount(), with.settings().tax()),
                        change.reason(),
                        with.menu().revision()));
    }

    private static Decision discount(
            Orders orders, OrderCommand.SetDiscount command, Deciding with) {
        Optional<Refusal> closed = absent(orders, command.order());
        if (closed.isPresent()) {
            return new Decision(List.of(), closed);
        }
        Order order = orders.find(command.order()).orElseThrow();
        if (order.isVoid()) {
            return Decision.refused(Reason.ORDER_VOID, order.number());
        }
        Discount discount = command.discount();
        int version = command.version() == 0 ? order.version() : command.version();
        Optional<Refusal> fault =
                staleVersion(order, version).or(() -> Texts.reason(discount.reason()));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        if (!discount.isNone() && discount.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        if (discount.cents() > order.totals().subtotalCents()) {
            return Decision.refused(
                    Reason.DISCOUNT_TOO_LARGE, order.number(), order.totals().subtotalCents());
        }
        if (discount.equals(order.discount()) || (discount.isNone() && order.discount().isNone())) {
            return Decision.refused(Reason.NOTHING_CHANGED, order.number());
        }
        Totals totals = totals(order.lines(), discount, with.settings().tax());
        return Decision.accepted(
                new OrderEvent.OrderDiscounted(order.id(), order.version() + 1, discount, totals));
    }

    private static Decision voidOrder(Orders orders, OrderCommand.VoidOrder command) {
        Optional<Refusal> closed = notOpen(orders, command.order());
        if (closed.isPresent()) {
            return new Decision(List.of(), closed);
        }
        Order order = orders.find(command.order()).orElseThrow();
        int version = command.version() == 0 ? order.version() : command.version();
        Optional<Refusal> fault =
                staleVersion(order, version).or(() -> Texts.reason(command.reason()));
        if (fault.isPresent()) {
            return new Decision(List.of(), fault);
        }
        if (command.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        return Decision.accepted(
                new OrderEvent.OrderVoided(order.id(), order.version() + 1, command.reason()));
    }

    private static Decision hand(Orders orders, OrderCommand.Hand hand) {
        Optional<Refusal> closed = notOpen(orders, hand.order());
        return closed.isPresent()
                ? new Decision(List.of(), closed)
                : Decision.accepted(new OrderEvent.OrderHanded(hand.order()));
    }

    private static Decision bringBack(Orders orders, OrderCommand.BringBack command) {
        Optional<Refusal> absent = absent(orders, command.order());
        if (absent.isPresent()) {
            return new Decision(List.of(), absent);
        }
        Order order = orders.find(command.order()).orElseThrow();
        if (order.isVoid()) {
            return Decision.refused(Reason.ORDER_VOID, order.number());
        }
        if (!order.isHanded()) {
            return Decision.refused(Reason.ORDER_NOT_HANDED, order.number());
        }
        if (orders.findOpen(order.number()).isPresent()) {
            return Decision.refused(Reason.NUMBER_TAKEN, order.number());
        }
        return Decision.accepted(new OrderEvent.OrderBroughtBack(order.id()));
    }

    /** What must happen before anything of today can: a day past its cut closes, a day opens. */
    public static List<Event> beforeToday(Orders orders, Deciding with) {
        return Days.before(orders, with.settings(), with.nowMs());
    }

    /** Why an order can't be worked on, if it can't. */
    public static Optional<Refusal> notOpen(Orders orders, String id) {
        Optional<Refusal> absent = absent(orders, id);
        if (absent.isPresent()) {
            return absent;
        }
        Order order = orders.find(id).orElseThrow();
        if (order.isVoid()) {
            return Optional.of(Refusal.of(Reason.ORDER_VOID, order.number()));
        }
        if (order.isHanded()) {
            return Optional.of(Refusal.of(Reason.ORDER_HANDED, order.number()));
        }
        return orders.isWaitedFor(id)
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.DAY_CLOSED));
    }

    /** Why nothing can be done with an order at all, if that is so. */
    public static Optional<Refusal> absent(Orders orders, String id) {
        if (orders.find(id).isEmpty()) {
            return Optional.of(Refusal.of(Reason.UNKNOWN_ORDER, id));
        }
        if (!orders.isDayOpen()) {
            return Optional.of(Refusal.of(Reason.DAY_CLOSED));
        }
        return Optional.empty();
    }

    private static Optional<Refusal> staleVersion(Order order, int version) {
        return version == order.version()
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.STALE_VERSION, version, order.version()));
    }

    /** Why an order can't have these lines; what it had before is taken already. */
    private static Optional<Refusal> linesFault(
            List<OrderLine> before, List<Asked> lines, Deciding with) {
        if (lines.isEmpty()) {
            return Optional.of(Refusal.of(Reason.NO_LINES));
        }
        if (lines.size() > Limits.ORDER_LINES_MAX) {
            return Optional.of(
                    Refusal.of(Reason.TOO_MANY_LINES, lines.size(), Limits.ORDER_LINES_MAX));
        }
        for (Asked line : lines) {
            if (line.quantity() < 1 || line.quantity() > Limits.LINE_QUANTITY_MAX) {
                return Optional.of(
                        Refusal.of(Reason.QUANTITY, line.quantity(), Limits.LINE_QUANTITY_MAX));
            }
            if (!with.selling().isOnMenu(line.selection())) {
                return Optional.of(Refusal.of(Reason.MENU_CHANGED, line.selection().item()));
            }
            Item item = with.menu().item(line.selection().item());
            if (!item.days().isEmpty() && !item.days().contains(today(with))) {
                List<String> days =
                        item.days().stream().map(d -> d.name().toLowerCase(Locale.ROOT)).toList();
                return Optional.of(Refusal.of(Reason.NOT_TODAY, item.id(), String.join(",", days)));
            }
        }
        return with.selling().shortage(before, lines, with.nowMs());
    }

    private static DayOfWeek today(Deciding with) {
        return Instant.ofEpochMilli(with.nowMs()).atZone(with.settings().zone()).getDayOfWeek();
    }

    /** What lines come to. */
    public static Totals totals(List<OrderLine> lines, Discount discount, TaxRule tax) {
        return Bill.of(lines.stream().map(OrderLine::billed).toList(), discount, tax).totals();
    }
}
