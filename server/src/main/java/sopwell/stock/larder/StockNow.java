package sopwell.stock.larder;

import java.util.List;
import java.util.Optional;
import sopwell.orders.Safety;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.safety.HoldingClock;
import sopwell.stock.safety.Standing;

/**
 * What is kept and made, as it is at one moment. Immutable.
 *
 * @param left every ingredient in the order of the shelves
 * @param batches what is on, most urgent first
 * @param labels what was made and is kept, oldest first
 * @param compared what was counted today against the books
 * @param yields what the last batches gave, by ingredient
 * @param slicer how the slicer stands; empty when it was never said to be cleaned
 * @param clocks of food that is held by time alone
 */
public record StockNow(
        RecipeBook book,
        List<LarderLeft> left,
        List<BatchRow> batches,
        List<Label> labels,
        List<Compared> compared,
        List<Yields> yields,
        Optional<Standing> slicer,
        List<TimeClock> clocks) {
    public StockNow {
        left = List.copyOf(left);
        batches = List.copyOf(batches);
        labels = List.copyOf(labels);
        compared = List.copyOf(compared);
        yields = List.copyOf(yields);
        clocks = List.copyOf(clocks);
    }

    /** What is kept now. */
    public static StockNow of(RecipeBook book, Larder larder, Safety safety, long nowMs) {
        return new StockNow(
                book,
                LarderLeft.all(book, larder, nowMs),
                BatchRow.all(book, larder, safety, nowMs),
                larder.labels(),
                larder.compared(),
                larder.yields(),
                larder.slicerCleanedAtMs() == 0
                        ? Optional.empty()
                        : Optional.of(
                                HoldingClock.slicer(safety, larder.slicerCleanedAtMs(), nowMs)),
                larder.clocks());
    }
}
