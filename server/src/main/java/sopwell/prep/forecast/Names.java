package sopwell.prep.forecast;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Names by number, in the order in which they came; those of one day by the alphabet. */
final class Names {
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();

    /** Takes in the names of a day. */
    void add(Collection<String> some) {
        for (String name : new TreeSet<>(some)) {
            if (numbers.putIfAbsent(name, names.size()) == null) {
                names.add(name);
            }
        }
    }

    /** The number of a name, or -1. */
    int number(String name) {
        return numbers.getOrDefault(name, -1);
    }

    String name(int number) {
        return names.get(number);
    }

    int size() {
        return names.size();
    }
}
