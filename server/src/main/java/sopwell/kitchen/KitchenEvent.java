package sopwell.kitchen;

import sopwell.log.Event;

/** What happens to parts at their stations. */
public sealed interface KitchenEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        STARTED,
        UP,
        BROUGHT_BACK,
        SEEN,
        REMADE
    }

    /** This event's kind. */
    Kind kind();

    /** The part it happened to. */
    PartId part();

    /** Work on the part begins. */
    record PartStarted(PartId part) implements KitchenEvent {
        @Override
        public Kind kind() {
            return Kind.STARTED;
        }
    }

    /** The part is made and on the pass; if nobody said it was begun, it began now. */
    record PartUp(PartId part) implements KitchenEvent {
        @Override
        public Kind kind() {
            return Kind.UP;
        }
    }

    /** The part comes back from the pass. */
    record PartBroughtBack(PartId part) implements KitchenEvent {
        @Override
        public Kind kind() {
            return Kind.BROUGHT_BACK;
        }
    }

    /** The station has read the change, or that the part is cancelled. */
    record PartSeen(PartId part) implements KitchenEvent {
        @Override
        public Kind kind() {
            return Kind.SEEN;
        }
    }

    /**
     * Pieces of the part are made again.
     *
     * @param pieces how many, 1 to the part's quantity
     * @param text more words about the reason, or empty
     * @param along whether it is made again only because what it went into is
     */
    record PartRemade(PartId part, int pieces, RemakeReason reason, String text, boolean along)
            implements KitchenEvent {
        @Override
        public Kind kind() {
            return Kind.REMADE;
        }
    }
}
