package sopwell.till;

import java.util.List;
import sopwell.log.Event;
import sopwell.money.CashCount;

/** What happens to money. */
public sealed interface TillEvent extends Event {
    /** Which record an event is, for switches that must be complete. */
    enum Kind {
        PAID,
        REFUNDED,
        OPENED,
        PAID_IN,
        PAID_OUT,
        CLOSED
    }

    /** This event's kind. */
    Kind kind();

    /** Whose till it is in; for payments and refunds empty, or a name without an open till. */
    String cashier();

    /**
     * A guest pays for an order, or a part of it.
     *
     * @param leftCents what is due on the order afterwards, 0 or more
     */
    record OrderPaid(String order, String cashier, Means means, Payment payment, long leftCents)
            implements TillEvent {
        @Override
        public Kind kind() {
            return Kind.PAID;
        }
    }

    /**
     * Money goes back to a guest.
     *
     * @param cents 1 or more
     * @param roundingCents what rounding cash adds to that, negative if it takes off
     * @param goodwillCents how much of it is given back although the order costs what it did
     * @param reason never empty
     * @param leftCents what is due on the order afterwards; negative if more is to go back
     */
    record OrderRefunded(
            String order,
            String cashier,
            Means means,
            long cents,
            long roundingCents,
            long goodwillCents,
            String reason,
            long leftCents)
            implements TillEvent {
        @Override
        public Kind kind() {
            return Kind.REFUNDED;
        }
    }

    /**
     * A till is opened.
     *
     * @param cashier who answers for it; never empty
     * @param floatCents what is in it, 0 or more
     */
    record TillOpened(String cashier, long floatCents) implements TillEvent {
        @Override
        public Kind kind() {
            return Kind.OPENED;
        }
    }

    /** Money is put into an open till beside sales; the reason is never empty. */
    record PaidIn(String cashier, long cents, String reason) implements TillEvent {
        @Override
        public Kind kind() {
            return Kind.PAID_IN;
        }
    }

    /** Money is taken out of an open till beside refunds; the reason is never empty. */
    record PaidOut(String cashier, long cents, String reason) implements TillEvent {
        @Override
        public Kind kind() {
            return Kind.PAID_OUT;
        }
    }

    /**
     * A till is counted and closed.
     *
     * @param expectedCents what should have been in it
     * @param countedCents what was in it
     * @param counts the notes and coins it was in, those of which there were any
     */
    record TillClosed(String cashier, long expectedCents, long countedCents, List<CashCount> counts)
            implements TillEvent {
        public TillClosed {
            counts = List.copyOf(counts);
        }

        @Override
        public Kind kind() {
            return Kind.CLOSED;
        }
    }
}
