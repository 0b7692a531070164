package sopwell.mix;

import sopwell.menu.LocalText;

/**
 * So many pieces of an item in a size. Immutable.
 *
 * @param size the size's id, or empty for an item without sizes
 * @param sizeName the size's name, or empty texts
 * @param cents what they were sold for, before tax
 */
public record ItemCount(
        String item, LocalText name, String size, LocalText sizeName, int pieces, long cents) {
    /** Both counted together. */
    ItemCount plus(ItemCount more) {
        return new ItemCount(
                item, name, size, sizeName, pieces + more.pieces, Math.addExact(cents, more.cents));
    }
}
