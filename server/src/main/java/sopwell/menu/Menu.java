package sopwell.menu;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Check;

/**
 * A checked menu, with look-ups by id. Immutable, thread-safe.
 *
 * <p>Only menus that {@link MenuCheck} finds without fault become a {@code Menu}; look-ups of ids
 * that the menu itself mentions therefore never fail.
 */
public final class Menu {
    private final String revision;
    private final MenuParts parts;
    private final Map<String, Station> stations = new HashMap<>();
    private final Map<String, Step> steps = new HashMap<>();
    private final Map<String, Group> groups = new HashMap<>();
    private final Map<String, Item> items = new HashMap<>();
    private final Map<String, Option> options = new HashMap<>();
    private final Map<String, Group> groupOfOption = new HashMap<>();
    private final Map<String, List<Group>> groupsOfItem = new HashMap<>();

    /**
     * A menu from parts without fault.
     *
     * @param revision names this content; another content has another revision
     */
    public Menu(String revision, MenuParts parts) {
        this.revision = revision;
        this.parts = parts;
        parts.stations().forEach(station -> stations.put(station.id(), station));
        parts.steps().forEach(step -> steps.put(step.id(), step));
        parts.items().forEach(item -> items.put(item.id(), item));
        for (Group group : parts.groups()) {
            groups.put(group.id(), group);
            for (Option option : group.options()) {
                options.put(option.id(), option);
                groupOfOption.put(option.id(), group);
            }
        }
        for (Item item : parts.items()) {
            groupsOfItem.put(item.id(), item.groups().stream().map(this::group).toList());
        }
    }

    public String revision() {
        return revision;
    }

    public MenuParts parts() {
        return parts;
    }

    public Speech speech() {
        return parts.speech();
    }

    public List<Station> stations() {
        return parts.stations();
    }

    /** All build steps in assembly order. */
    public List<Step> steps() {
        return parts.steps();
    }

    public List<Group> groups() {
        return parts.groups();
    }

    public List<Item> items() {
        return parts.items();
    }

    /** What is kept hot. */
    public List<Pan> pans() {
        return parts.pans();
    }

    /** The pan with this id, if there is one. */
    public Optional<Pan> pan(String id) {
        return parts.pans().stream().filter(pan -> pan.id().equals(id)).findFirst();
    }

    public boolean hasStation(String id) {
        return stations.containsKey(id);
    }

    public boolean hasItem(String id) {
        return items.containsKey(id);
    }

    public boolean hasOption(String id) {
        return options.containsKey(id);
    }

    public Station station(String id) {
        return known(stations.get(id));
    }

    public Step step(String id) {
        return known(steps.get(id));
    }

    public Group group(String id) {
        return known(groups.get(id));
    }

    public Item item(String id) {
        return known(items.get(id));
    }

    public Option option(String id) {
        return known(options.get(id));
    }

    /** The group that an option belongs to. */
    public Group groupOf(String optionId) {
        return known(groupOfOption.get(optionId));
    }

    /** The groups of an item, in the item's order. */
    public List<Group> groupsOf(Item item) {
        return known(groupsOfItem.get(item.id()));
    }

    private static <T> T known(T found) {
        Check.that(found != null, "the menu knows every id that is asked of it");
        return found;
    }
}
