package sopwell.stock;

/** What can be said about pans. */
public sealed interface PanCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        REFILL
    }

    /** This command's kind. */
    Kind kind();

    /**
     * Says that a pan was refilled.
     *
     * @param percent how full it is now, 1 to 100
     */
    record Refill(String pan, int percent) implements PanCommand {
        @Override
        public Kind kind() {
            return Kind.REFILL;
        }
    }
}
