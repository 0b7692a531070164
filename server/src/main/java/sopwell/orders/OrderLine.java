package sopwell.orders;

import sopwell.menu.Selection;

/**
 * One kind of thing on an order. Immutable.
 *
 * @param line its number on the order, from 1, never given to another line
 * @param quantity 1 to 99
 * @param unitCents the price of one piece when it was ordered
 */
public record OrderLine(int line, int quantity, Selection selection, long unitCents) {
    /** The price of the line, in cents. */
    public long cents() {
        return Math.multiplyExact(quantity, unitCents);
    }
}
