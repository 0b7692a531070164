package sopwell.kitchen;

import java.util.List;

/** What a station can ask. */
public sealed interface KitchenCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        START,
        UP,
        BRING_BACK,
        BRING_BACK_LAST,
        SEEN,
        TOGETHER,
        REMAKE
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

    /**
     * One press on a row of several parts: done to each of them that it can be done to. A part that
     * was changed meanwhile keeps its row, and its change is read first.
     *
     * @param parts what the row showed when it was pressed
     */
    record Together(Move move, List<PartId> parts) implements KitchenCommand {
        public Together {
            parts = List.copyOf(parts);
        }

        @Override
        public Kind kind() {
            return Kind.TOGETHER;
        }
    }

    /**
     * Pieces are made again, from the first of the parts on.
     *
     * @param parts of one order, those of one row
     * @param pieces how many in all
     * @param text more words about the reason, or empty
     */
    record Remake(List<PartId> parts, int pieces, RemakeReason reason, String text)
            implements KitchenCommand {
        public Remake {
            parts = List.copyOf(parts);
        }

        @Override
        public Kind kind() {
            return Kind.REMAKE;
        }
    }

    /** What can be done to several parts at once. */
    enum Move {
        START,
        UP,
        SEEN,
        /** Says that what a part waits for is in hand, which puts that up. */
        HAVE
    }

    /** Says that a change, or a cancelling, was read. */
    record Seen(PartId part) implements KitchenCommand {
        @Override
        public Kind kind() {
            return Kind.SEEN;
        }
    }
}
