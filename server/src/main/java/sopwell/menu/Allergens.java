package sopwell.menu;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The allergens that a menu may name, and which law asks for which. Stateless.
 *
 * <p>A menu names what is in the food; the lists differ, so the regime is asked for when something
 * is shown. Celery and mustard, for one, are on the European list and not on the American one. None
 * of this replaces the advice of the stand's own health department.
 */
public final class Allergens {
    private Allergens() {}

    /** A list of allergens that has the force of law somewhere. */
    public enum Regime {
        /**
         * The nine major food allergens of the United States: 21 USC 321(qq), with sesame from
         * 1 January 2023 (FASTER Act of 2021).
         */
        US_9(
                "21 USC 321(qq)",
                List.of(
                        List.of("milk"),
                        List.of("egg"),
                        List.of("fish"),
                        List.of("crustaceans"),
                        List.of("tree-nuts"),
                        List.of("wheat"),
                        List.of("peanuts"),
                        List.of("soy"),
                        List.of("sesame"))),
        /**
         * The fourteen of the European Union, in the order of Annex II. Its first entry is cereals
         * with gluten: wheat, and others that a menu names {@code gluten}. Sulphites count above
         * 10 mg/kg.
         */
        EU_14(
                "Regulation (EU) 1169/2011, Annex II",
                List.of(
                        List.of("wheat", "gluten"),
                        List.of("crustaceans"),
                        List.of("egg"),
                        List.of("fish"),
                        List.of("peanuts"),
                        List.of("soy"),
                        List.of("milk"),
                        List.of("tree-nuts"),
                        List.of("celery"),
                        List.of("mustard"),
                        List.of("sesame"),
                        List.of("sulphites"),
                        List.of("lupin"),
                        List.of("molluscs")));

        private final String source;
        private final List<List<String>> entries;

        Regime(String source, List<List<String>> entries) {
            this.source = source;
            this.entries = entries;
        }

        /** Where the list stands. */
        public String source() {
            return source;
        }

        /** The list's entries in its own order, each with the names that a menu uses for it. */
        public List<List<String>> entries() {
            return entries;
        }

        /** Whether the list asks for this allergen. */
        public boolean asksFor(String allergen) {
            return entries.stream().anyMatch(names -> names.contains(allergen));
        }
    }

    /** Every name that a menu may use. */
    public static Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        for (Regime regime : Regime.values()) {
            regime.entries().forEach(names::addAll);
        }
        return names;
    }
}
