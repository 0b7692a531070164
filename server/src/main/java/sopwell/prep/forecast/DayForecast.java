package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What one coming day will ask for. Immutable.
 *
 * @param horizon how many open days ahead, from 1
 * @param total pieces of everything
 * @param phiDay how wide the total is on a day whose level is known
 * @param phiLevel how much wider it is because the level that far ahead is not
 * @param items in the order in which they were first sold
 * @param sizes of items that are sold in more than one, called {@code item/size}
 * @param modifiers over all items
 */
public record DayForecast(
        int horizon,
        LocalDate date,
        CountMixture total,
        double phiDay,
        double phiLevel,
        List<Item> items,
        List<Part> sizes,
        List<Part> modifiers,
        Why why) {
    public DayForecast {
        items = List.copyOf(items);
        sizes = List.copyOf(sizes);
        modifiers = List.copyOf(modifiers);
    }

    /**
     * An item.
     *
     * @param share of everything, 0 to 1; all items' together 1
     * @param demand the best that is known: from its share and from its own level
     * @param planned from its share alone, so that all items add up to the total
     * @param ownWeight how much its own level is believed in {@code demand}, 0 to 1
     * @param rho how alike the pieces of a day are
     */
    public record Item(
            String item,
            double share,
            CountMixture demand,
            CountMixture planned,
            double ownWeight,
            double rho) {}

    /**
     * A size or a modifier.
     *
     * @param of the items that it is sold on
     * @param share of those items' pieces, 0 to 1
     */
    public record Part(
            String name, List<String> of, double share, CountMixture demand, double rho) {
        public Part {
            of = List.copyOf(of);
        }
    }

    /** The forecast of an item, if it was ever sold or guessed. */
    public Optional<Item> item(String name) {
        return items.stream().filter(item -> item.item().equals(name)).findFirst();
    }

    /** The forecast of a modifier, if it was ever sold. */
    public Optional<Part> modifier(String name) {
        return modifiers.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** The forecast of a size of an item, if the item is sold in more than one. */
    public Optional<Part> size(String item, String size) {
        return sizes.stream().filter(part -> part.name().equals(item + "/" + size)).findFirst();
    }
}
