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

    /**
     * A list of allergens that has the force of law somewhere. Immutable.
     *
     * @param id names the list on screens
     * @param source where the list stands
     * @param entries the list's entries in its own order, each with the names that a menu uses
     */
    public record Regime(String id, String source, List<List<String>> entries) {
        public Regime {
            entries = entries.stream().map(List::copyOf).toList();
        }

        /** Whether the list asks for this allergen. */
        public boolean asksFor(String allergen) {
            return entries.stream().anyMatch(names -> names.contains(allergen));
        }
    }

    /**
     * The nine major food allergens of the United States, with sesame from 1 January 2023 (FASTER
     * Act of 2021).
     */
    public static final Regime US_9 =
            new Regime(
                    "US-9",
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
                            List.of("sesame")));

    /**
     * The fourteen of the European Union, in the order of Annex II. Its first entry is cereals with
     * gluten: wheat, and others that a menu names {@code gluten}. Sulphites count above 10 mg/kg.
     */
    public static final Regime EU_14 =
            new Regime(
                    "EU-14",
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

    /** What a selection contains, as the menu names it. */
    public static Set<String> of(Menu menu, Selection selection) {
        Set<String> names = new LinkedHashSet<>(menu.item(selection.item()).allergens());
        selection.options().forEach(id -> names.addAll(menu.option(id).allergens()));
        return names;
    }

    /** Every name that a menu may use. */
    public static Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        for (Regime regime : List.of(US_9, EU_14)) {
            regime.entries().forEach(names::addAll);
        }
        return names;
    }
}
