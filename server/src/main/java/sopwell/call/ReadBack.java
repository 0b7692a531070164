package sopwell.call;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.menu.Size;
import sopwell.menu.Wishes;

/**
 * Says a line in full words, for reading back to the guest: "2 × regular beef, dry, sweet, no hot".
 * The size is always said; of the modifiers, what departs from the house's default and every group
 * that needs a choice; what is refused, also when it follows from a choice. Stateless.
 */
public final class ReadBack {
    private ReadBack() {}

    /**
     * One line in one language.
     *
     * @param quantity 1 to 99; 1 is not said
     */
    public static String say(Menu menu, Lang lang, int quantity, Selection selection) {
        Item item = menu.item(selection.item());
        List<String> parts = new ArrayList<>();
        parts.add((quantity == 1 ? "" : quantity + " \u00d7 ") + what(lang, item, selection));
        for (Group group : menu.groupsOf(item)) {
            addGroup(lang, Choices.of(group, selection), parts);
        }
        return String.join(", ", parts);
    }

    private static String what(Lang lang, Item item, Selection selection) {
        String name = item.name().in(lang);
        Optional<Size> size = item.size(selection.size());
        if (size.isEmpty()) {
            return name;
        }
        String sizeName = size.get().name().in(lang);
        return switch (lang) {
            case EN -> sizeName + " " + name;
            case ES -> name + " " + sizeName;
        };
    }

    private static void addGroup(Lang lang, Choices choices, List<String> parts) {
        Group group = choices.group();
        Set<String> chosen = new HashSet<>();
        choices.chosen().forEach(option -> chosen.add(option.id()));
        if (group.chooseMin() > 0 || !choices.isDefault()) {
            // One option is clearer by its own name than by a bundle's.
            Optional<Bundle> bundle = chosen.size() == 1 ? Optional.empty() : choices.bundle();
            if (bundle.isPresent()) {
                parts.add(bundle.get().name().in(lang));
            } else {
                choices.chosen().forEach(option -> parts.add(option.name().in(lang)));
            }
        }
        Set<String> implied = Wishes.impliedNo(group, chosen);
        for (Option option : group.options()) {
            if (choices.refused().contains(option) || implied.contains(option.id())) {
                parts.add(no(lang) + " " + option.name().in(lang));
            }
        }
    }

    private static String no(Lang lang) {
        return switch (lang) {
            case EN -> "no";
            case ES -> "sin";
        };
    }
}
