package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Selection;

/**
 * What one sold piece takes. Stateless.
 *
 * <p>An item's own amount is that of its size, else that of any size. Each chosen option first
 * scales that amount if it is a percentage; then the options that are amounts are added. Where
 * several uses of one option would do, the one that names the size comes first, then the one that
 * names the item. An option that scales what the item does not take changes nothing.
 */
public final class Usage {
    private static final int HUNDRED_DIGITS = 2;

    private Usage() {}

    /**
     * What one piece takes of each ingredient, made or bought, in base units and exact; what it
     * takes nothing of is not listed.
     */
    public static Map<String, BigDecimal> of(RecipeBook book, Selection selection) {
        Set<String> taken = new LinkedHashSet<>();
        book.uses().forEach(use -> taken.add(use.ingredient()));
        Map<String, BigDecimal> amounts = new LinkedHashMap<>();
        for (String ingredient : taken) {
            List<Use> uses =
                    book.uses().stream().filter(u -> u.ingredient().equals(ingredient)).toList();
            BigDecimal amount = amount(uses, selection);
            if (amount.signum() > 0) {
                amounts.put(ingredient, amount);
            }
        }
        return amounts;
    }

    private static BigDecimal amount(List<Use> uses, Selection selection) {
        BigDecimal amount =
                nearest(uses, selection, "", false).map(Use::amount).orElse(BigDecimal.ZERO);
        BigDecimal added = BigDecimal.ZERO;
        for (String option : selection.options()) {
            Optional<Use> scaled = nearest(uses, selection, option, true);
            if (scaled.isPresent()) {
                BigDecimal percent = BigDecimal.valueOf(scaled.get().percent());
                amount = amount.multiply(percent).movePointLeft(HUNDRED_DIGITS);
            }
            Optional<Use> more = nearest(uses, selection, option, false);
            added = added.add(more.map(Use::amount).orElse(BigDecimal.ZERO));
        }
        return Amounts.plain(amount.add(added));
    }

    /** The use of this option (or of none) that says most about the selection. */
    private static Optional<Use> nearest(
            List<Use> uses, Selection selection, String option, boolean percent) {
        return uses.stream()
                .filter(use -> use.option().equals(option) && use.isPercent() == percent)
                .filter(use -> use.item().isEmpty() || use.item().equals(selection.item()))
                .filter(use -> use.size().isEmpty() || use.size().equals(selection.size()))
                .max(Comparator.comparing(Usage::nearness));
    }

    private static int nearness(Use use) {
        return (use.size().isEmpty() ? 0 : 2) + (use.item().isEmpty() ? 0 : 1);
    }
}
