package sopwell.menu;

import java.util.List;

/**
 * Everything a menu is made of, before it is checked. Immutable.
 *
 * @param steps in assembly order
 */
public record MenuParts(
        Speech speech,
        List<Station> stations,
        List<Step> steps,
        List<Group> groups,
        List<Item> items,
        List<Pan> pans) {
    /** A menu whose stations keep nothing hot. */
    public MenuParts(
            Speech speech,
            List<Station> stations,
            List<Step> steps,
            List<Group> groups,
            List<Item> items) {
        this(speech, stations, steps, groups, items, List.of());
    }

    public MenuParts {
        stations = List.copyOf(stations);
        steps = List.copyOf(steps);
        groups = List.copyOf(groups);
        items = List.copyOf(items);
        pans = List.copyOf(pans);
    }
}
