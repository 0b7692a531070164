package sopwell.menu;

import java.util.List;

/**
 * What was asked of one item, before the house's defaults are filled in. Immutable.
 *
 * @param size the size's id, or empty when none was said
 * @param options options said, in any order, bundles already opened
 * @param emptied groups for which "none" was said
 * @param refused options said no to
 */
public record Wish(
        String item,
        String size,
        List<String> options,
        List<String> emptied,
        List<String> refused) {
    public Wish {
        options = List.copyOf(options);
        emptied = List.copyOf(emptied);
        refused = List.copyOf(refused);
    }
}
