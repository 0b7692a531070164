package sopwell.kitchen;

import java.util.ArrayList;
import java.util.List;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Station;
import sopwell.menu.Step;

/**
 * Which steps a selection needs, and at which stations. Stateless.
 *
 * <p>Every step of the item is made exactly once, in the menu's order of assembly; a step that only
 * shows modifiers falls away when none of them is chosen or refused.
 */
public final class Router {
    private Router() {}

    /** The stations that have work with a selection, in the menu's order. */
    public static List<String> stations(Menu menu, Selection selection) {
        List<String> stations = new ArrayList<>();
        for (Station station : menu.stations()) {
            if (hasWork(menu, selection, station.id())) {
                stations.add(station.id());
            }
        }
        return stations;
    }

    /** The steps of a selection at one station, in order of assembly. */
    public static List<Step> steps(Menu menu, Selection selection, String station) {
        Item item = menu.item(selection.item());
        List<Step> steps = new ArrayList<>();
        for (String id : item.steps()) {
            Step step = menu.step(id);
            if (step.station().equals(station) && isNeeded(menu, step, selection)) {
                steps.add(step);
            }
        }
        return steps;
    }

    /** How long one piece takes one hand at a station, in seconds, by the menu's own figures. */
    public static int seconds(Menu menu, Selection selection, String station) {
        int seconds = 0;
        for (Step step : steps(menu, selection, station)) {
            seconds += step.seconds();
        }
        return seconds;
    }

    /**
     * The stations that a station's part of a selection waits for, in order of assembly: those
     * whose steps come before the station's own first step. Their work goes to that station, not to
     * the guest: a sausage leaves the grill for the line's roll.
     */
    public static List<String> waitsFor(Menu menu, Selection selection, String station) {
        List<String> earlier = new ArrayList<>();
        for (String id : menu.item(selection.item()).steps()) {
            Step step = menu.step(id);
            if (isNeeded(menu, step, selection)) {
                if (step.station().equals(station)) {
                    return earlier;
                }
                if (!earlier.contains(step.station())) {
                    earlier.add(step.station());
                }
            }
        }
        return List.of();
    }

    /** Whether a station's part of a selection goes on to another station, not to the guest. */
    public static boolean feedsAnother(Menu menu, Selection selection, String station) {
        for (String other : stations(menu, selection)) {
            if (!other.equals(station) && waitsFor(menu, selection, other).contains(station)) {
                return true;
            }
        }
        return false;
    }

    private static boolean hasWork(Menu menu, Selection selection, String station) {
        for (String id : menu.item(selection.item()).steps()) {
            Step step = menu.step(id);
            if (step.station().equals(station) && isNeeded(menu, step, selection)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNeeded(Menu menu, Step step, Selection selection) {
        if (!step.onlyForChoices()) {
            return true;
        }
        return showsAny(menu, step, selection.options())
                || showsAny(menu, step, selection.refused());
    }

    private static boolean showsAny(Menu menu, Step step, List<String> options) {
        for (String option : options) {
            if (step.showsGroup(menu.groupOf(option).id())) {
                return true;
            }
        }
        return false;
    }
}
