package sopwell.kitchen;

/** What a station can ask. */
public sealed interface KitchenCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        START,
        UP,
        BRING_BACK,
        BRING_BACK_LAST,
        SEEN
    }

    /** This command's kind. */
    Kind kind();

    /** Begins a part. */
    record Start(PartId part) implements KitchenCommand {
        @Override
        public Kind kind() {
            return Kind.START;
        }
    }

    /** Puts a part up. */
    record Up(PartId part) implements KitchenCommand {
        @Override
        public Kind kind() {
            return Kind.UP;
        }
    }

    /** Takes a part back from the pass. */
    record BringBack(PartId part) implements KitchenCommand {
        @Override
        public Kind kind() {
            return Kind.BRING_BACK;
        }
    }

    /** Takes back whatever the station put up last and the guest does not have yet. */
    record BringBackLast(String station) implements KitchenCommand {
        @Override
        public Kind kind() {
            return Kind.BRING_BACK_LAST;
        }
    }

    /** Says that a change, or a cancelling, was read. */
    record Seen(PartId part) implements KitchenCommand {
        @Override
        public Kind kind() {
            return Kind.SEEN;
        }
    }
}
