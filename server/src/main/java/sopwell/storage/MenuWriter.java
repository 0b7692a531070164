package sopwell.storage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Locale;
import java.util.TreeMap;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.MenuParts;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Speech;
import sopwell.menu.Station;
import sopwell.menu.Step;

/**
 * Writes a menu as JSON, always in the same form: the same content gives the same bytes, and so the
 * same revision. Stateless.
 *
 * <p>Short forms stand behind the words, as the model has them; fields that may be left out are
 * left out when they say nothing.
 */
public final class MenuWriter {
    /** Sixteen hexadecimal digits tell any two documents of one stand apart. */
    private static final int REVISION_BYTES = 8;

    private MenuWriter() {}

    /** A menu of these parts under the revision of their content. */
    public static Menu menu(MenuParts parts) {
        byte[] canonical = tree(parts).toString().getBytes(StandardCharsets.UTF_8);
        return new Menu(revision(canonical), parts);
    }

    /** The revision of a document's content. */
    static String revision(byte[] canonical) {
        return HexFormat.of().formatHex(Sha256.of(canonical), 0, REVISION_BYTES);
    }

    /** The whole menu. */
    public static ObjectNode tree(MenuParts parts) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.set("speech", speech(parts.speech()));
        ArrayNode stations = root.putArray("stations");
        parts.stations().forEach(station -> stations.add(station(station)));
        ArrayNode steps = root.putArray("steps");
        parts.steps().forEach(step -> steps.add(step(step)));
        ArrayNode groups = root.putArray("groups");
        parts.groups().forEach(group -> groups.add(group(group)));
        ArrayNode items = root.putArray("items");
        parts.items().forEach(item -> items.add(item(item)));
        if (!parts.pans().isEmpty()) {
            ArrayNode pans = root.putArray("pans");
            parts.pans().forEach(pan -> pans.add(PanFields.write(pan)));
        }
        return root;
    }

    static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode speech(Speech speech) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        texts(node, "and", speech.and());
        texts(node, "no", speech.no());
        texts(node, "skip", speech.skip());
        ObjectNode numbers = node.putObject("numbers");
        new TreeMap<>(speech.numbers()).forEach(numbers::put);
        local(node, "toGo", speech.toGo());
        local(node, "here", speech.here());
        return node;
    }

    private static ObjectNode station(Station station) {
        ObjectNode node = named(station.id(), station.name());
        node.put("hands", station.hands());
        if (station.load() != 1) {
            node.put("load", station.load());
        }
        node.put("builds", station.builds());
        CautionFields.write(node, station.cautions());
        return node;
    }

    private static ObjectNode step(Step step) {
        ObjectNode node = named(step.id(), step.name());
        node.put("station", step.station());
        ArrayNode shows = node.putArray("shows");
        for (Step.Show show : step.shows()) {
            String what = lower(show.what());
            shows.add(show.what() == Step.What.GROUP ? what + ":" + show.group() : what);
        }
        node.put("seconds", step.seconds());
        return node;
    }

    private static ObjectNode group(Group group) {
        ObjectNode node = named(group.id(), group.name());
        ObjectNode choose = node.putObject("choose");
        choose.put("min", group.chooseMin());
        choose.put("max", group.chooseMax());
        texts(node, "default", group.defaults());
        ArrayNode options = node.putArray("options");
        group.options().forEach(option -> options.add(option(option)));
        if (!group.bundles().isEmpty()) {
            ArrayNode bundles = node.putArray("bundles");
            group.bundles().forEach(bundle -> bundles.add(bundle(bundle)));
        }
        return node;
    }

    private static ObjectNode option(Option option) {
        ObjectNode node = named(option.id(), option.name());
        texts(node, "words", option.words());
        node.put("priceCents", option.priceCents());
        if (!option.insteadOf().isEmpty()) {
            node.put("insteadOf", option.insteadOf());
        }
        textsIfAny(node, "allergens", option.allergens());
        return node;
    }

    private static ObjectNode bundle(Bundle bundle) {
        ObjectNode node = named(bundle.id(), bundle.name());
        texts(node, "words", bundle.words());
        texts(node, "options", bundle.options());
        return node;
    }

    private static ObjectNode item(Item item) {
        ObjectNode node = named(item.id(), item.name());
        texts(node, "words", item.words());
        if (item.sizes().isEmpty()) {
            node.put("priceCents", item.priceCents());
        } else {
            ArrayNode sizes = node.putArray("sizes");
            item.sizes().forEach(size -> sizes.add(size(size)));
        }
        if (!item.defaultSize().isEmpty()) {
            node.put("defaultSize", item.defaultSize());
        }
        textsIfAny(node, "groups", item.groups());
        texts(node, "steps", item.steps());
        textsIfAny(node, "allergens", item.allergens());
        textsIfAny(node, "days", item.days().stream().map(MenuWriter::lower).toList());
        if (!item.taxed()) {
            node.put("taxed", false);
        }
        if (item.isShortLived()) {
            node.put("keepsSeconds", item.keepsSeconds());
        }
        return node;
    }

    private static ObjectNode size(Size size) {
        ObjectNode node = named(size.id(), size.name());
        texts(node, "words", size.words());
        node.put("priceCents", size.priceCents());
        return node;
    }

    /** An object that begins with an id and a name. */
    static ObjectNode named(String id, LocalText name) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("id", id);
        local(node, "name", name);
        return node;
    }

    /** A text in both languages. */
    static void local(ObjectNode node, String field, LocalText text) {
        ObjectNode languages = node.putObject(field);
        languages.put("en", text.en());
        languages.put("es", text.es());
    }

    /** A list of texts, if it says anything. */
    static void textsIfAny(ObjectNode node, String field, Collection<String> texts) {
        if (!texts.isEmpty()) {
            texts(node, field, texts);
        }
    }

    /** A list of texts. */
    static void texts(ObjectNode node, String field, Collection<String> texts) {
        ArrayNode array = node.putArray(field);
        texts.forEach(array::add);
    }
}
