package sopwell.prep.forecast;

import java.util.Map;
import java.util.TreeMap;

/**
 * What the owner expects of a plain day before the stand has sold anything. Immutable.
 *
 * @param items pieces a day of each item; may be empty
 */
public record Guesses(Map<String, Double> items) {
    /** No guess. */
    public static final Guesses NONE = new Guesses(Map.of());

    /** A guess weighs as much as two days that were seen. */
    static final double DAYS = 2;

    public Guesses {
        items = java.util.Collections.unmodifiableMap(new TreeMap<>(items));
    }

    /** Pieces a day of everything. */
    double total() {
        return items.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
