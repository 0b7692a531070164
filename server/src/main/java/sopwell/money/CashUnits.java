package sopwell.money;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import sopwell.Check;

/**
 * The notes and coins that a stand gives and takes. Immutable.
 *
 * <p>Change is counted out from the largest piece down, as people do. For the usual sets (1, 2, 5
 * and 10, 20, 25, 50 and so on) no other way takes fewer pieces; for odd sets one may.
 *
 * @param units the largest first, no value twice, every value a multiple of the smallest
 */
public record CashUnits(List<CashUnit> units) {
    /** What circulates in the United States, without what is seldom seen in a till. */
    public static final CashUnits USUAL =
            of(List.of(10_000L, 5_000L, 2_000L, 1_000L, 500L, 100L), List.of(25L, 10L, 5L, 1L));

    private static final int TENDERS_MAX = 4;

    public CashUnits {
        units =
                units.stream()
                        .sorted(Comparator.comparingLong(CashUnit::cents).reversed())
                        .toList();
        Check.that(!units.isEmpty(), "cash has notes or coins");
        long least = units.get(units.size() - 1).cents();
        Check.that(
                units.stream().map(CashUnit::cents).distinct().count() == units.size()
                        && units.stream().allMatch(unit -> unit.cents() % least == 0),
                "notes and coins have different values, multiples of the smallest");
    }

    /** A set of notes and coins by their values in cents. */
    public static CashUnits of(List<Long> notesCents, List<Long> coinsCents) {
        return new CashUnits(
                Stream.concat(
                                notesCents.stream().map(cents -> new CashUnit(cents, true)),
                                coinsCents.stream().map(cents -> new CashUnit(cents, false)))
                        .toList());
    }

    /** The smallest amount that can be paid. */
    public long leastCents() {
        return units.get(units.size() - 1).cents();
    }

    /** Whether there is a note or coin of this value. */
    public boolean has(long cents) {
        return units.stream().anyMatch(unit -> unit.cents() == cents);
    }

    /**
     * The notes and coins to give for an amount, the largest first.
     *
     * @param cents 0 or more; what is less than the smallest coin is left out
     */
    public List<CashCount> change(long cents) {
        Check.that(cents >= 0, "change is zero or more");
        List<CashCount> counts = new ArrayList<>();
        long left = cents;
        for (CashUnit unit : units) {
            if (left >= unit.cents()) {
                counts.add(new CashCount(unit, left / unit.cents()));
                left %= unit.cents();
            }
        }
        return counts;
    }

    /**
     * What a guest is likely to hand over for an amount, besides the amount itself: the amount
     * rounded up to each note, the least first, at most four.
     *
     * @param dueCents what is to be paid in cash, 0 or more
     */
    public List<Long> tendersCents(long dueCents) {
        TreeSet<Long> tenders = new TreeSet<>();
        for (CashUnit unit : units) {
            long up = (dueCents + unit.cents() - 1) / unit.cents() * unit.cents();
            if (unit.note() && up > dueCents) {
                tenders.add(up);
            }
        }
        return tenders.stream().limit(TENDERS_MAX).toList();
    }
}
