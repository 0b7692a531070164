package sopwell.call;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.MenuParts;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Speech;

/** The demo stand's menu, as far as calls need it. */
final class DemoMenu {
    private DemoMenu() {}

    static Menu read() {
        try (InputStream in = DemoMenu.class.getResourceAsStream("/demo/menu.json")) {
            JsonNode root = new ObjectMapper().readTree(in);
            return new Menu("demo", new MenuParts(speech(root.get("speech")), List.of(), List.of(), list(root.path("groups"), DemoMenu::group), list(root.path("items"), DemoMenu::item)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Speech speech(JsonNode n) {
        Map<String, Integer> numbers = new TreeMap<>();
        n.get("numbers").properties().forEach(e -> numbers.put(e.getKey(), e.getValue().asInt()));
        return new Speech(strings(n.get("and")), strings(n.get("no")), strings(n.get("skip")), numbers, text(n.get("toGo")), text(n.get("here")));
    }

    private static Group group(JsonNode n) {
        return new Group(n.get("id").asText(), text(n.get("name")), n.at("/choose/min").asInt(), n.at("/choose/max").asInt(), strings(n.path("default")),
            list(n.path("options"), o -> new Option(o.get("id").asText(), text(o.get("name")), words(o), o.path("priceCents").asLong(), o.path("insteadOf").asText(""), List.of())),
            list(n.path("bundles"), b -> new Bundle(b.get("id").asText(), text(b.get("name")), words(b), strings(b.path("options")))));
    }

    private static Item item(JsonNode n) {
        return new Item(n.get("id").asText(), text(n.get("name")), words(n),
            list(n.path("sizes"), s -> new Size(s.get("id").asText(), text(s.get("name")), words(s), s.path("priceCents").asLong())),
            n.path("defaultSize").asText(""), n.path("priceCents").asLong(), strings(n.path("groups")), strings(n.path("steps")), List.of(),
            list(n.path("days"), d -> DayOfWeek.valueOf(d.asText().toUpperCase(Locale.ROOT))));
    }

    private static List<String> words(JsonNode n) {
        List<String> words = new ArrayList<>(strings(n.path("words")));
        words.addAll(strings(n.path("short")));
        return words;
    }

    private static List<String> strings(JsonNode n) {
        return list(n, JsonNode::asText);
    }

    private static <T> List<T> list(JsonNode n, Function<JsonNode, T> f) {
        List<T> list = new ArrayList<>();
        n.forEach(e -> list.add(f.apply(e)));
        return list;
    }

    private static LocalText text(JsonNode n) {
        return new LocalText(n.get("en").asText(), n.get("es").asText());
    }
}
