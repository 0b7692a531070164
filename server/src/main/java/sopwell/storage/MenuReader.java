package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sopwell.menu.Bundle;
import sopwell.menu.Faults;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.MenuCheck;
import sopwell.menu.MenuFault;
import sopwell.menu.MenuParts;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Speech;
import sopwell.menu.Station;
import sopwell.menu.Step;

/**
 * Reads a menu from JSON. Stateless.
 *
 * <p>A menu is read in two rounds, and each finds everything that it can find: first whether the
 * fields are there and of the right type, then whether they mean anything ({@link MenuCheck}). The
 * second round waits for the first to be clean, because a missing field would look like many faults
 * of meaning.
 */
public final class MenuReader {
    private static final List<String> WEEKDAYS =
            Stream.of(DayOfWeek.values()).map(d -> d.name().toLowerCase(Locale.ROOT)).toList();

    private final ShortForms shortForms = new ShortForms();

    private MenuReader() {}

    /** Reads and checks a menu. */
    public static MenuReading read(byte[] json) {
        MenuReader reader = new MenuReader();
        Faults faults = new Faults();
        Optional<JsonNode> tree = JsonTree.read(json, faults);
        if (tree.isEmpty()) {
            return new MenuReading(Optional.empty(), faults.found());
        }
        MenuParts parts = reader.parts(tree.get(), faults);
        List<MenuFault> found =
                faults.isEmpty()
                        ? reader.shortForms.inPlace(MenuCheck.faults(parts))
                        : faults.found();
        if (!found.isEmpty()) {
            return new MenuReading(Optional.empty(), found);
        }
        return new MenuReading(Optional.of(MenuWriter.menu(parts)), List.of());
    }

    /**
     * The parts of a menu that was checked before it was written; what it means is not checked
     * again, because checks grow stricter and old menus stay in the log.
     */
    static MenuParts trusted(JsonNode tree, Faults faults) {
        return new MenuReader().parts(tree, faults);
    }

    private MenuParts parts(JsonNode tree, Faults faults) {
        if (!tree.isObject()) {
            Fields root = new Fields(JsonNodeFactory.instance.objectNode(), "", faults);
            faults.add("", "The file is no JSON object.", "It begins with { and ends with }.");
            return partsOf(root);
        }
        Fields root = new Fields(tree, "", faults);
        MenuParts parts = partsOf(root);
        root.close();
        return parts;
    }

    private MenuParts partsOf(Fields root) {
        return new MenuParts(
                speech(root.inner("speech")),
                root.objects("stations", MenuReader::station),
                root.objects("steps", MenuReader::step),
                root.objects("groups", this::group),
                root.objects("items", this::item),
                root.objectsOr("pans", PanFields::read));
    }

    private static Speech speech(Fields fields) {
        Speech speech =
                new Speech(
                        fields.texts("and"),
                        fields.texts("no"),
                        fields.textsOr("skip"),
                        fields.numbers("numbers"),
                        fields.local("toGo"),
                        fields.local("here"));
        fields.close();
        return speech;
    }

    private static Station station(Fields fields) {
        return new Station(
                fields.text("id"),
                fields.local("name"),
                fields.whole("hands"),
                fields.wholeOr("load", 1),
                fields.yes("builds"),
                CautionFields.read(fields));
    }

    private static Step step(Fields fields) {
        String id = fields.text("id");
        LocalText name = fields.local("name");
        String station = fields.text("station");
        List<Step.Show> shows = new ArrayList<>();
        List<String> written = fields.texts("shows");
        for (int n = 0; n < written.size(); n++) {
            show(written.get(n), fields.at("shows") + "/" + n, fields.faults())
                    .ifPresent(shows::add);
        }
        return new Step(id, name, station, shows, fields.whole("seconds"));
    }

    private static Optional<Step.Show> show(String written, String place, Faults faults) {
        String start = "group:";
        if (written.startsWith(start)) {
            String group = written.substring(start.length());
            return Optional.of(new Step.Show(Step.What.GROUP, group));
        }
        for (Step.What what : Step.What.values()) {
            if (what != Step.What.GROUP && written.equals(MenuWriter.lower(what))) {
                return Optional.of(new Step.Show(what, ""));
            }
        }
        faults.unknown(
                place, "word to show", written, List.of("item", "size", "service", "group:…"));
        return Optional.empty();
    }

    private Group group(Fields fields) {
        String id = fields.text("id");
        LocalText name = fields.local("name");
        Fields choose = fields.inner("choose");
        int min = choose.whole("min");
        int max = choose.whole("max");
        choose.close();
        return new Group(
                id,
                name,
                min,
                max,
                fields.textsOr("default"),
                fields.objects("options", this::option),
                fields.objectsOr("bundles", this::bundle));
    }

    private Option option(Fields fields) {
        return new Option(
                fields.text("id"),
                fields.local("name"),
                shortForms.words(fields),
                fields.cents("priceCents"),
                fields.textOr("insteadOf"),
                fields.textsOr("allergens"));
    }

    private Bundle bundle(Fields fields) {
        return new Bundle(
                fields.text("id"),
                fields.local("name"),
                shortForms.words(fields),
                fields.texts("options"));
    }

    private Size size(Fields fields) {
        return new Size(
                fields.text("id"),
                fields.local("name"),
                shortForms.words(fields),
                fields.cents("priceCents"));
    }

    private Item item(Fields fields) {
        String id = fields.text("id");
        LocalText name = fields.local("name");
        List<String> words = shortForms.words(fields);
        List<Size> sizes = fields.objectsOr("sizes", this::size);
        boolean pricedBySize = !sizes.isEmpty() && !fields.has("priceCents");
        return new Item(
                id,
                name,
                words,
                sizes,
                fields.textOr("defaultSize"),
                pricedBySize ? 0 : fields.cents("priceCents"),
                fields.textsOr("groups"),
                fields.texts("steps"),
                fields.textsOr("allergens"),
                days(fields),
                !fields.has("taxed") || fields.yes("taxed"),
                fields.wholeOr("keepsSeconds", 0));
    }

    /** The field {@code days}: weekdays, none of them when it is left out. */
    static List<DayOfWeek> days(Fields fields) {
        List<DayOfWeek> days = new ArrayList<>();
        List<String> written = fields.textsOr("days");
        for (int n = 0; n < written.size(); n++) {
            int day = WEEKDAYS.indexOf(written.get(n));
            if (day < 0) {
                fields.faults()
                        .unknown(fields.at("days") + "/" + n, "weekday", written.get(n), WEEKDAYS);
            } else {
                days.add(DayOfWeek.of(day + 1));
            }
        }
        return days;
    }
}
