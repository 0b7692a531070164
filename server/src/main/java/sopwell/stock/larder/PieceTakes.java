package sopwell.stock.larder;

import java.util.HashMap;
import java.util.Map;
import sopwell.Limits;
import sopwell.menu.Selection;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Usage;

/**
 * What one piece takes by a book of recipes, in thousandths of base units. Remembers what it worked
 * out, to save work. Not thread-safe: its owner is one thread.
 */
public final class PieceTakes {
    private final RecipeBook book;
    private final Map<Selection, Map<String, Long>> known = new HashMap<>();

    public PieceTakes(RecipeBook book) {
        this.book = book;
    }

    /** What one piece takes of each ingredient; less than half a thousandth is nothing. */
    public Map<String, Long> of(Selection selection) {
        Map<String, Long> found = known.get(selection);
        if (found != null) {
            return found;
        }
        Map<String, Long> took = new HashMap<>();
        Usage.of(book, selection)
                .forEach((id, amount) -> took.put(id, Measures.thousandths(amount)));
        took.values().removeIf(thousandths -> thousandths == 0);
        if (known.size() < Limits.SELECTIONS_REMEMBERED_MAX) {
            known.put(selection, Map.copyOf(took));
        }
        return took;
    }
}
