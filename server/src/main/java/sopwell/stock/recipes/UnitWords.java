package sopwell.stock.recipes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What units are called, in both languages of the screens. Stateless. */
public final class UnitWords {
    /** The first word of each is how Sopwell writes it. */
    private static final Map<Unit, List<String>> WORDS = words();

    private static final Map<String, Unit> BY_WORD = byWord();

    private UnitWords() {}

    /** How Sopwell writes a unit, in every language. */
    public static String written(Unit unit) {
        return WORDS.get(unit).get(0);
    }

    /** The unit of a word, if it is one; capitals and the spaces in it don't matter. */
    public static Optional<Unit> read(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replace(".", " ").strip();
        return Optional.ofNullable(BY_WORD.get(plain.replaceAll("\\s+", " ")));
    }

    /** How the units of one dimension are written. */
    static List<String> of(Dimension dimension) {
        List<String> written = new ArrayList<>();
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == dimension) {
                written.add(written(unit));
            }
        }
        return written;
    }

    /** How all units are written. */
    public static List<String> all() {
        List<String> written = new ArrayList<>();
        WORDS.values().forEach(words -> written.add(words.get(0)));
        return written;
    }

    private static Map<Unit, List<String>> words() {
        Map<Unit, List<String>> words = new EnumMap<>(Unit.class);
        words.put(Unit.G, List.of("g", "gr", "gram", "grams", "gramo", "gramos"));
        words.put(
                Unit.KG,
                List.of("kg", "kilo", "kilos", "kilogram", "kilograms", "kilogramo", "kilogramos"));
        words.put(Unit.OZ, List.of("oz", "ounce", "ounces", "onza", "onzas"));
        words.put(Unit.LB, List.of("lb", "lbs", "pound", "pounds", "libra", "libras"));
        words.put(Unit.ML, List.of("ml", "milliliter", "milliliters", "mililitro", "mililitros"));
        words.put(Unit.L, List.of("l", "liter", "liters", "litre", "litres", "litro", "litros"));
        words.put(
                Unit.FL_OZ,
                List.of(
                        "fl oz",
                        "floz",
                        "fluid ounce",
                        "fluid ounces",
                        "onza líquida",
                        "onzas líquidas"));
        words.put(Unit.QT, List.of("qt", "qts", "quart", "quarts", "cuarto", "cuartos"));
        words.put(Unit.GAL, List.of("gal", "gals", "gallon", "gallons", "galón", "galones"));
        words.put(
                Unit.EACH,
                List.of("each", "ea", "pc", "pcs", "piece", "pieces", "pieza", "piezas", "pza"));
        return Collections.unmodifiableMap(words);
    }

    private static Map<String, Unit> byWord() {
        Map<String, Unit> units = new HashMap<>();
        WORDS.forEach((unit, words) -> words.forEach(word -> units.put(word, unit)));
        return Map.copyOf(units);
    }
}
