package sopwell.menu;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.WishFault.Why;

/**
 * Turns wishes into selections by the menu's rules: what is said of a group replaces its default, a
 * refusal takes an option away from the default, and a group's numbers hold. Stateless.
 */
public final class Wishes {
    private Wishes() {}

    /** Why the menu can't do this, if it can't. */
    public static Optional<WishFault> fault(Menu menu, Wish wish) {
        if (!menu.hasItem(wish.item())) {
            return fault(Why.UNKNOWN_ITEM, wish.item(), "");
        }
        Item item = menu.item(wish.item());
        if (!wish.size().isEmpty() && item.size(wish.size()).isEmpty()) {
            return fault(Why.UNKNOWN_SIZE, wish.size(), item.id());
        }
        for (List<String> said : List.of(wish.options(), wish.refused())) {
            for (String option : said) {
                if (!has(menu, item, option)) {
                    return fault(Why.UNKNOWN_OPTION, option, item.id());
                }
            }
        }
        if (!item.sizes().isEmpty() && wish.size().isEmpty() && item.defaultSize().isEmpty()) {
            return fault(Why.SIZE_MISSING, item.id(), "");
        }
        for (String option : wish.options()) {
            if (wish.refused().contains(option)) {
                return fault(Why.WANTED_AND_REFUSED, option, option);
            }
        }
        for (Group group : menu.groupsOf(item)) {
            Optional<WishFault> fault = groupFault(group, wish);
            if (fault.isPresent()) {
                return fault;
            }
        }
        return Optional.empty();
    }

    /** The selection that a wish without fault comes to. */
    public static Selection select(Menu menu, Wish wish) {
        Item item = menu.item(wish.item());
        List<String> options = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (Group group : menu.groupsOf(item)) {
            Set<String> chosen = chosen(group, wish);
            for (Option option : group.options()) {
                if (chosen.contains(option.id())) {
                    options.add(option.id());
                }
            }
            for (Option option : group.options()) {
                if (wish.refused().contains(option.id())
                        && !impliedNo(group, chosen).contains(option.id())) {
                    refused.add(option.id());
                }
            }
        }
        return new Selection(item.id(), size(item, wish), options, refused);
    }

    /** The wish that says a selection in full. */
    public static Wish asked(Menu menu, Selection selection) {
        List<String> emptied = new ArrayList<>();
        if (menu.hasItem(selection.item())) {
            for (Group group : menu.groupsOf(menu.item(selection.item()))) {
                if (group.options().stream().noneMatch(o -> selection.has(o.id()))) {
                    emptied.add(group.id());
                }
            }
        }
        return new Wish(
                selection.item(),
                selection.size(),
                selection.options(),
                emptied,
                selection.refused());
    }

    /**
     * The options of a group that a choice says no to by itself: sweet without hot means no hot.
     */
    public static Set<String> impliedNo(Group group, Set<String> chosen) {
        Set<String> implied = new HashSet<>();
        for (Option option : group.options()) {
            String other = option.insteadOf();
            if (chosen.contains(option.id()) && !other.isEmpty() && !chosen.contains(other)) {
                implied.add(other);
            }
        }
        return implied;
    }

    /** Whether an item takes an option. */
    public static boolean has(Menu menu, Item item, String option) {
        return menu.hasOption(option) && item.groups().contains(menu.groupOf(option).id());
    }

    private static Optional<WishFault> groupFault(Group group, Wish wish) {
        Set<String> chosen = chosen(group, wish);
        List<String> said =
                group.options().stream().map(Option::id).filter(wish.options()::contains).toList();
        if (wish.emptied().contains(group.id()) && !said.isEmpty()) {
            return fault(Why.NONE_AND_SOME, group.id(), said.get(0));
        }
        if (group.chooseMax() == 1 && chosen.size() > 1) {
            return fault(Why.CLASH, said.get(0), said.get(1));
        }
        if (chosen.size() > group.chooseMax()) {
            return fault(Why.TOO_MANY, group.id(), said.get(said.size() - 1));
        }
        if (chosen.size() < group.chooseMin()) {
            return fault(Why.TOO_FEW, group.id(), "");
        }
        return Optional.empty();
    }

    private static Set<String> chosen(Group group, Wish wish) {
        Set<String> chosen = new HashSet<>();
        for (Option option : group.options()) {
            if (wish.options().contains(option.id())) {
                chosen.add(option.id());
            }
        }
        if (chosen.isEmpty() && !wish.emptied().contains(group.id())) {
            chosen.addAll(group.defaults());
        }
        chosen.removeAll(wish.refused());
        return chosen;
    }

    private static String size(Item item, Wish wish) {
        if (item.sizes().isEmpty()) {
            return "";
        }
        return wish.size().isEmpty() ? item.defaultSize() : wish.size();
    }

    private static Optional<WishFault> fault(Why why, String first, String second) {
        return Optional.of(new WishFault(why, first, second));
    }
}
