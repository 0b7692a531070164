package sopwell.menu;

import sopwell.log.Event;

/** What happens to the menu. */
public sealed interface MenuEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        ADOPTED
    }

    /** This event's kind. */
    Kind kind();

    /** A checked menu takes effect; the whole of it stands in the log. */
    record MenuAdopted(Menu menu) implements MenuEvent {
        @Override
        public Kind kind() {
            return Kind.ADOPTED;
        }
    }
}
