package sopwell.call;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Option;
import sopwell.menu.Selection;

/**
 * What a selection says of one group. Immutable.
 *
 * @param chosen the options chosen, in the menu's order
 * @param refused the options refused in so many words, in the menu's order
 */
record Choices(Group group, List<Option> chosen, List<Option> refused) {
    Choices {
        chosen = List.copyOf(chosen);
        refused = List.copyOf(refused);
    }

    static Choices of(Group group, Selection selection) {
        List<Option> chosen = new ArrayList<>();
        List<Option> refused = new ArrayList<>();
        for (Option option : group.options()) {
            if (selection.has(option.id())) {
                chosen.add(option);
            }
            if (selection.refused().contains(option.id())) {
                refused.add(option);
            }
        }
        return new Choices(group, chosen, refused);
    }

    /** Whether the choice is what the house does when nothing is wanted, refusals heeded. */
    boolean isDefault() {
        Set<String> house = new HashSet<>(group.defaults());
        house.removeAll(ids(refused));
        return house.equals(ids(chosen));
    }

    /**
     * The bundle that says the choice: exactly, or together with the refusals when it saves words.
     */
    Optional<Bundle> bundle() {
        Set<String> exactly = ids(chosen);
        Optional<Bundle> exact =
                group.bundles().stream()
                        .filter(bundle -> new HashSet<>(bundle.options()).equals(exactly))
                        .findFirst();
        if (exact.isPresent() || chosen.size() < 2) {
            return exact;
        }
        Set<String> refusedIds = ids(refused);
        return group.bundles().stream()
                .filter(
                        bundle -> {
                            Set<String> left = new HashSet<>(bundle.options());
                            left.removeAll(refusedIds);
                            return left.equals(exactly);
                        })
                .findFirst();
    }

    private static Set<String> ids(List<Option> options) {
        Set<String> ids = new HashSet<>();
        options.forEach(option -> ids.add(option.id()));
        return ids;
    }
}
