package sopwell.kitchen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.log.Event;
import sopwell.orders.Decision;
import sopwell.orders.Order;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;

/** What stations may do. Stateless and pure: looks, never changes. */
public final class KitchenRules {
    private KitchenRules() {}

    /** The events that a command comes to, or why it is refused. */
    public static Decision decide(Kitchen kitchen, Orders orders, KitchenCommand command) {
        return switch (command.kind()) {
            case START -> start(kitchen, orders, ((KitchenCommand.Start) command).part());
            case UP -> up(kitchen, orders, ((KitchenCommand.Up) command).part());
            case BRING_BACK ->
                    bringBack(kitchen, orders, ((KitchenCommand.BringBack) command).part());
            case BRING_BACK_LAST ->
                    bringBackLast(
                            kitchen, orders, ((KitchenCommand.BringBackLast) command).station());
            case SEEN -> seen(kitchen, orders, ((KitchenCommand.Seen) command).part());
            case TOGETHER -> together(kitchen, orders, (KitchenCommand.Together) command);
            case REMAKE -> RemakeRules.decide(kitchen, orders, (KitchenCommand.Remake) command);
        };
    }

    /** Refused only when it can be done to none of the parts, for the reason of the first. */
    private static Decision together(
            Kitchen kitchen, Orders orders, KitchenCommand.Together command) {
        List<Event> events = new ArrayList<>();
        Decision first = Decision.refused(Reason.UNKNOWN_PART, "");
        Set<PartId> parts = new LinkedHashSet<>(command.parts());
        for (PartId id : parts) {
            Decision one =
                    switch (command.move()) {
                        case START -> start(kitchen, orders, id);
                        case UP -> up(kitchen, orders, id);
                        case SEEN -> seen(kitchen, orders, id);
                        case HAVE -> have(kitchen, orders, id);
                    };
            first = id.equals(command.parts().get(0)) ? one : first;
            events.addAll(one.events());
        }
        return events.isEmpty() ? first : new Decision(events, Optional.empty());
    }

