package sopwell.sim;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.OrderStage;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;
import sopwell.log.Recorded;
import sopwell.menu.Station;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;
import sopwell.sim.OrderBook.TrueOrder;

/** Parts as the raw events tell them. Belongs to one thread; fed after the order book. */
final class PartBook {
    private final OrderBook orders;
    private final Complaints complaints;
    private final Map<String, Map<PartId, TruePart>> byOrder = new LinkedHashMap<>();

    PartBook(OrderBook orders, Complaints complaints) {
        this.orders = orders;
        this.complaints = complaints;
    }

    /** One part; {@code first} is what the station saw before a change that it has not seen. */
    private static final class TruePart {
        private final PartId id;
        private Make make;
        private Make first;
        private PartState state = PartState.WAITING;
        private boolean started;
        private int again;
        private boolean cancelled;

        private TruePart(PartId id, Make make) {
            this.id = id;
            this.make = make;
        }

        private boolean isDone() {
            return state == PartState.UP && first == null && !cancelled;
        }
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof KitchenEvent event) {
            take(event);
        } else if (recorded.event() instanceof OrderEvent event) {
            switch (event.kind()) {
                case DAY_OPENED -> byOrder.keySet().removeIf(id -> orders.find(id).isEmpty());
                case PLACED, CHANGED -> refit(orders.about(event));
                case VOIDED -> {
                    for (PartId id : idsOf(orders.about(event).id)) {
                        withdraw(id);
                    }
                }
                case HANDED ->
                        complaints.that(
                                isWhole(orders.about(event).id),
                                Invariant.WHOLE,
                                "handed with a part missing:",
                                orders.about(event).id);
                case DAY_CLOSED, DAY_REOPENED, TOLD, DISCOUNTED, BROUGHT_BACK -> {}
            }
        }
    }

    private void take(KitchenEvent event) {
        TruePart part = find(event.part());
        if (part == null) {
            complaints.that(false, Invariant.PARTS, "about a part that is not:", event);
            return;
        }
        switch (event.kind()) {
            case STARTED -> {
                complaints.same(PartState.WAITING, part.state, Invariant.PARTS, "before", event);
                part.state = PartState.STARTED;
                part.started = true;
            }
            case UP -> {
                complaints.that(
                        part.state != PartState.UP && part.first == null && !part.cancelled,
                        Invariant.PARTS,
                        "not to be put up:",
                        event);
                part.state = PartState.UP;
                part.started = true;
            }
            case BROUGHT_BACK -> {
                complaints.same(PartState.UP, part.state, Invariant.PARTS, "before", event);
                part.state = PartState.STARTED;
            }
            case REMADE -> remake(part, (KitchenEvent.PartRemade) event);
            case SEEN -> {
                part.first = null;
                if (part.cancelled) {
                    of(part.id.order()).remove(part.id);
                }
            }
        }
    }

    /** What is up is work again, and of it only what is made again. */
    private void remake(TruePart part, KitchenEvent.PartRemade remade) {
        complaints.that(
                part.state != PartState.WAITING
                        && remade.pieces() >= 1
                        && remade.pieces() <= part.make.quantity(),
                Invariant.PARTS,
                "not to be made again:",
                remade);
        if (part.state == PartState.UP) {
            part.again = remade.pieces();
            part.state = PartState.WAITING;
            part.started = false;
        }
    }

    private void refit(TrueOrder order) {
        Map<PartId, Make> wanted = new LinkedHashMap<>();
        for (OrderLine line : order.lines) {
            Make make = new Make(line.selection(), line.quantity(), order.toGo, order.revision);
            for (String station : Make.stations(orders.menuOf(order.revision), line.selection())) {
                wanted.put(new PartId(order.id, line.line(), station), make);
            }
        }
        for (PartId id : idsOf(order.id)) {
            if (!wanted.containsKey(id)) {
                withdraw(id);
            }
        }
        wanted.forEach(this::refit);
    }

    private void refit(PartId id, Make make) {
        TruePart part = of(id.order()).computeIfAbsent(id, i -> new TruePart(i, make));
        boolean changes =
                part.cancelled || !seen(part.make, id.station()).equals(seen(make, id.station()));
        if (changes) {
            Make first = part.first == null ? part.make : part.first;
            part.first = first.equals(make) ? null : first;
            part.cancelled = false;
            part.again = 0;
            part.state = part.started ? PartState.STARTED : PartState.WAITING;
        }
        part.make = make;
    }

    private List<String> seen(Make make, String station) {
        return make.seenAt(orders.menuOf(make.revision()), station);
    }

    private void withdraw(PartId id) {
        TruePart part = find(id);
        if (part.state == PartState.WAITING && !part.cancelled) {
            of(id.order()).remove(id);
        } else {
            part.cancelled = true;
        }
    }

    private Map<PartId, TruePart> of(String order) {
        return byOrder.computeIfAbsent(order, o -> new LinkedHashMap<>());
    }

    private TruePart find(PartId id) {
        return of(id.order()).get(id);
    }

    private List<PartId> idsOf(String order) {
        return List.copyOf(of(order).keySet());
    }

    /** Whether everything of an order is made. */
    boolean isWhole(String order) {
        return of(order).values().stream().allMatch(TruePart::isDone);
    }

    boolean has(PartId id) {
        return find(id) != null;
    }

    Make make(PartId id) {
        return find(id).make;
    }

    int quantity(PartId id) {
        TruePart part = find(id);
        return part == null ? 0 : part.again == 0 ? part.make.quantity() : part.again;
    }

    boolean isCancelled(PartId id) {
        return find(id).cancelled;
    }

    /** The parts that a station must have in sight. */
    Set<PartId> inSight(String station) {
        Set<PartId> ids = new HashSet<>();
        byOrder.forEach(
                (order, parts) -> {
                    boolean current =
                            orders.isDayOpen()
                                    && orders.find(order).filter(o -> o.current).isPresent();
                    for (TruePart part : parts.values()) {
                        if (current && part.id.station().equals(station) && !part.isDone()) {
                            ids.add(part.id);
                        }
                    }
                });
        return ids;
    }

    void check(Stand stand) {
        byOrder.values().forEach(parts -> parts.values().forEach(part -> check(part, stand)));
        for (Order order : stand.orders().all()) {
            complaints.same(
                    of(order.id()).size(),
                    stand.kitchen().parts(order.id()).size(),
                    Invariant.PARTS,
                    "the number of parts of",
                    order.id());
            if (order.isOpen()) {
                complaints.same(
                        isWhole(order.id()),
                        stand.kitchen().stage(order) == OrderStage.UP,
                        Invariant.WHOLE,
                        "being up of",
                        order.id());
            }
        }
        Set<String> stations = new HashSet<>();
        orders.menus().forEach(m -> m.stations().stream().map(Station::id).forEach(stations::add));
        for (String station : stations) {
            Set<PartId> found = new HashSet<>();
            stand.kitchen().inSight(station).forEach(part -> found.add(part.id()));
            complaints.same(
                    inSight(station), found, Invariant.PARTS, "what is in sight at", station);
        }
    }

    private void check(TruePart expected, Stand stand) {
        PartId id = expected.id;
        Part part = stand.kitchen().find(id).orElse(null);
        if (part == null) {
            complaints.that(false, Invariant.PARTS, "there is no", id);
            return;
        }
        boolean unseen = expected.cancelled || expected.first != null;
        int quantity = quantity(id);
        complaints.same(expected.state, part.state(), Invariant.PARTS, "state of", id);
        complaints.same(expected.cancelled, part.cancelled(), Invariant.PARTS, "cancelled", id);
        complaints.same(unseen, part.isUnseen(), Invariant.PARTS, "unseen", id);
        complaints.same(quantity, part.pieces(), Invariant.PARTS, "pieces of", id);
    }
}
