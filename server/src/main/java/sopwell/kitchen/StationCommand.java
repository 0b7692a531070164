package sopwell.kitchen;

/** What can be said about a station as a whole. */
public sealed interface StationCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        SET_HANDS
    }

    /** This command's kind. */
    Kind kind();

    /** So many hands are on duty at a station now. */
    record SetHands(String station, int hands) implements StationCommand {
        @Override
        public Kind kind() {
            return Kind.SET_HANDS;
        }
    }
}
