package sopwell.sim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.menu.Step;

/**
 * What is to be made, and what a station sees of it: the slow, obvious twin of the router and the
 * cells. Immutable.
 */
record Make(Selection selection, int quantity, boolean toGo, String revision) {
    /** The stations that have work with it. */
    static Set<String> stations(Menu menu, Selection selection) {
        Set<String> stations = new HashSet<>();
        for (String id : menu.item(selection.item()).steps()) {
            if (isNeeded(menu, menu.step(id), selection)) {
                stations.add(menu.step(id).station());
            }
        }
        return stations;
    }

    /** Everything that a station can read of it. */
    List<String> seenAt(Menu menu, String station) {
        List<String> words = new ArrayList<>();
        words.add(quantity + " " + selection.item());
        Item item = menu.item(selection.item());
        for (String id : item.steps()) {
            Step step = menu.step(id);
            if (step.station().equals(station) && isNeeded(menu, step, selection)) {
                words.add("step " + id);
                step.shows().forEach(show -> words.add(word(menu, item, show)));
            }
        }
        return words;
    }

    private String word(Menu menu, Item item, Step.Show show) {
        return switch (show.what()) {
            case ITEM -> item.id();
            case SIZE -> "size " + selection.size();
            case SERVICE -> "to go " + toGo;
            case GROUP ->
                    item.groups().contains(show.group()) ? choice(menu.group(show.group())) : "";
        };
    }

    private String choice(Group group) {
        List<String> words = new ArrayList<>();
        for (Option option : group.options()) {
            boolean chosen = selection.options().contains(option.id());
            boolean implied =
                    group.options().stream()
                            .anyMatch(
                                    other ->
                                            selection.options().contains(other.id())
                                                    && other.insteadOf().equals(option.id())
                                                    && !chosen);
            boolean refused = implied || selection.refused().contains(option.id());
            words.add((refused ? "no " : chosen ? "yes " : "- ") + option.id());
        }
        return String.join(",", words);
    }

    private static boolean isNeeded(Menu menu, Step step, Selection selection) {
        boolean needed = false;
        for (Step.Show show : step.shows()) {
            if (show.what() != Step.What.GROUP) {
                return true;
            }
            for (Option option : menu.group(show.group()).options()) {
                needed |= selection.options().contains(option.id());
                needed |= selection.refused().contains(option.id());
            }
        }
        return needed;
    }
}
