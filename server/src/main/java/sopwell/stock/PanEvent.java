package sopwell.stock;

import sopwell.log.Event;

/** What happens to pans. */
public sealed interface PanEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        REFILLED
    }

    /** This event's kind. */
    Kind kind();

    /** The pan's id. */
    String pan();

    /**
     * A pan was refilled.
     *
     * @param amount how much is in it now, in its unit, from 1
     */
    record PanRefilled(String pan, int amount) implements PanEvent {
        @Override
        public Kind kind() {
            return Kind.REFILLED;
        }
    }
}
