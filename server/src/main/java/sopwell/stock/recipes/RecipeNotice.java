package sopwell.stock.recipes;

import java.util.List;

/**
 * Something in a book of recipes that may be meant, but is worth a look. Immutable.
 *
 * @param args what its sentence names, in the order that the kind gives
 */
public record RecipeNotice(Kind kind, List<String> args) {
    public RecipeNotice {
        args = List.copyOf(args);
    }

    /** What is worth a look. The screens' texts have a sentence for each. */
    public enum Kind {
        /** The ingredient that nothing takes. */
        UNUSED,
        /** The ingredient, its lead time in days. */
        LONG_LEAD,
        /** The item that no use says anything of. */
        ITEM_TAKES_NOTHING,
        /** The item, the size that takes fewer things than another. */
        SIZE_LEFT_OUT,
        /** The item or modifier, the allergen that it does not name, what has it. */
        ALLERGEN_NOT_NAMED
    }
}
