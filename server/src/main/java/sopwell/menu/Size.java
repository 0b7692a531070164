package sopwell.menu;

import java.util.List;

/**
 * One size of an item. Immutable.
 *
 * @param id unique within its item
 * @param priceCents the price of one piece in this size
 */
public record Size(String id, LocalText name, List<String> words, long priceCents) {
    public Size {
        words = List.copyOf(words);
    }
}
