package sopwell.mix;

import java.util.List;
import java.util.stream.Collectors;
import sopwell.menu.Group;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;

/**
 * How a piece was made, group by group: {@code dip=dipped}, {@code peppers=hot+sweet}, {@code
 * cheese=none}. Options stand in the menu's order; a refusal is the house's business and not a way.
 * Stateless.
 */
public final class Ways {
    /** The id of a way in which nothing was chosen. */
    public static final String NONE = "none";

    private Ways() {}

    /** The ways of a selection, one for each modifier group of its item, in the item's order. */
    public static List<String> of(Menu menu, Selection selection) {
        return menu.groupsOf(menu.item(selection.item())).stream()
                .map(group -> group.id() + "=" + chosen(group, selection))
                .toList();
    }

    /** The group's id of a way. */
    public static String group(String way) {
        return way.substring(0, way.indexOf('='));
    }

    /** What was chosen of a group, or {@link #NONE}. */
    static String chosen(List<String> ways, String group) {
        for (String way : ways) {
            if (way.startsWith(group) && way.startsWith("=", group.length())) {
                return chosen(way);
            }
        }
        return NONE;
    }

    /** What was chosen: options' ids joined with a plus sign, or {@link #NONE}. */
    public static String chosen(String way) {
        return way.substring(way.indexOf('=') + 1);
    }

    private static String chosen(Group group, Selection selection) {
        String options =
                group.options().stream()
                        .map(Option::id)
                        .filter(selection::has)
                        .collect(Collectors.joining("+"));
        return options.isEmpty() ? NONE : options;
    }
}
