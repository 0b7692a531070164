package sopwell.mix;

import java.time.LocalDate;
import java.util.List;

/**
 * What did not go straight on one business day, beside what sold and how long guests waited.
 * Immutable.
 *
 * @param exceptions what stations asked, what was altered, void or made again
 * @param outs what could not be sold, and when
 * @param refunds what was given back to guests, by reason in the order of its letters
 * @param differences what counted tills were over or short
 */
public record ExceptionTally(
        LocalDate date,
        DayExceptions exceptions,
        List<OutTime> outs,
        List<Refunds> refunds,
        List<Difference> differences) {
    public ExceptionTally {
        outs = List.copyOf(outs);
        refunds = List.copyOf(refunds);
        differences = List.copyOf(differences);
    }

    /** So often so much was given back for one reason, as it stands in the log. */
    public record Refunds(String reason, int count, long cents) {
        /** Both together, of the same reason. */
        public Refunds plus(Refunds more) {
            return new Refunds(reason, count + more.count, Math.addExact(cents, more.cents));
        }
    }

    /** What the till of a cashier was over, or short when it is negative. */
    public record Difference(String cashier, long overCents) {}
}
