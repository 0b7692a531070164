package sopwell.till;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.money.CashCount;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;

/**
 * What was counted in a till. Immutable.
 *
 * @param counts the notes and coins of which there are any, the largest first
 */
public record Counting(List<CashCount> counts) {
    public Counting {
        counts = List.copyOf(counts);
    }

    /** What is wrong with a count, if anything. */
    static Optional<Refusal> fault(List<TillCommand.Pieces> counted, CashUnits units) {
        for (TillCommand.Pieces pieces : counted) {
            if (!units.has(pieces.cents())) {
                return Optional.of(Refusal.of(Reason.UNKNOWN_UNIT, pieces.cents()));
            }
            if (pieces.pieces() < 0 || pieces.pieces() > Limits.CASH_PIECES_MAX) {
                return Optional.of(Refusal.of(Reason.COUNT_WRONG, Limits.CASH_PIECES_MAX));
            }
        }
        return Optional.empty();
    }

    /** A count without fault; what was counted in several goes is added up. */
    public static Counting of(List<TillCommand.Pieces> counted, CashUnits units) {
        List<CashCount> counts = new ArrayList<>();
        for (CashUnit unit : units.units()) {
            long pieces =
                    counted.stream()
                            .filter(one -> one.cents() == unit.cents())
                            .mapToLong(TillCommand.Pieces::pieces)
                            .sum();
            if (pieces > 0) {
                counts.add(new CashCount(unit, pieces));
            }
        }
        return new Counting(counts);
    }

    /** What it comes to. */
    public long cents() {
        return counts.stream().mapToLong(CashCount::cents).reduce(0, Math::addExact);
    }
}
