package sopwell.till;

import java.util.List;
import java.util.Optional;
import sopwell.money.CashCount;

/**
 * One till from its opening to its closing. Immutable.
 *
 * @param cashier who answers for it
 * @param openedAtMs milliseconds since 1970-01-01 UTC
 * @param floatCents what was in it at first
 * @param takings what was paid and given back at it
 * @param inCents what was paid in
 * @param outCents what was paid out
 * @param counted how it was closed, if it was
 */
public record Drawer(
        String cashier,
        long openedAtMs,
        long floatCents,
        Takings takings,
        long inCents,
        long outCents,
        Optional<Counted> counted) {
    /**
     * How a till was closed. Immutable.
     *
     * @param atMs milliseconds since 1970-01-01 UTC
     * @param expectedCents what should have been in it
     * @param counts the notes and coins that were
     */
    public record Counted(
            long atMs, long expectedCents, long countedCents, List<CashCount> counts) {
        public Counted {
            counts = List.copyOf(counts);
        }

        /** What is there more than there should be; negative if something is missing. */
        public long overCents() {
            return countedCents - expectedCents;
        }
    }

    static Drawer opened(TillEvent.TillOpened opened, long atMs) {
        return new Drawer(
                opened.cashier(), atMs, opened.floatCents(), Takings.NONE, 0, 0, Optional.empty());
    }

    public boolean isOpen() {
        return counted.isEmpty();
    }

    /** What should be in it now. */
    public long expectedCents() {
        return floatCents + takings.drawerCents() + inCents - outCents;
    }

    Drawer with(Takings newTakings) {
        return new Drawer(cashier, openedAtMs, floatCents, newTakings, inCents, outCents, counted);
    }

    Drawer moved(long moreInCents, long moreOutCents) {
        return new Drawer(
                cashier,
                openedAtMs,
                floatCents,
                takings,
                inCents + moreInCents,
                outCents + moreOutCents,
                counted);
    }

    Drawer closed(TillEvent.TillClosed closed, long atMs) {
        return new Drawer(
                cashier,
                openedAtMs,
                floatCents,
                takings,
                inCents,
                outCents,
                Optional.of(
                        new Counted(
                                atMs,
                                closed.expectedCents(),
                                closed.countedCents(),
                                closed.counts())));
    }
}
