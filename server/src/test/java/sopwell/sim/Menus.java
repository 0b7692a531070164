package sopwell.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.call.CallParser;
import sopwell.desk.Script;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.MenuParts;
import sopwell.menu.Size;
import sopwell.storage.MenuWriter;

/** The demo's menu, and what an owner might make of it in mid-day. Immutable. */
record Menus(List<Menu> all) {
    private static final long DEARER_CENTS = 25;
    private static final Menus DEMO = of(Script.demoMenu());
    private static final Map<String, CallParser> PARSERS =
            DEMO.all.stream().collect(Collectors.toMap(Menu::revision, CallParser::new));

    static Menus demo() {
        return DEMO;
    }

    /** Reads calls by one of these menus. */
    CallParser parser(Menu menu) {
        return PARSERS.get(menu.revision());
    }

    private static Menus of(Menu menu) {
        return new Menus(List.of(menu, dearer(menu), shorter(menu)));
    }

    Menu first() {
        return all.get(0);
    }

    private static Menu dearer(Menu menu) {
        return with(menu, menu.items().stream().map(Menus::dearer).toList());
    }

    /** Without its last item. */
    private static Menu shorter(Menu menu) {
        return with(menu, menu.items().subList(0, menu.items().size() - 1));
    }

    private static Menu with(Menu menu, List<Item> items) {
        MenuParts parts = menu.parts();
        return MenuWriter.menu(
                new MenuParts(
                        parts.speech(), parts.stations(), parts.steps(), parts.groups(), items));
    }

    private static Item dearer(Item item) {
        List<Size> sizes = new ArrayList<>();
        for (Size size : item.sizes()) {
            sizes.add(
                    new Size(
                            size.id(), size.name(), size.words(), size.priceCents() + DEARER_CENTS));
        }
        return new Item(
                item.id(),
                item.name(),
                item.words(),
                sizes,
                item.defaultSize(),
                sizes.isEmpty() ? item.priceCents() + DEARER_CENTS : item.priceCents(),
                item.groups(),
                item.steps(),
                item.allergens(),
                item.days(),
                item.taxed());
    }
}
