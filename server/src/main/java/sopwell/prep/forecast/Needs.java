package sopwell.prep.forecast;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Which items could not be sold when something was out: the item of that name, everything when it
 * is called so, and otherwise the items that sold next to nothing each time it was out. Not
 * thread-safe.
 */
final class Needs {
    private static final Set<String> EVERYTHING =
            Set.of("all", "everything", "*", "roll", "rolls", "bread", "buns", "bun");
    private static final double LEAST_EXPECTED = 2;
    private static final double SOLD_SHARE_MAX = 0.15;

    private final Map<String, Map<Integer, double[]>> watched = new HashMap<>();

    /** A name as it is compared. */
    static String plain(String what) {
        String name = what.strip().toLowerCase(Locale.ROOT);
        for (String kind : List.of("item:", "option:", "size:", "modifier:")) {
            name = name.startsWith(kind) ? name.substring(kind.length()) : name;
        }
        return name;
    }

    static boolean isEverything(String what) {
        return EVERYTHING.contains(plain(what));
    }

    /** Watches what an item sold while something was out, against what it would have. */
    void watch(String what, int item, double sold, double expected) {
        double[] sums =
                watched.computeIfAbsent(plain(what), name -> new HashMap<>())
                        .computeIfAbsent(item, number -> new double[2]);
        sums[0] += sold;
        sums[1] += expected;
    }

    /** The items that need it, as far as was seen. */
    BitSet items(String what, Names names) {
        BitSet found = new BitSet();
        String plain = plain(what);
        Map<Integer, double[]> seen = watched.getOrDefault(plain, Map.of());
        for (int i = 0; i < names.size(); i++) {
            double[] sums = seen.getOrDefault(i, new double[2]);
            boolean sellsWithout = sums[0] > SOLD_SHARE_MAX * sums[1] && sums[0] >= 2;
            boolean missing = sums[1] >= LEAST_EXPECTED && sums[0] <= SOLD_SHARE_MAX * sums[1];
            List<String> words = words(names.name(i));
            found.set(i, missing || (words.contains(plain) && !sellsWithout));
        }
        return found;
    }

    private static List<String> words(String name) {
        return new ArrayList<>(List.of(name.toLowerCase(Locale.ROOT).split("[\\s_-]+", -1)));
    }
}
