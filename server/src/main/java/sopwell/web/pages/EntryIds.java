package sopwell.web.pages;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import sopwell.Limits;

/** Gives what was named an id, so that nobody has to think of one. Not thread-safe. */
final class EntryIds {
    private static final String NAMELESS = "entry";

    /** Addresses below {@code /recipes} that are no ingredient's. */
    private static final Set<String> RESERVED = Set.of("new", "kitchen");

    private final Set<String> taken = new HashSet<>();

    /** The id that was kept for a row, or a new one after its name, which no other row has. */
    String of(String kept, String name) {
        String wanted = kept.isEmpty() ? of(name) : kept;
        String id = wanted;
        for (int n = 2; !taken.add(id); n++) {
            id = wanted + "-" + n;
        }
        return id;
    }

    /** The id after a name: its letters without accents, its digits, hyphens between. */
    static String of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        String id = plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        int most = Math.min(id.length(), Limits.ID_CHARS_MAX - NAMELESS.length());
        String cut = id.substring(0, most).replaceAll("^-|-$", "");
        if (cut.isEmpty()) {
            return NAMELESS;
        }
        return RESERVED.contains(cut) ? cut + "-" + NAMELESS : cut;
    }
}
