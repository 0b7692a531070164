package sopwell.menu;

import java.util.List;

/**
 * One way of making one item, complete: the house's defaults are spelled out. Immutable. Two
 * selections that are equal are made alike.
 *
 * @param size the size's id, or empty for an item without sizes
 * @param options the chosen options, in the menu's order
 * @param refused options that the guest said no to, in the menu's order; what follows from the
 *     choice by itself (see {@link Option#insteadOf}) is not listed
 */
public record Selection(String item, String size, List<String> options, List<String> refused) {
    public Selection {
        options = List.copyOf(options);
        refused = List.copyOf(refused);
    }

    /** Whether an option is chosen. */
    public boolean has(String option) {
        return options.contains(option);
    }
}
