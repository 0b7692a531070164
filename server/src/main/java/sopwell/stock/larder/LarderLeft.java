package sopwell.stock.larder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sopwell.stock.SalePace;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.RecipeBook;

/**
 * What is left of an ingredient, and until when that lasts. Immutable.
 *
 * <p>The pace is that of the last 45 minutes of sales ({@link SalePace}); what is ordered and not
 * made yet is taken off already.
 *
 * @param held what the books have; empty when it was never counted
 * @param runsOutAtMs when nothing is left at the pace of late, milliseconds since 1970-01-01 UTC; 0
 *     when nobody knows
 */
public record LarderLeft(Ingredient ingredient, Optional<Held> held, long runsOutAtMs) {
    /** Everything that is kept, shelf by shelf. */
    public static List<LarderLeft> all(RecipeBook book, Larder larder, long nowMs) {
        List<LarderLeft> all = new ArrayList<>();
        for (Ingredient ingredient : shelves(book)) {
            Optional<Held> held = larder.held(ingredient.id());
            Optional<SalePace> pace = larder.pace(ingredient.id(), nowMs);
            long runsOutAtMs =
                    held.isEmpty() || pace.isEmpty()
                            ? 0
                            : nowMs + pace.get().lastsMs(Math.max(0, held.get().expected()));
            all.add(new LarderLeft(ingredient, held, runsOutAtMs));
        }
        return all;
    }

    /**
     * The ingredients in the order in which somebody comes by who counts. What has no shelf, such
     * as water, is not counted.
     */
    private static List<Ingredient> shelves(RecipeBook book) {
        return book.ingredients().stream()
                .filter(one -> one.place().isNamed())
                .sorted(Comparator.comparingInt(one -> one.place().order()))
                .toList();
    }

    /** What is left by the books, in thousandths of the base unit, not below 0. */
    public Optional<Long> left() {
        return held.map(one -> Math.max(0, one.expected()));
    }

    /** Whether it runs out before a time. */
    public boolean isOutBefore(long ms) {
        return runsOutAtMs != 0 && runsOutAtMs < ms;
    }
}
