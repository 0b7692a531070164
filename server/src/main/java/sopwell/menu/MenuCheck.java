package sopwell.menu;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import sopwell.Limits;

/**
 * What a menu must be before it takes effect. Stateless; finds every fault, not only the first.
 *
 * <p>After these checks nothing on the menu names what is not there, every choice reaches a cook's
 * eyes, and every word that can be said of an item means one thing.
 */
public final class MenuCheck {
    private static final Pattern ID = Pattern.compile("[a-z0-9-]{1," + Limits.ID_CHARS_MAX + "}");

    /** Boards that are no station's. */
    private static final Set<String> SCREENS = Set.of("counter", "pass", "ready");

    private MenuCheck() {}

    /** Everything that is wrong with these parts, with JSON Pointers into the menu file. */
    public static List<MenuFault> faults(MenuParts parts) {
        Faults faults = new Faults();
        ids(parts, faults);
        stations(parts, faults);
        MenuCheckGroups.faults(parts, faults);
        MenuCheckItems.faults(parts, faults);
        MenuCheckSteps.faults(parts, faults);
        MenuCheckPans.faults(parts, faults);
        MenuCheckSpeech.faults(parts, faults);
        MenuCheckWords.faults(parts, faults);
        return faults.found();
    }

    private static void ids(MenuParts parts, Faults faults) {
        Ids.fresh("station").check("/stations", parts.stations(), Station::id, faults);
        Ids.fresh("step").check("/steps", parts.steps(), Step::id, faults);
        Ids.fresh("group").check("/groups", parts.groups(), Group::id, faults);
        Ids.fresh("item").check("/items", parts.items(), Item::id, faults);
        Ids.fresh("pan").check("/pans", parts.pans(), Pan::id, faults);
        Ids options = Ids.fresh("option");
        for (int g = 0; g < parts.groups().size(); g++) {
            Group group = parts.groups().get(g);
            String place = "/groups/" + g;
            options.check(place + "/options", group.options(), Option::id, faults);
            options.check(place + "/bundles", group.bundles(), Bundle::id, faults);
        }
        for (int i = 0; i < parts.items().size(); i++) {
            List<Size> sizes = parts.items().get(i).sizes();
            Ids.fresh("size").check("/items/" + i + "/sizes", sizes, Size::id, faults);
        }
        if (parts.items().isEmpty()) {
            faults.add("/items", "The menu sells nothing.", "A menu has at least one item.");
        }
    }

    /** The ids that entries of one kind have taken so far. */
    private record Ids(String what, Set<String> taken) {
        static Ids fresh(String what) {
            return new Ids(what, new HashSet<>());
        }

        <T> void check(String place, List<T> entries, Function<T, String> id, Faults faults) {
            for (int n = 0; n < entries.size(); n++) {
                String own = id.apply(entries.get(n));
                String here = place + "/" + n + "/id";
                if (!ID.matcher(own).matches()) {
                    faults.add(
                            here,
                            "\"" + own + "\" is no id.",
                            "An id is 1 to "
                                    + Limits.ID_CHARS_MAX
                                    + " of the characters a to z, 0 to 9 and -.");
                } else if (!taken.add(own)) {
                    faults.add(
                            here,
                            "Another " + what + " has the id \"" + own + "\" already.",
                            "Give each " + what + " an id of its own.");
                }
            }
        }
    }

    private static void stations(MenuParts parts, Faults faults) {
        for (int s = 0; s < parts.stations().size(); s++) {
            Station station = parts.stations().get(s);
            String place = "/stations/" + s;
            if (SCREENS.contains(station.id())) {
                faults.add(
                        place + "/id",
                        "“" + station.id() + "” is a screen of its own.",
                        "Give the station another id.");
            }
            number(place + "/hands", station.hands(), 1, Limits.STATION_HANDS_MAX, faults);
            number(place + "/load", station.load(), 1, Limits.STATION_LOAD_PIECES_MAX, faults);
        }
    }

    /** Adds a fault when a number is out of its range. */
    static void number(String place, long number, long min, long max, Faults faults) {
        if (number < min || number > max) {
            faults.add(
                    place,
                    number + " is out of range.",
                    "The least is " + min + " and the most is " + max + ".");
        }
    }

    /** Adds a fault for a price below zero or too high to be meant. */
    static void price(String place, long priceCents, Faults faults) {
        number(place + "/priceCents", priceCents, 0, Limits.PRICE_CENTS_MAX, faults);
    }

    /** Adds a fault for every allergen that no list knows. */
    static void allergens(String place, List<String> allergens, Faults faults) {
        Set<String> known = Allergens.names();
        for (int a = 0; a < allergens.size(); a++) {
            if (!known.contains(allergens.get(a))) {
                faults.unknown(place + "/allergens/" + a, "allergen", allergens.get(a), known);
            }
        }
        repeats(place + "/allergens", allergens, faults);
    }

    /** Adds a fault for everything that a list names twice. */
    static void repeats(String place, List<?> names, Faults faults) {
        Set<Object> seen = new HashSet<>();
        for (int n = 0; n < names.size(); n++) {
            if (!seen.add(names.get(n))) {
                String name = names.get(n).toString();
                faults.add(place + "/" + n, "\"" + name + "\" stands here twice.", "Name it once.");
            }
        }
    }
}
