package sopwell.sim;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.call.CallParser;
import sopwell.desk.Script;
import sopwell.menu.Menu;
import sopwell.storage.MenuReader;
import sopwell.storage.MenuWriter;

/** The demo's menu, and what an owner might make of it in mid-day. Immutable. */
record Menus(List<Menu> all) {
    private static final String PRICE = "priceCents";
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
        ObjectNode tree = MenuWriter.tree(menu.parts());
        for (JsonNode item : tree.path("items")) {
            for (JsonNode priced : item.findParents(PRICE)) {
                ((ObjectNode) priced).put(PRICE, priced.path(PRICE).longValue() + DEARER_CENTS);
            }
        }
        return read(tree);
    }

    /** Without its last item. */
    private static Menu shorter(Menu menu) {
        ObjectNode tree = MenuWriter.tree(menu.parts());
        ArrayNode items = (ArrayNode) tree.path("items");
        items.remove(items.size() - 1);
        return read(tree);
    }

    private static Menu read(ObjectNode tree) {
        return MenuReader.read(tree.toString().getBytes(StandardCharsets.UTF_8))
                .menu()
                .orElseThrow();
    }
}
