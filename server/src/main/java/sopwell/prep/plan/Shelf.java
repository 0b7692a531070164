package sopwell.prep.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sopwell.prep.quantity.Leftovers;
import sopwell.prep.quantity.PathCost.Lot;

/** What is there of one ingredient and what was decided on since. Not thread-safe: for one plan. */
final class Shelf {
    private final List<Lot> lots;
    private final Leftovers leftovers;

    /** From what is there or in process, once all that is asked for is known. */
    Shelf(Need need, List<Lot> stock) {
        this.lots = new ArrayList<>(stock);
        lots.sort(Comparator.comparingInt(Lot::last));
        this.leftovers = new Leftovers(need.paths(), lots);
    }

    /** Adds a decided lot; decisions go forward in time. */
    void add(Lot lot) {
        lots.add(lot);
        lots.sort(Comparator.comparingInt(Lot::last));
        leftovers.add(lot);
    }

    /** All lots, the first to expire first. */
    List<Lot> lots() {
        return lots;
    }

    Leftovers leftovers() {
        return leftovers;
    }
}
