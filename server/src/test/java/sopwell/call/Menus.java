package sopwell.call;

import java.util.List;
import java.util.Map;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.MenuCheck;
import sopwell.menu.MenuFault;
import sopwell.menu.MenuParts;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Speech;
import sopwell.menu.Station;
import sopwell.menu.Step;
import sopwell.menu.Step.Show;
import sopwell.menu.Step.What;

/** Short ways to build menus, and a flower stall: the parser must not know what is sold. */
final class Menus {
    static final Speech SPEECH =
            new Speech(
                    List.of("and", "y"),
                    List.of("no", "sin"),
                    List.of("with", "con"),
                    Map.of("two", 2, "dos", 2, "twenty one", 21),
                    text("to go"),
                    text("here"));

    private Menus() {}

    /** A stall that has no default size and wants two kinds of stems at least. */
    static Menu flowers() {
        Group ribbon =
                group("ribbon", new int[] {1, 1}, List.of("red"))
                        .with(option("red"), option("white"), option("blue", "sky"))
                        .done();
        Group stems =
                group("stems", new int[] {2, 3}, List.of("rose", "lily"))
                        .with(option("rose"), option("lily"), option("fern"), option("iris"))
                        .bundle("mixed", "rose", "lily", "fern")
                        .done();
        Group card =
                group("card", new int[] {0, 1}, List.of("plain-card"))
                        .with(option("plain-card"), option("gold-card"))
                        .bundle("no-card")
                        .done();
        Item bunch = item("bunch", List.of("ribbon", "stems", "card"), "little", "grand");
        Item pot = item("pot", List.of("ribbon"));
        return checked(List.of(ribbon, stems, card), List.of(bunch, pot));
    }

    /** A menu of these groups and items, with one station and a step for each item. */
    static MenuParts parts(List<Group> groups, List<Item> items) {
        List<Step> steps = items.stream().map(Menus::step).toList();
        List<Station> stations = List.of(new Station("bench", text("bench"), 1, 1, true));
        return new MenuParts(SPEECH, stations, steps, groups, items);
    }

    static Menu checked(List<Group> groups, List<Item> items) {
        MenuParts parts = parts(groups, items);
        List<MenuFault> faults = MenuCheck.faults(parts);
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(faults.toString());
        }
        return new Menu("test", parts);
    }

    /** An item whose word is its id with spaces, as are the words of its sizes. */
    static Item item(String id, List<String> groups, String... sizes) {
        List<Size> all =
                List.of(sizes).stream()
                        .map(size -> new Size(size, text(size), List.of(spaced(size)), 100))
                        .toList();
        long cents = all.isEmpty() ? 100 : 0;
        return new Item(
                id,
                text(id),
                List.of(spaced(id)),
                all,
                "",
                cents,
                groups,
                List.of("make-" + id),
                List.of(),
                List.of(),
                true,
                0);
    }

    static Option option(String id, String... moreWords) {
        List<String> words = new java.util.ArrayList<>(List.of(spaced(id)));
        words.addAll(List.of(moreWords));
        return new Option(id, text(id), words, 0, "", List.of());
    }

    static GroupBuilder group(String id, int[] choose, List<String> defaults) {
        return new GroupBuilder(id, choose, defaults);
    }

    static LocalText text(String id) {
        return new LocalText(spaced(id), spaced(id));
    }

    /** The one step of an item: it shows whatever must be seen. */
    static Step step(Item item) {
        List<Show> shows = new java.util.ArrayList<>(List.of(new Show(What.ITEM, "")));
        if (!item.sizes().isEmpty()) {
            shows.add(new Show(What.SIZE, ""));
        }
        item.groups().forEach(group -> shows.add(new Show(What.GROUP, group)));
        return new Step("make-" + item.id(), text(item.id()), "bench", shows, 1);
    }

    private static String spaced(String id) {
        return id.replace('-', ' ');
    }

    /** Collects the options and bundles of a group. */
    static final class GroupBuilder {
        private final String id;
        private final int[] choose;
        private final List<String> defaults;
        private final List<Option> options = new java.util.ArrayList<>();
        private final List<Bundle> bundles = new java.util.ArrayList<>();

        private GroupBuilder(String id, int[] choose, List<String> defaults) {
            this.id = id;
            this.choose = choose;
            this.defaults = defaults;
        }

        GroupBuilder with(Option... added) {
            options.addAll(List.of(added));
            return this;
        }

        GroupBuilder bundle(String bundleId, String... of) {
            bundles.add(
                    new Bundle(bundleId, text(bundleId), List.of(spaced(bundleId)), List.of(of)));
            return this;
        }

        Group done() {
            return new Group(id, text(id), choose[0], choose[1], defaults, options, bundles);
        }
    }
}
