package sopwell.web.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

    /** What a form would change against another, line by line; what it lacks would go. */
    static List<String> changes(List<EntryGroup> is, List<EntryGroup> would, T t) {
        Map<String, Said> old = said(is, t);
        Map<String, Said> now = said(would, t);
        Set<String> all = new LinkedHashSet<>(now.keySet());
        all.addAll(old.keySet());
        List<String> changes = new ArrayList<>();
        for (String name : all) {
            Said any = now.getOrDefault(name, old.get(name));
            String before = old.containsKey(name) ? old.get(name).word() : any.blank();
            String after = now.containsKey(name) ? now.get(name).word() : any.blank();
            if (!before.equals(after)) {
                changes.add(t.of("recipes.change", any.label(), before, after));
            }
        }
        return changes;
    }

    /** What a field says in words, and what it would say untouched. */
    private record Said(String label, String word, String blank) {}

    private static Map<String, Said> said(List<EntryGroup> groups, T t) {
        Map<String, Said> all = new LinkedHashMap<>();
        for (EntryGroup group : groups) {
            for (EntryGroup.Row row : group.rows()) {
                for (EntryBox box : row.boxes()) {
                    String label = (row.legend() + " " + box.label()).strip();
                    all.put(box.name(), said(box, label, t));
                }
            }
        }
        return all;
    }

    private static Said said(EntryBox box, String label, T t) {
        if (box.choices().isEmpty()) {
            return new Said(label, word(box.value(), t), word("", t));
        }
        String blank = box.choices().get(0).label();
        String chosen =
                box.choices().stream()
                        .filter(choice -> choice.value().equals(box.value()))
                        .map(EntryBox.Choice::label)
                        .findFirst()
                        .orElse(blank);
        return new Said(label, chosen, blank);
    }

    private static String word(String value, T t) {
        return value.isEmpty() ? t.get("recipes.field.nothing") : value.equals("on") ? "✓" : value;
    }
}
