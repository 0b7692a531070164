package sopwell.kitchen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import sopwell.log.Event;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;

/** What may be made again. Stateless and pure: looks, never changes. */
public final class RemakeRules {
    private RemakeRules() {}

    /**
     * The events that a remake comes to, or why it is refused. An order that was handed is brought
     * back first, which its own rules decide.
     */
    public static Decision decide(Kitchen kitchen, Orders orders, KitchenCommand.Remake command) {
        Optional<Refusal> wrong = Texts.reason(command.text());
        if (wrong.isPresent()) {
            return new Decision(List.of(), wrong);
        }
        List<Part> parts = new ArrayList<>();
        for (PartId id : new LinkedHashSet<>(command.parts())) {
            Decision closed = closed(kitchen, orders, id);
            if (closed.isRefused()) {
                return closed;
            }
            parts.add(kitchen.find(id).orElseThrow());
        }
        return parts.isEmpty()
                ? Decision.refused(Reason.UNKNOWN_PART, "")
                : remake(kitchen, parts, command);
    }

    /** So many pieces, from the first part on, as far as they were begun. */
    private static Decision remake(
            Kitchen kitchen, List<Part> parts, KitchenCommand.Remake command) {
        int most = pieces(parts);
        if (most == 0) {
            return Decision.refused(Reason.NOT_BEGUN, parts.get(0).number());
        }
        if (command.pieces() < 1 || command.pieces() > most) {
            return Decision.refused(Reason.REMAKE_PIECES, command.pieces(), most);
        }
        List<Event> events = new ArrayList<>();
        int left = command.pieces();
        for (Part part : parts) {
            int pieces = Math.min(left, made(part));
            if (pieces > 0) {
                events.add(remade(part, pieces, command, false));
                events.addAll(along(kitchen, part, pieces, command));
                left -= pieces;
            }
        }
        return new Decision(events, Optional.empty());
    }

    /** What went into a part that is up is gone with it, and must be made again too. */
    private static List<Event> along(
            Kitchen kitchen, Part part, int pieces, KitchenCommand.Remake command) {
        List<Event> events = new ArrayList<>();
        if (part.state() == PartState.UP) {
            kitchen.feeding(part).stream()
                    .filter(feed -> feed.state() == PartState.UP && !feed.cancelled())
                    .forEach(feed -> events.add(remade(feed, pieces, command, true)));
        }
        return events;
    }

    private static KitchenEvent.PartRemade remade(
            Part part, int pieces, KitchenCommand.Remake command, boolean along) {
        return new KitchenEvent.PartRemade(
                part.id(),
                Math.min(pieces, part.making().quantity()),
                command.reason(),
                command.text(),
                along);
    }

    /** How many pieces of parts there are to be made again: those begun, and those up. */
    public static int pieces(List<Part> parts) {
        return parts.stream().mapToInt(RemakeRules::made).sum();
    }

    private static int made(Part part) {
        return switch (part.state()) {
            case WAITING -> 0;
            case STARTED -> part.pieces();
            case UP -> part.making().quantity();
        };
    }

    private static Decision closed(Kitchen kitchen, Orders orders, PartId id) {
        Optional<Order> order = orders.find(id.order());
        Optional<Part> part = kitchen.find(id);
        if (order.isEmpty() || part.isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_PART, id);
        }
        if (!orders.isDayOpen()) {
            return Decision.refused(Reason.DAY_CLOSED);
        }
        if (order.get().isVoid()) {
            return Decision.refused(Reason.ORDER_VOID, order.get().number());
        }
        if (order.get().isOpen() && !orders.isWaitedFor(id.order())) {
            return Decision.refused(Reason.DAY_CLOSED);
        }
        return part.get().cancelled()
                ? Decision.refused(Reason.PART_CANCELLED)
                : Decision.accepted();
    }
}
