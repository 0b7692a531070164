package sopwell.menu;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import sopwell.Limits;
import sopwell.menu.Step.What;

/** The checks of build steps, and that every choice reaches a cook's eyes. Stateless. */
final class MenuCheckSteps {
    private final MenuParts parts;
    private final Faults faults;
    private final Map<String, Integer> order = new HashMap<>();

    private MenuCheckSteps(MenuParts parts, Faults faults) {
        this.parts = parts;
        this.faults = faults;
        for (int s = 0; s < parts.steps().size(); s++) {
            order.putIfAbsent(parts.steps().get(s).id(), s);
        }
    }

    static void faults(MenuParts parts, Faults faults) {
        MenuCheckSteps check = new MenuCheckSteps(parts, faults);
        for (int s = 0; s < parts.steps().size(); s++) {
            check.step("/steps/" + s, parts.steps().get(s));
        }
        for (int i = 0; i < parts.items().size(); i++) {
            Item item = parts.items().get(i);
            check.sequence("/items/" + i + "/steps", item);
            check.sight("/items/" + i, item);
        }
    }

    private void step(String place, Step step) {
        List<String> stations = parts.stations().stream().map(Station::id).toList();
        if (!stations.contains(step.station())) {
            faults.unknown(place + "/station", "station", step.station(), stations);
        }
        MenuCheck.number(place + "/seconds", step.seconds(), 0, Limits.STEP_SECONDS_MAX, faults);
        if (step.shows().isEmpty()) {
            faults.add(
                    place + "/shows",
                    "The step \"" + step.id() + "\" shows a cook nothing.",
                    "A step shows \"item\", \"size\", \"service\" or a \"group:…\".");
        }
        List<String> shown = step.shows().stream().map(MenuCheckSteps::written).toList();
        MenuCheck.repeats(place + "/shows", shown, faults);
        List<String> groups = parts.groups().stream().map(Group::id).toList();
        for (int n = 0; n < step.shows().size(); n++) {
            Step.Show show = step.shows().get(n);
            if (show.what() != What.GROUP) {
                continue;
            }
            String here = place + "/shows/" + n;
            if (!groups.contains(show.group())) {
                faults.unknown(here, "group", show.group(), groups);
            } else if (parts.items().stream().noneMatch(i -> meets(i, step, show.group()))) {
                faults.add(
                        here,
                        "No item that has the step \""
                                + step.id()
                                + "\" has the group \""
                                + show.group()
                                + "\".",
                        "Leave it out, or give such an item that group.");
            }
        }
    }

    private static boolean meets(Item item, Step step, String group) {
        return item.steps().contains(step.id()) && item.groups().contains(group);
    }

    private void sequence(String place, Item item) {
        MenuCheck.repeats(place, item.steps(), faults);
        int last = -1;
        for (int n = 0; n < item.steps().size(); n++) {
            String id = item.steps().get(n);
            Integer at = order.get(id);
            if (at == null) {
                faults.unknown(place + "/" + n, "step", id, order.keySet());
                continue;
            }
            if (at < last) {
                faults.add(
                        place + "/" + n,
                        "The step \"" + id + "\" comes after one that is made later.",
                        "An item's steps stand in the order of the menu's \"steps\".");
            }
            last = Math.max(last, at);
        }
    }

    private void sight(String place, Item item) {
        List<Step> steps = stepsOf(item);
        if (steps.stream().allMatch(Step::onlyForChoices)) {
            faults.add(
                    place + "/steps",
                    "Nothing is made at any station when \"" + item.id() + "\" is sold plain.",
                    "An item has at least one step that shows more than groups.");
        }
        for (int g = 0; g < item.groups().size(); g++) {
            String group = item.groups().get(g);
            if (steps.stream().noneMatch(step -> step.showsGroup(group))) {
                faults.add(
                        place + "/groups/" + g,
                        "No step of \"" + item.id() + "\" shows the group \"" + group + "\".",
                        "Otherwise the kitchen never sees the choice: let a step show it.");
            }
        }
        boolean sizeShown = steps.stream().anyMatch(step -> shows(step, What.SIZE));
        if (!item.sizes().isEmpty() && !sizeShown) {
            faults.add(
                    place + "/sizes",
                    "No step of \"" + item.id() + "\" shows the size.",
                    "Otherwise the kitchen never sees it: let a step show \"size\".");
        }
        Set<String> stations = new LinkedHashSet<>();
        steps.forEach(step -> stations.add(step.station()));
        for (String station : stations) {
            boolean named =
                    steps.stream()
                            .filter(step -> step.station().equals(station))
                            .anyMatch(step -> shows(step, What.ITEM));
            if (!named) {
                faults.add(
                        place + "/steps",
                        "At \""
                                + station
                                + "\" no step of \""
                                + item.id()
                                + "\" says what is made.",
                        "At each station one of an item's steps shows \"item\".");
            }
        }
    }

    private List<Step> stepsOf(Item item) {
        List<Step> steps = new ArrayList<>();
        for (String id : item.steps()) {
            Integer at = order.get(id);
            if (at != null) {
                steps.add(parts.steps().get(at));
            }
        }
        return steps;
    }

    private static String written(Step.Show show) {
        String what = show.what().name().toLowerCase(Locale.ROOT);
        return show.what() == What.GROUP ? what + ":" + show.group() : what;
    }

    private static boolean shows(Step step, What what) {
        return step.shows().stream().anyMatch(show -> show.what() == what);
    }
}
