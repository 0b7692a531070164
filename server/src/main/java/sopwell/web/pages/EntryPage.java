package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.web.T;

/**
 * The page with the form of a whole entry, or of the kitchen. Immutable.
 *
 * @param path where the form is sent
 * @param faults what is wrong, by field; without a field under the empty name
 * @param said what came of the last press, line by line
 */
public record EntryPage(
        String title,
        String path,
        List<EntryGroup> groups,
        Map<String, String> faults,
        List<String> said) {
    /** What is wrong and stands at no field, or empty. */
    public String fault() {
        return faults.getOrDefault("", "");
    }

    /** What a form would change against another, line by line. */
    static List<String> changes(List<EntryGroup> is, List<EntryGroup> would, T t) {
        Map<String, EntryBox> old = new LinkedHashMap<>();
        is.forEach(
                group ->
                        group.rows()
                                .forEach(row -> row.boxes().forEach(b -> old.put(b.name(), b))));
        List<String> changes = new ArrayList<>();
        for (EntryGroup group : would) {
            for (EntryGroup.Row row : group.rows()) {
                for (EntryBox box : row.boxes()) {
                    EntryBox was = old.remove(box.name());
                    String before = was == null ? "" : was.value();
                    if (!before.equals(box.value())) {
                        String label = (row.legend() + " " + box.label()).strip();
                        changes.add(
                                t.of(
                                        "recipes.change",
                                        label,
                                        word(before, t),
                                        word(box.value(), t)));
                    }
                }
            }
        }
        return changes;
    }

    private static String word(String value, T t) {
        return value.isEmpty() ? t.get("recipes.field.nothing") : value.equals("on") ? "✓" : value;
    }
}
