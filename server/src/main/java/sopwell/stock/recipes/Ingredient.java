package sopwell.stock.recipes;

import java.util.List;
import java.util.Optional;
import sopwell.menu.Caution;
import sopwell.menu.LocalText;

/**
 * Something that is kept: bought, or made by a {@link Recipe}. Immutable.
 *
 * @param id letters, digits and hyphens
 * @param unit what people here count it in; amounts are kept in its {@link #base}
 * @param containers what it is kept in, to count and to draw by
 * @param supply who brings it; empty for what is made here, or needs no order (water)
 * @param shelfLifeDays for how many days it may be used, the day it came in, was opened or was made
 *     counted as day 1; 0 when that does not matter. For what is made see {@link Recipe#datedFrom}
 * @param allergens as the menu names them
 * @param place where it is kept
 * @param cautions what can hurt where it is worked with
 */
public record Ingredient(
        String id,
        LocalText name,
        Unit unit,
        List<Container> containers,
        Optional<Supply> supply,
        int shelfLifeDays,
        List<String> allergens,
        Place place,
        List<Caution> cautions) {
    public Ingredient {
        containers = List.copyOf(containers);
        allergens = List.copyOf(allergens);
        cautions = List.copyOf(cautions);
    }

    /**
     * Where it is kept. Immutable.
     *
     * @param shelf as people call it; empty when it is kept nowhere in particular
     * @param order when a count's walk comes by, lower first
     */
    public record Place(LocalText shelf, int order) {
        /** Kept nowhere in particular. */
        public static final Place ANYWHERE = new Place(new LocalText("", ""), 0);

        /** Whether a shelf is named. */
        public boolean isNamed() {
            return !shelf.en().isEmpty() || !shelf.es().isEmpty();
        }
    }

    /** What all its amounts are kept in: grams, millilitres or pieces. */
    public Unit base() {
        return unit.dimension().base();
    }

    /** The container with this id, if it is kept in one. */
    public Optional<Container> container(String containerId) {
        return containers.stream().filter(one -> one.id().equals(containerId)).findFirst();
    }
}
