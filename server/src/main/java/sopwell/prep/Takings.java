package sopwell.prep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.menu.Selection;
import sopwell.prep.Kinds.Kind;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Usage;

/** What one piece of each way of making takes, by a book of recipes. Immutable. */
final class Takings {
    private final List<Map<String, BigDecimal>> takes = new ArrayList<>();
    private final List<Set<String>> own = new ArrayList<>();
    private final Set<String> used = new LinkedHashSet<>();

    Takings(RecipeBook book, List<Kind> kinds) {
        book.uses().forEach(use -> used.add(use.ingredient()));
        for (Kind kind : kinds) {
            Selection selection = kind.selection();
            Selection plain =
                    new Selection(selection.item(), selection.size(), List.of(), List.of());
            takes.add(Usage.of(book, selection));
            own.add(Usage.of(book, plain).keySet());
        }
    }

    /** What a piece of a way takes, in base units. */
    Map<String, BigDecimal> of(int kind) {
        return takes.get(kind);
    }

    /** Whether a piece can't be made at all without an ingredient, not only made otherwise. */
    boolean isOwn(int kind, String ingredient) {
        return own.get(kind).contains(ingredient);
    }

    /** What a piece of each way takes of an ingredient. */
    double[] amounts(String ingredient) {
        return takes.stream()
                .mapToDouble(t -> t.getOrDefault(ingredient, BigDecimal.ZERO).doubleValue())
                .toArray();
    }

    /** All ingredients that any piece may take, sold of late or not. */
    Set<String> ingredients() {
        return used;
    }
}
