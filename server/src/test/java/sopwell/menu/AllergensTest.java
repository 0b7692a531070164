package sopwell.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sopwell.menu.Allergens.Regime;

class AllergensTest {
    @Test
    void theAmericanListHasItsNine() {
        Set<String> nine =
                Set.of(
                        "milk",
                        "egg",
                        "fish",
                        "crustaceans",
                        "tree-nuts",
                        "wheat",
                        "peanuts",
                        "soy",
                        "sesame");
        assertEquals(9, Allergens.US_9.entries().size());
        assertEquals(nine, flat(Allergens.US_9));
    }

    @Test
    void theEuropeanListHasItsFourteenInTheOrderOfTheAnnex() {
        List<List<String>> entries = Allergens.EU_14.entries();
        assertEquals(14, entries.size());
        assertEquals(List.of("wheat", "gluten"), entries.get(0));
        assertEquals(List.of("milk"), entries.get(6));
        assertEquals(List.of("celery"), entries.get(8));
        assertEquals(List.of("mustard"), entries.get(9));
        assertEquals(List.of("sulphites"), entries.get(11));
        assertEquals(List.of("molluscs"), entries.get(13));
    }

    @Test
    void celeryMustardAndSulphitesAreOnTheEuropeanListAlone() {
        for (String allergen : List.of("celery", "mustard", "sulphites", "lupin", "molluscs")) {
            assertTrue(Allergens.EU_14.asksFor(allergen), allergen);
            assertFalse(Allergens.US_9.asksFor(allergen), allergen);
        }
        assertTrue(Allergens.US_9.asksFor("sesame"));
    }

    @Test
    void bothListsSayWhereTheyStand() {
        assertTrue(Allergens.US_9.source().contains("321(qq)"));
        assertTrue(Allergens.EU_14.source().contains("1169/2011"));
        Set<String> all = flat(Allergens.US_9);
        all.addAll(flat(Allergens.EU_14));
        assertEquals(all, Allergens.names());
    }

    private static Set<String> flat(Regime regime) {
        Set<String> names = new HashSet<>();
        regime.entries().forEach(names::addAll);
        return names;
    }
}
