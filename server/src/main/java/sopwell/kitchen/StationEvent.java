package sopwell.kitchen;

import sopwell.log.Event;

/** What happens to a station as a whole. */
public sealed interface StationEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        HANDS_SET
    }

    /** This event's kind. */
    Kind kind();

    /** The station's id. */
    String station();

    /**
     * So many people or machines work side by side at a station, until it is said again or another
     * business day begins.
     *
     * @param hands 1 to {@link sopwell.Limits#STATION_HANDS_MAX}
     */
    record HandsSet(String station, int hands) implements StationEvent {
        @Override
        public Kind kind() {
            return Kind.HANDS_SET;
        }
    }
}
