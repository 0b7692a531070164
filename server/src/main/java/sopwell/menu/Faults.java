package sopwell.menu;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Gathers faults in the order in which they are found. Not thread-safe: for one reading. */
public final class Faults {
    private final List<MenuFault> found = new ArrayList<>();
    private final Set<MenuFault> seen = new HashSet<>();

    /** Adds a fault; the same one twice counts once. */
    public void add(String place, String wrong, String right) {
        MenuFault fault = new MenuFault(place, wrong, right);
        if (seen.add(fault)) {
            found.add(fault);
        }
    }

    /** Adds that a name means nothing here, and what was probably meant. */
    public void unknown(String place, String what, String name, Collection<String> known) {
        Optional<String> nearest = Nearest.of(name, known);
        String right =
                nearest.map(n -> "Perhaps \"" + n + "\" is meant.")
                        .orElseGet(() -> "Known are: " + listed(known) + ".");
        add(place, "There is no " + what + " \"" + name + "\".", right);
    }

    /** Every fault so far. */
    public List<MenuFault> found() {
        return List.copyOf(found);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    private static String listed(Collection<String> known) {
        if (known.isEmpty()) {
            return "none";
        }
        List<String> first = known.stream().limit(20).toList();
        return String.join(", ", first) + (known.size() > first.size() ? ", …" : "");
    }
}