    /** Why an order is not whole, if it is not. */
    public static Optional<Refusal> notWhole(Kitchen kitchen, Order order) {
        List<String> missing =
                stations(kitchen.parts(order.id()).stream().filter(p -> !p.isDone()).toList());
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Refusal.of(Reason.NOT_WHOLE, withStations(order.number(), missing)));
    }

    private static List<String> stations(List<Part> parts) {
        return parts.stream().map(part -> part.id().station()).distinct().toList();
    }

    private static Object[] withStations(int number, List<String> stations) {
        List<Object> args = new ArrayList<>(List.of(number));
        args.addAll(stations);
        return args.toArray();
    }

    private static Decision start(Kitchen kitchen, Orders orders, PartId id) {
        Decision closed = closed(kitchen, orders, id);
        if (closed.isRefused()) {
            return closed;
        }
        Part part = kitchen.find(id).orElseThrow();
        if (part.cancelled()) {
            return Decision.refused(Reason.PART_CANCELLED);
        }
        return switch (part.state()) {
            case WAITING -> Decision.accepted(new KitchenEvent.PartStarted(id));
            case STARTED -> Decision.refused(Reason.ALREADY_STARTED);
            case UP -> Decision.refused(Reason.ALREADY_UP);
        };
    }

    private static Decision up(Kitchen kitchen, Orders orders, PartId id) {
        Decision closed = closed(kitchen, orders, id);
        if (closed.isRefused()) {
            return closed;
        }
        Part part = kitchen.find(id).orElseThrow();
        if (part.cancelled()) {
            return Decision.refused(Reason.PART_CANCELLED);
        }
        if (part.state() == PartState.UP) {
            return Decision.refused(Reason.ALREADY_UP);
        }
        if (kitchen.isUnseen(part)) {
            return Decision.refused(Reason.CHANGE_UNSEEN);
        }
        List<Part> awaited = kitchen.awaited(part);
        if (!awaited.isEmpty()) {
            return Decision.refused(
                    Reason.WAITS_FOR, withStations(part.number(), stations(awaited)));
        }
        return Decision.accepted(new KitchenEvent.PartUp(id));
    }

    /** Puts up what a part waits for: it is in the hand of whoever says so. */
    private static Decision have(Kitchen kitchen, Orders orders, PartId id) {
        Decision closed = closed(kitchen, orders, id);
        if (closed.isRefused()) {
            return closed;
        }
        Part part = kitchen.find(id).orElseThrow();
        List<Event> events = new ArrayList<>();
        for (Part feed : kitchen.awaited(part)) {
            Decision one = up(kitchen, orders, feed.id());
            if (one.isRefused()) {
                return one;
            }
            events.addAll(one.events());
        }
        return events.isEmpty()
                ? Decision.refused(Reason.NOTHING_AWAITED, part.number())
                : new Decision(events, Optional.empty());
    }

    private static Decision bringBack(Kitchen kitchen, Orders orders, PartId id) {
        Decision closed = closed(kitchen, orders, id);
        if (closed.isRefused()) {
            return closed;
        }
        Part part = kitchen.find(id).orElseThrow();
        if (part.cancelled()) {
            return Decision.refused(Reason.PART_CANCELLED);
        }
        return part.state() == PartState.UP
                ? Decision.accepted(new KitchenEvent.PartBroughtBack(id))
                : Decision.refused(Reason.NOT_UP);
    }

    private static Decision bringBackLast(Kitchen kitchen, Orders orders, String station) {
        List<Event> back = new ArrayList<>();
        lastUp(kitchen, orders, station)
                .forEach(id -> back.add(new KitchenEvent.PartBroughtBack(id)));
        return back.isEmpty()
                ? Decision.refused(Reason.NOTHING_TO_BRING_BACK)
                : new Decision(back, Optional.empty());
    }

    /** What one press of a station put up last and the guest does not have yet, by its lines. */
    public static List<PartId> lastUp(Kitchen kitchen, Orders orders, String station) {
        List<PartId> last = new ArrayList<>();
        Part first = null;
        for (PartId id : kitchen.lastUp(station)) {
            Part part = kitchen.find(id).orElse(null);
            boolean here = !bringBack(kitchen, orders, id).isRefused();
            if (first == null && here) {
                first = part;
                last.add(id);
            } else if (first != null) {
                if (!here || !wentUpTogether(first, part)) {
                    break;
                }
                last.add(id);
            }
        }
        last.sort(Comparator.comparingInt(PartId::line));
        return last;
    }

    /** Whether one press on one row put both up. */
    private static boolean wentUpTogether(Part one, Part other) {
        return one.upAtMs() == other.upAtMs()
                && one.id().order().equals(other.id().order())
                && one.making().isLike(other.making());
    }

    /** Seen is about a part that may belong to a void order: what was begun was cancelled. */
    private static Decision seen(Kitchen kitchen, Orders orders, PartId id) {
        Optional<Part> part = kitchen.find(id);
        if (part.isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_PART, id);
        }
        if (!orders.isDayOpen() || isLeft(kitchen, part.get())) {
            return Decision.refused(Reason.DAY_CLOSED);
        }
        return kitchen.isUnseen(part.get())
                ? Decision.accepted(new KitchenEvent.PartSeen(id))
                : Decision.refused(Reason.NOTHING_TO_SEE);
    }

    /** Whether a part is not made and yet on no board: a closing of the day has left it behind. */
    private static boolean isLeft(Kitchen kitchen, Part part) {
        return !part.isDone() && !kitchen.isInSight(part.id());
    }

    /** Whether nothing can be done with a part any more; accepted when something can. */
    static Decision closed(Kitchen kitchen, Orders orders, PartId id) {
        Optional<Order> order = orders.find(id.order());
        if (order.isEmpty() || kitchen.find(id).isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_PART, id);
        }
        if (!orders.isDayOpen()) {
            return Decision.refused(Reason.DAY_CLOSED);
        }
        if (order.get().isVoid() && !kitchen.find(id).orElseThrow().cancelled()) {
            return Decision.refused(Reason.ORDER_VOID, order.get().number());
        }
        if (order.get().isHanded()) {
            return Decision.refused(Reason.ORDER_HANDED, order.get().number());
        }
        boolean left = order.get().isOpen() && !orders.isWaitedFor(id.order());
        return left || isLeft(kitchen, kitchen.find(id).orElseThrow())
                ? Decision.refused(Reason.DAY_CLOSED)
                : Decision.accepted();
    }
}
