package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import sopwell.Limits;
import sopwell.menu.Nearest;
import sopwell.stock.recipes.RecipeFault.Kind;

/** Gathers faults in the order in which they are found. Not thread-safe: for one check. */
final class FoundFaults {
    private static final Pattern ID = Pattern.compile("[a-z0-9-]{1," + Limits.ID_CHARS_MAX + "}");
    private static final int KNOWN_MAX = 12;

    private final Set<RecipeFault> found = new LinkedHashSet<>();

    List<RecipeFault> all() {
        return List.copyOf(found);
    }

    void add(String place, Kind kind, Object... args) {
        List<String> texts = new ArrayList<>();
        for (Object arg : args) {
            texts.add(arg instanceof BigDecimal amount ? amount.toPlainString() : arg.toString());
        }
        found.add(new RecipeFault(place, kind, texts));
    }

    /** A fault when a name means nothing here. */
    void known(String place, Kind kind, String name, Collection<String> known) {
        if (!known.contains(name)) {
            Set<String> names = new LinkedHashSet<>();
            Nearest.of(name, known).ifPresent(names::add);
            known.stream().limit(KNOWN_MAX).forEach(names::add);
            add(place, kind, name, String.join(", ", names));
        }
    }

    /** Faults for ids that are none, or that another entry has. */
    void ids(String place, List<String> ids) {
        Set<String> taken = new HashSet<>();
        for (int n = 0; n < ids.size(); n++) {
            String here = place + "/" + n + "/id";
            if (!ID.matcher(ids.get(n)).matches()) {
                add(here, Kind.NO_ID, ids.get(n), Limits.ID_CHARS_MAX);
            } else if (!taken.add(ids.get(n))) {
                add(here, Kind.TAKEN_ID, ids.get(n));
            }
        }
    }

    /** A fault when a number is out of its range. */
    void number(String place, long number, long min, long max) {
        if (number < min || number > max) {
            add(place, Kind.OUT_OF_RANGE, number, min, max);
        }
    }

    /** A fault when an amount is not above 0, or too large to be meant. */
    void amount(String place, BigDecimal amount) {
        if (amount.signum() <= 0) {
            add(place, Kind.NOT_ABOVE_ZERO, amount);
        } else if (amount.compareTo(BigDecimal.valueOf(Limits.RECIPE_BASE_UNITS_MAX)) > 0) {
            add(place, Kind.AMOUNT_TOO_LARGE, amount, Limits.RECIPE_BASE_UNITS_MAX);
        }
    }

    /** A fault for everything that a list names twice. */
    void twice(String place, List<?> names) {
        Set<Object> seen = new HashSet<>();
        for (int n = 0; n < names.size(); n++) {
            if (!seen.add(names.get(n))) {
                add(place + "/" + n, Kind.TWICE, names.get(n));
            }
        }
    }
}
