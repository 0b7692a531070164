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
        List<Item> items) {
    public MenuParts {
        stations = List.copyOf(stations);
        steps = List.copyOf(steps);
        groups = List.copyOf(groups);
        items = List.copyOf(items);
    }
}
