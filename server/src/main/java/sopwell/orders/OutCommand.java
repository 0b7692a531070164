package sopwell.orders;

import sopwell.menu.Out;

/** What can be asked about what is out. */
public sealed interface OutCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        MARK,
        LIFT,
        LIFT_DUE
    }

    /** This command's kind. */
    Kind kind();

    /**
     * Says that something can't be sold; opens a day when none is open.
     *
     * @param left how many may still be sold, 0 for none
     * @param minutes for how long, or 0 for the rest of the day
     */
    record Mark(Out out, int left, int minutes) implements OutCommand {
        @Override
        public Kind kind() {
            return Kind.MARK;
        }
    }

    /** Says that something is sold again. */
    record Lift(Out out) implements OutCommand {
        @Override
        public Kind kind() {
            return Kind.LIFT;
        }
    }

    /** Lifts everything whose time is over; with nothing due, asks for nothing. */
    record LiftDue() implements OutCommand {
        @Override
        public Kind kind() {
            return Kind.LIFT_DUE;
        }
    }
}
