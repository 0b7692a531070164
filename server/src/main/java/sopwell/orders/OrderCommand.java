package sopwell.orders;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sopwell.money.Discount;

/** What can be asked about orders and the day. */
public sealed interface OrderCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        OPEN_DAY,
        CLOSE_DAY,
        CUT_DAY,
        REOPEN_DAY,
        PLACE,
        CHANGE,
        DISCOUNT,
        VOID,
        HAND,
        BRING_BACK
    }

    /** This command's kind. */
    Kind kind();

    /** Opens a business day; with one open already, asks for nothing. */
    record OpenDay() implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.OPEN_DAY;
        }
    }

    /** Closes the open day; refused while orders are open. */
    record CloseDay() implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.CLOSE_DAY;
        }
    }

    /** Closes the open day if its cut hour has passed, whatever is open; otherwise nothing. */
    record CutDay() implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.CUT_DAY;
        }
    }

    /**
     * Has the newest day go on after it was closed too early; refused once its cut hour has passed.
     *
     * @param date the day that is meant, if it was said
     * @param reason why, in a few words; never empty
     */
    record ReopenDay(Optional<LocalDate> date, String reason) implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.REOPEN_DAY;
        }
    }

    /**
     * Takes an order; opens a day when none is open.
     *
     * @param name the guest's name, or empty
     * @param told what the guest was told already, if anything
     */
    record Place(String name, boolean toGo, List<Asked> lines, Optional<Told> told)
            implements OrderCommand {
        public Place {
            lines = List.copyOf(lines);
        }

        /** An order of which nothing was told yet. */
        public Place(String name, boolean toGo, List<Asked> lines) {
            this(name, toGo, lines, Optional.empty());
        }

        @Override
        public Kind kind() {
            return Kind.PLACE;
        }
    }

    /**
     * Edits an order.
     *
     * @param version the version that the editor saw
     * @param lines the whole order as it should be
     * @param reason why, or empty
     */
    record Change(
            String order, int version, String name, boolean toGo, List<Asked> lines, String reason)
            implements OrderCommand {
        public Change {
            lines = List.copyOf(lines);
        }

        @Override
        public Kind kind() {
            return Kind.CHANGE;
        }
    }

    /**
     * Takes something off an order, also one that the guest has already.
     *
     * @param version the version that the editor saw, or 0 for whatever it is now
     * @param discount in place of what was taken off before
     */
    record SetDiscount(String order, int version, Discount discount) implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.DISCOUNT;
        }
    }

    /**
     * Cancels an order.
     *
     * @param version the version that the editor saw, or 0 for whatever it is now
     */
    record VoidOrder(String order, int version, String reason) implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.VOID;
        }
    }

    /** Gives a whole order to the guest. */
    record Hand(String order) implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.HAND;
        }
    }

    /** Undoes the handing over. */
    record BringBack(String order) implements OrderCommand {
        @Override
        public Kind kind() {
            return Kind.BRING_BACK;
        }
    }
}
