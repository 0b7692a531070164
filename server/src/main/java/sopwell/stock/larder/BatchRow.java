package sopwell.stock.larder;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sopwell.orders.Safety;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.safety.Standing;

/**
 * A batch that is on, with where it is and how it stands. Immutable.
 *
 * @param step where it is; empty when the recipe has that step no more
 * @param next where it goes from there; empty when it is counted then
 * @param standing by the clock of its step; empty when nothing is watched
 */
public record BatchRow(
        Batch batch,
        Optional<PrepStep> step,
        Optional<PrepStep> next,
        Optional<Standing> standing) {
    /** Every batch that is on, what must be done soonest first, then as they were started. */
    public static List<BatchRow> all(RecipeBook book, Larder larder, Safety safety, long nowMs) {
        return larder.batches().stream()
                .map(
                        batch ->
                                new BatchRow(
                                        batch,
                                        BatchWatch.step(batch, book),
                                        BatchWatch.next(batch, book),
                                        BatchWatch.of(batch, book, safety, nowMs)))
                .sorted(Comparator.comparingInt(BatchRow::calm))
                .toList();
    }

    /** Whether something must be done with it now, or it is too late. */
    public boolean isUrgent() {
        return calm() < 2;
    }

    private int calm() {
        return standing.map(
                        one ->
                                switch (one.state()) {
                                    case FAILED -> 0;
                                    case ACT -> 1;
                                    case FINE, DONE -> 2;
                                })
                .orElse(2);
    }
}
