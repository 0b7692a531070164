package sopwell.mix;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Station;

/**
 * How what was sold is called, and in which order it is listed: as on the newest menu that has it.
 * What is on none of the menus is called by its id. Immutable.
 */
public final class Names {
    private static final LocalText NO_TEXT = new LocalText("", "");
    private static final LocalText NOTHING = new LocalText("none", "nada");

    private final List<Menu> menus;

    /**
     * Names from menus.
     *
     * @param menus the newest first
     */
    public Names(List<Menu> menus) {
        this.menus = List.copyOf(menus);
    }

    /** What an item is called. */
    public LocalText item(String id) {
        return find(menu -> item(menu, id)).map(Item::name).orElseGet(() -> written(id));
    }

    /** What an item's size is called; no size has no name. */
    public LocalText size(String item, String id) {
        if (id.isEmpty()) {
            return NO_TEXT;
        }
        return find(menu -> item(menu, item).flatMap(i -> i.size(id)))
                .map(Size::name)
                .orElseGet(() -> written(id));
    }

    /** What a station is called. */
    public LocalText station(String id) {
        return find(menu -> menu.stations().stream().filter(s -> s.id().equals(id)).findFirst())
                .map(Station::name)
                .orElseGet(() -> written(id));
    }

    /** What a modifier group is called. */
    public LocalText group(String id) {
        return find(menu -> group(menu, id)).map(Group::name).orElseGet(() -> written(id));
    }

    /**
     * Whether the house makes an item this way when nothing is said, by its first modifier group.
     *
     * @param chosen see {@link Ways#chosen(String)}
     */
    boolean isHouseWay(String item, String chosen) {
        return groups(item).stream()
                .findFirst()
                .flatMap(first -> find(menu -> group(menu, first)))
                .map(group -> String.join("+", group.defaults()))
                .filter(house -> house.isEmpty() ? chosen.equals(Ways.NONE) : house.equals(chosen))
                .isPresent();
    }

    /**
     * What a way is called: by the group's own word for several together, if it has one.
     *
     * @param chosen see {@link Ways#chosen(String)}
     */
    public LocalText way(String group, String chosen) {
        Set<String> options = options(chosen);
        Optional<Bundle> bundle =
                find(menu -> group(menu, group))
                        .flatMap(
                                known ->
                                        known.bundles().stream()
                                                .filter(
                                                        b ->
                                                                Set.copyOf(b.options())
                                                                        .equals(options))
                                                .findFirst());
        if (bundle.isPresent()) {
            return bundle.get().name();
        }
        if (options.isEmpty()) {
            return NOTHING;
        }
        List<LocalText> names =
                List.of(chosen.split("\\+", -1)).stream().map(this::option).toList();
        return new LocalText(
                names.stream().map(LocalText::en).collect(Collectors.joining(" + ")),
                names.stream().map(LocalText::es).collect(Collectors.joining(" + ")));
    }

    /** The modifier groups of an item in its order, or empty when no menu has it. */
    List<String> groups(String item) {
        return find(menu -> item(menu, item)).map(Item::groups).orElse(List.of());
    }

    /** Stations' ids as on the newest menu, those of earlier menus after them. */
    Comparator<String> stationOrder() {
        List<String> order =
                menus.stream().flatMap(m -> m.stations().stream()).map(Station::id).toList();
        return Comparator.comparingInt((String id) -> placeIn(order, id))
                .thenComparing(Comparator.naturalOrder());
    }

    /** Items' ids as on the newest menu, those of earlier menus after them. */
    Comparator<String> itemOrder() {
        return Comparator.comparingInt(this::place).thenComparing(Comparator.naturalOrder());
    }

    /** Items as on the newest menu, those of earlier menus after them; sizes in their order. */
    Comparator<ItemCount> inMenuOrder() {
        return Comparator.comparingInt((ItemCount count) -> place(count.item()))
                .thenComparing(ItemCount::item)
                .thenComparingInt(count -> sizePlace(count.item(), count.size()))
                .thenComparing(ItemCount::size);
    }

    /** Options in the menu's order, then the ways with more than one, "none" last. */
    Comparator<String> inMenuOrder(String group) {
        List<String> order =
                find(menu -> group(menu, group))
                        .map(known -> known.options().stream().map(Option::id).toList())
                        .orElse(List.of());
        return Comparator.comparing((String chosen) -> chosen.equals(Ways.NONE))
                .thenComparing(chosen -> chosen.contains("+"))
                .thenComparing(chosen -> order.indexOf(chosen.split("\\+", -1)[0]))
                .thenComparing(Comparator.naturalOrder());
    }

    private int place(String item) {
        for (int menu = 0; menu < menus.size(); menu++) {
            List<String> items = menus.get(menu).items().stream().map(Item::id).toList();
            if (items.contains(item)) {
                return menu * 1_000 + items.indexOf(item);
            }
        }
        return Integer.MAX_VALUE;
    }

    private static int placeIn(List<String> order, String id) {
        int place = order.indexOf(id);
        return place < 0 ? Integer.MAX_VALUE : place;
    }

    private int sizePlace(String item, String size) {
        return find(menu -> item(menu, item))
                .map(known -> known.sizes().stream().map(Size::id).toList().indexOf(size))
                .orElse(-1);
    }

    private LocalText option(String id) {
        return find(menu -> menu.hasOption(id) ? Optional.of(menu.option(id)) : Optional.empty())
                .map(Option::name)
                .orElseGet(() -> written(id));
    }

    private <A> Optional<A> find(Function<Menu, Optional<A>> look) {
        return menus.stream().flatMap(menu -> look.apply(menu).stream()).findFirst();
    }

    private static Set<String> options(String chosen) {
        return chosen.equals(Ways.NONE) ? Set.of() : Set.of(chosen.split("\\+", -1));
    }

    private static Optional<Item> item(Menu menu, String id) {
        return menu.hasItem(id) ? Optional.of(menu.item(id)) : Optional.empty();
    }

    private static Optional<Group> group(Menu menu, String id) {
        return menu.groups().stream().filter(group -> group.id().equals(id)).findFirst();
    }

    private static LocalText written(String id) {
        return new LocalText(id, id);
    }
}
