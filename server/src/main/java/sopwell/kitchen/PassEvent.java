package sopwell.kitchen;

import sopwell.log.Event;

/** What is done at the pass with whole orders before they are handed. */
public sealed interface PassEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        CALLED,
        BAGGED
    }

    /** This event's kind. */
    Kind kind();

    /** The id of the order that it happened to. */
    String order();

    /**
     * An order's number was called out.
     *
     * @param calls how often it was called since the order is whole, this time included, from 1
     */
    record NumberCalled(String order, int calls) implements PassEvent {
        @Override
        public Kind kind() {
            return Kind.CALLED;
        }
    }

    /**
     * The bags of an order were counted; replaces an earlier count.
     *
     * @param bags how many, from 1
     */
    record BagsCounted(String order, int bags) implements PassEvent {
        @Override
        public Kind kind() {
            return Kind.BAGGED;
        }
    }
}
