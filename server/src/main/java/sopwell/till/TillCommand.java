package sopwell.till;

import java.util.List;

/** What can be asked about money. An amount of 0 where one may be left out means the usual one. */
public sealed interface TillCommand {
    /** Which record a command is, for switches that must be complete. */
    enum Kind {
        PAY,
        REFUND,
        OPEN,
        PAY_IN,
        PAY_OUT,
        CLOSE
    }

    /** This command's kind. */
    Kind kind();

    /** Whose till is meant; empty for the one that is open. */
    String cashier();

    /**
     * Takes a guest's money for an order.
     *
     * @param cents how much of the order is paid, or 0 for all that is due
     * @param tenderedCents what is handed over, or 0 for exactly what is to be paid
     * @param tipCents what of it is a tip
     */
    record Pay(
            String order,
            String cashier,
            Means means,
            long cents,
            long tenderedCents,
            long tipCents)
            implements TillCommand {
        @Override
        public Kind kind() {
            return Kind.PAY;
        }
    }

    /**
     * Gives a guest money back.
     *
     * @param cents how much, or 0 for all that is due back and was paid by these means
     * @param dueAgain whether the payment was a mistake, so that what goes back is due again; else
     *     what is more than is due back is goodwill
     */
    record Refund(
            String order, String cashier, Means means, long cents, boolean dueAgain, String reason)
            implements TillCommand {
        @Override
        public Kind kind() {
            return Kind.REFUND;
        }
    }

    /** Opens a till, and the day if none is open. */
    record OpenTill(String cashier, long floatCents) implements TillCommand {
        @Override
        public Kind kind() {
            return Kind.OPEN;
        }
    }

    /** Puts money into a till. */
    record PayIn(String cashier, long cents, String reason) implements TillCommand {
        @Override
        public Kind kind() {
            return Kind.PAY_IN;
        }
    }

    /** Takes money out of a till. */
    record PayOut(String cashier, long cents, String reason) implements TillCommand {
        @Override
        public Kind kind() {
            return Kind.PAY_OUT;
        }
    }

    /** Closes a till with what was counted in it. */
    record CloseTill(String cashier, List<Pieces> counts) implements TillCommand {
        public CloseTill {
            counts = List.copyOf(counts);
        }

        @Override
        public Kind kind() {
            return Kind.CLOSE;
        }
    }

    /**
     * So many notes or coins of a value, as they were counted.
     *
     * @param cents the value of one
     */
    record Pieces(long cents, long pieces) {}
}
