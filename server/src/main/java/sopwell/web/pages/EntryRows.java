package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import sopwell.Limits;

/**
 * The rows of a form that can grow: named {@code step.0.minutes}, {@code step.1.minutes} and so on.
 * Immutable.
 *
 * @param name what all its fields' names begin with
 * @param texts the fields of a row; one in which none of them says anything is no row
 */
record EntryRows(String name, List<String> texts) {
    static final EntryRows CONTAINERS = new EntryRows("box", List.of("en", "es", "holds"));
    static final EntryRows INPUTS = new EntryRows("in", List.of("what", "amount"));
    static final EntryRows YIELDS = new EntryRows("yield", List.of("en", "es", "left"));
    static final EntryRows STEPS =
            new EntryRows(
                    "step",
                    List.of("en", "es", "minutes", "hands", "least", "most", "resource", "slots"));
    static final EntryRows USES = new EntryRows("use", List.of("item", "option", "much"));
    static final EntryRows RESOURCES = new EntryRows("place", List.of("en", "es", "slots", "turn"));

    /** As many rows as a list of the book may have. */
    static final int ROWS_MAX = Limits.MENU_ENTRIES_MAX;

    /** What a row's fields are called. */
    String at(int row) {
        return name + "." + row;
    }

    /** The field that says how many rows there are. */
    String count() {
        return "rows." + name;
    }

    /** The rows in which something was typed, in order. */
    List<Integer> filled(Map<String, String> typed) {
        return IntStream.range(0, ROWS_MAX).filter(row -> isFilled(typed, row)).boxed().toList();
    }

    private boolean isFilled(Map<String, String> typed, int row) {
        return texts.stream()
                .anyMatch(text -> !typed.getOrDefault(at(row) + "." + text, "").isBlank());
    }

    /** The rows that are shown: all that are filled, and some for more. */
    List<Integer> shown(Map<String, String> typed, int least) {
        List<Integer> filled = filled(typed);
        int last = filled.isEmpty() ? 0 : filled.get(filled.size() - 1) + 1;
        String asked = typed.getOrDefault(count(), "");
        int rows = asked.matches("[0-9]{1,3}") ? Integer.parseInt(asked) : last + 1;
        int shown = Math.min(ROWS_MAX, Math.max(Math.max(rows, last), least));
        List<Integer> all = new ArrayList<>();
        IntStream.range(0, shown).forEach(all::add);
        return all;
    }
}
