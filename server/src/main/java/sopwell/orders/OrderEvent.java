package sopwell.orders;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.log.Event;
import sopwell.money.Discount;
import sopwell.money.Totals;

/** What happens to orders and to the day they belong to. */
public sealed interface OrderEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        DAY_OPENED,
        DAY_CLOSED,
        DAY_REOPENED,
        PLACED,
        TOLD,
        CHANGED,
        DISCOUNTED,
        VOIDED,
        HANDED,
        BROUGHT_BACK
    }

    /** This event's kind. */
    Kind kind();

    /** The id of the order that it happened to, if it happened to one. */
    default Optional<String> about() {
        return Optional.empty();
    }

    /**
     * A business day begins, or goes on after it was closed too early.
     *
     * @param date the local date at the opening
     * @param zone the zone that date was read in
     * @param cutAtMs when it is closed if nobody does, milliseconds since 1970-01-01 UTC
     * @param firstNumber the number for its next order
     * @param firstOrdinal the place of its next order among the date's orders, from 1
     */
    record DayOpened(LocalDate date, String zone, long cutAtMs, int firstNumber, int firstOrdinal)
            implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.DAY_OPENED;
        }
    }

    /**
     * A business day ends.
     *
     * @param byCut whether the cut hour closed it rather than a person
     * @param leftOpen ids of orders that were never handed; they leave the boards
     */
    record DayClosed(LocalDate date, boolean byCut, List<String> leftOpen) implements OrderEvent {
        public DayClosed {
            leftOpen = List.copyOf(leftOpen);
        }

        @Override
        public Kind kind() {
            return Kind.DAY_CLOSED;
        }
    }

    /**
     * Somebody had a closed day go on; its opening stands in the log just before.
     *
     * @param reason why
     */
    record DayReopened(LocalDate date, String reason) implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.DAY_REOPENED;
        }
    }

    /**
     * An order is taken.
     *
     * @param order its id, unique for ever
     * @param number what is called out, 1 to the stand's last number
     * @param name the guest's name, or empty
     * @param toGo whether it leaves the stand
     * @param menuRevision the menu that its words and prices come from
     */
    record OrderPlaced(
            String order,
            int number,
            String name,
            boolean toGo,
            List<OrderLine> lines,
            Totals totals,
            Quote quote,
            String menuRevision)
            implements OrderEvent {
        public OrderPlaced {
            lines = List.copyOf(lines);
        }

        @Override
        public Kind kind() {
            return Kind.PLACED;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }

    /**
     * The order before this one was taken while the stand could not be asked: its guest has waited
     * since then, and pays what was told then.
     *
     * @param menuRevision the earlier menu whose prices stand on the order, or empty when the
     *     prices are those of the menu that the order names
     * @param takenAtMs when the call was taken, milliseconds since 1970-01-01 UTC
     */
    record OrderTold(String order, String menuRevision, long takenAtMs) implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.TOLD;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }

    /**
     * An order is edited. The whole of it stands here as it is from now on; a line that kept its
     * number is the same line, perhaps altered.
     *
     * @param version the order's version from now on, from 2
     * @param reason why, or empty
     */
    record OrderChanged(
            String order,
            int version,
            String name,
            boolean toGo,
            List<OrderLine> lines,
            Totals totals,
            String reason,
            String menuRevision)
            implements OrderEvent {
        public OrderChanged {
            lines = List.copyOf(lines);
        }

        @Override
        public Kind kind() {
            return Kind.CHANGED;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }

    /**
     * Something is taken off an order, in place of what was taken off before; {@link Discount#NONE}
     * takes nothing off any more. Later edits keep it.
     *
     * @param version the order's version from now on
     * @param totals what the order comes to with it
     */
    record OrderDiscounted(String order, int version, Discount discount, Totals totals)
            implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.DISCOUNTED;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }

    /** A whole order is cancelled; the reason is never empty. */
    record OrderVoided(String order, int version, String reason) implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.VOIDED;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }

    /** A whole order is given to the guest. */
    record OrderHanded(String order) implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.HANDED;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }

    /** The handing over is undone. */
    record OrderBroughtBack(String order) implements OrderEvent {
        @Override
        public Kind kind() {
            return Kind.BROUGHT_BACK;
        }

        @Override
        public Optional<String> about() {
            return Optional.of(order);
        }
    }
}
