package sopwell.menu;

import java.util.List;

/** The checks of modifier groups: numbers, defaults, options and bundles. Stateless. */
final class MenuCheckGroups {
    private MenuCheckGroups() {}

    static void faults(MenuParts parts, Faults faults) {
        for (int g = 0; g < parts.groups().size(); g++) {
            Group group = parts.groups().get(g);
            String place = "/groups/" + g;
            choose(place, group, faults);
            defaults(place, group, faults);
            options(place, group, faults);
            bundles(place, group, faults);
        }
    }

    private static void choose(String place, Group group, Faults faults) {
        int count = group.options().size();
        if (count == 0) {
            faults.add(
                    place + "/options",
                    "The group \"" + group.id() + "\" has no options.",
                    "A group has at least one option.");
            return;
        }
        MenuCheck.number(place + "/choose/min", group.chooseMin(), 0, count, faults);
        MenuCheck.number(place + "/choose/max", group.chooseMax(), 1, count, faults);
        if (group.chooseMin() > group.chooseMax()) {
            faults.add(
                    place + "/choose",
                    "At least "
                            + group.chooseMin()
                            + " but at most "
                            + group.chooseMax()
                            + " can't be chosen.",
                    "\"min\" is not more than \"max\".");
        }
    }

    private static void defaults(String place, Group group, Faults faults) {
        List<String> defaults = group.defaults();
        members(place + "/default", group, defaults, faults);
        if (defaults.size() < group.chooseMin() || defaults.size() > group.chooseMax()) {
            faults.add(
                    place + "/default",
                    "The house's default is " + defaults.size() + " options.",
                    "The default keeps to \"choose\": " + range(group) + ".");
        }
        boolean noneCanBeSaid = group.bundles().stream().anyMatch(b -> b.options().isEmpty());
        if (!defaults.isEmpty() && group.chooseMin() == 0 && !noneCanBeSaid) {
            faults.add(
                    place + "/bundles",
                    "A guest may want none of \"" + group.id() + "\", but no word says so.",
                    "Add a bundle without options, or choose at least 1.");
        }
    }

    private static void options(String place, Group group, Faults faults) {
        List<String> ids = group.options().stream().map(Option::id).toList();
        for (int o = 0; o < group.options().size(); o++) {
            Option option = group.options().get(o);
            String here = place + "/options/" + o;
            MenuCheck.price(here, option.priceCents(), faults);
            MenuCheck.allergens(here, option.allergens(), faults);
            if (option.insteadOf().equals(option.id())) {
                faults.add(
                        here + "/insteadOf",
                        "\"" + option.id() + "\" stands instead of itself.",
                        "Name the option that usually comes along, or leave it out.");
            } else if (!option.insteadOf().isEmpty() && !ids.contains(option.insteadOf())) {
                faults.unknown(
                        here + "/insteadOf", "option of this group", option.insteadOf(), ids);
            }
        }
    }

    private static void bundles(String place, Group group, Faults faults) {
        for (int b = 0; b < group.bundles().size(); b++) {
            List<String> options = group.bundles().get(b).options();
            String here = place + "/bundles/" + b + "/options";
            members(here, group, options, faults);
            if (options.size() < group.chooseMin() || options.size() > group.chooseMax()) {
                faults.add(
                        here,
                        "The bundle is " + options.size() + " options of \"" + group.id() + "\".",
                        "The group allows " + range(group) + ".");
            }
        }
    }

    private static void members(String place, Group group, List<String> named, Faults faults) {
        List<String> ids = group.options().stream().map(Option::id).toList();
        for (int n = 0; n < named.size(); n++) {
            if (!ids.contains(named.get(n))) {
                faults.unknown(place + "/" + n, "option of this group", named.get(n), ids);
            }
        }
        MenuCheck.repeats(place, named, faults);
    }

    private static String range(Group group) {
        return group.chooseMin() + " to " + group.chooseMax();
    }
}
