package sopwell.mix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PassEvent;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.RemakeReason;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent;
import sopwell.orders.OrderLine;

/**
 * What happened to one order, step by step. Immutable.
 *
 * @param waitedSeconds from the call to whole
 */
public record OrderStory(Order order, int waitedSeconds, List<Step> steps) {
    public OrderStory {
        steps = List.copyOf(steps);
    }

    /** What can happen to an order. */
    public enum What {
        /** The guest called it. */
        CALLED,
        /** Work on a part began. */
        STARTED,
        /** A part was put up. */
        UP,
        /** A part came back from the pass. */
        PART_BACK,
        /** Pieces of a part were made again. */
        REMADE,
        /** A station asked the counter. */
        ASKED,
        /** The counter answered that it is right as it stands, or in words. */
        ANSWERED,
        /** The counter answered with a change of the line. */
        ANSWERED_CHANGED,
        /** The order was edited. */
        CHANGED,
        /** Its number was called out. */
        NUMBER_CALLED,
        /** The guest has it. */
        HANDED,
        /** It was brought back after all. */
        BACK
    }

    /**
     * One step.
     *
     * @param atMs milliseconds since 1970-01-01 UTC
     * @param station the station it happened at, or empty
     * @param item the item of the part it happened to, or empty
     * @param pieces how many pieces it is about, how often a number was called, or 0
     * @param why why pieces were made again
     * @param words what somebody wrote about it, or empty
     */
    public record Step(
            long atMs,
            What what,
            String station,
            String item,
            int pieces,
            Optional<RemakeReason> why,
            String words) {
        private static Step of(long atMs, What what, int pieces, String words) {
            return new Step(atMs, what, "", "", pieces, Optional.empty(), words);
        }
    }

    /** The id of the order that an event is part of the story of, if there is one. */
    public static Optional<String> about(Event event) {
        if (event instanceof OrderEvent ofOrder) {
            return ofOrder.about();
        }
        if (event instanceof KitchenEvent ofPart) {
            return Optional.of(ofPart.part().order());
        }
        if (event instanceof QueryEvent ofQuery) {
            return Optional.of(ofQuery.query().part().order());
        }
        return event instanceof PassEvent ofPass ? Optional.of(ofPass.order()) : Optional.empty();
    }

    /**
     * Tells an order's story.
     *
     * @param events those about it, in their order
     */
    public static OrderStory of(Order order, int waitedSeconds, List<Recorded> events) {
        Telling telling = new Telling(order);
        events.forEach(telling::add);
        return new OrderStory(order, waitedSeconds, telling.steps);
    }

    /** Goes through the events; knows what each line was at the time. */
    private static final class Telling {
        private final List<Step> steps = new ArrayList<>();
        private final Map<Integer, String> items = new HashMap<>();
        private final Order order;

        private Telling(Order order) {
            this.order = order;
        }

        private void add(Recorded recorded) {
            Event event = recorded.event();
            long atMs = recorded.atMs();
            if (event instanceof OrderEvent ofOrder) {
                add(ofOrder, atMs);
            } else if (event instanceof KitchenEvent ofPart) {
                add(ofPart, atMs);
            } else if (event instanceof QueryEvent ofQuery) {
                add(ofQuery, atMs);
            } else if (event instanceof PassEvent.NumberCalled called) {
                steps.add(Step.of(atMs, What.NUMBER_CALLED, called.calls(), ""));
            }
        }

        private void add(OrderEvent event, long atMs) {
            switch (event.kind()) {
                case PLACED -> {
                    know(((OrderEvent.OrderPlaced) event).lines());
                    steps.add(Step.of(order.takenAtMs(), What.CALLED, 0, ""));
                }
                case CHANGED -> {
                    OrderEvent.OrderChanged changed = (OrderEvent.OrderChanged) event;
                    know(changed.lines());
                    steps.add(Step.of(atMs, What.CHANGED, 0, changed.reason()));
                }
                case HANDED -> steps.add(Step.of(atMs, What.HANDED, 0, ""));
                case BROUGHT_BACK -> steps.add(Step.of(atMs, What.BACK, 0, ""));
                case DAY_OPENED, DAY_CLOSED, DAY_REOPENED, TOLD, DISCOUNTED, VOIDED -> {}
            }
        }

        private void add(KitchenEvent event, long atMs) {
            switch (event.kind()) {
                case STARTED -> add(atMs, What.STARTED, event.part(), "");
                case UP -> add(atMs, What.UP, event.part(), "");
                case BROUGHT_BACK -> add(atMs, What.PART_BACK, event.part(), "");
                case REMADE -> {
                    KitchenEvent.PartRemade remade = (KitchenEvent.PartRemade) event;
                    PartId part = remade.part();
                    steps.add(
                            new Step(
                                    atMs,
                                    What.REMADE,
                                    part.station(),
                                    item(part),
                                    remade.pieces(),
                                    Optional.of(remade.reason()),
                                    remade.text()));
                }
                case SEEN -> {}
            }
        }

        private void add(QueryEvent event, long atMs) {
            PartId part = event.query().part();
            switch (event.kind()) {
                case ASKED ->
                        add(
                                atMs,
                                What.ASKED,
                                part,
                                ((QueryEvent.QueryAsked) event).question().text());
                case ANSWERED -> {
                    QueryEvent.QueryAnswered answered = (QueryEvent.QueryAnswered) event;
                    What what = answered.changed() ? What.ANSWERED_CHANGED : What.ANSWERED;
                    add(atMs, what, part, answered.text());
                }
            }
        }

        private void add(long atMs, What what, PartId part, String words) {
            steps.add(new Step(atMs, what, part.station(), item(part), 0, Optional.empty(), words));
        }

        private String item(PartId part) {
            return items.getOrDefault(part.line(), "");
        }

        private void know(List<OrderLine> lines) {
            lines.forEach(line -> items.put(line.line(), line.selection().item()));
        }
    }
}
