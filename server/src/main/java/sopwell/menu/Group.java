package sopwell.menu;

import java.util.List;

/**
 * Modifiers of one kind. Immutable.
 *
 * @param chooseMin how many must be chosen
 * @param chooseMax how many may be chosen; 1 means that two of them clash
 * @param defaults what the house does when nothing is said
 */
public record Group(
        String id,
        LocalText name,
        int chooseMin,
        int chooseMax,
        List<String> defaults,
        List<Option> options,
        List<Bundle> bundles) {
    public Group {
        defaults = List.copyOf(defaults);
        options = List.copyOf(options);
        bundles = List.copyOf(bundles);
    }
}
