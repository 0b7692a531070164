package sopwell.orders;

import sopwell.menu.Menu;
import sopwell.menu.Pricing;
import sopwell.menu.Selection;
import sopwell.money.Bill;

/**
 * One kind of thing on an order. Immutable.
 *
 * @param line its number on the order, from 1, never given to another line
 * @param quantity 1 to 99
 * @param unitCents the price of one piece when it was ordered
 * @param taxed whether sales tax was due on it when it was ordered
 */
public record OrderLine(
        int line, int quantity, Selection selection, long unitCents, boolean taxed) {
    /** A line at the menu's price. */
    public static OrderLine priced(Menu menu, int line, Asked asked) {
        Selection selection = asked.selection();
        return new OrderLine(
                line,
                asked.quantity(),
                selection,
                Pricing.unitCents(menu, selection),
                menu.item(selection.item()).taxed());
    }

    /** The same at the same price, so many times. */
    OrderLine times(int newQuantity) {
        return new OrderLine(line, newQuantity, selection, unitCents, taxed);
    }

    /** The price of the line, in cents. */
    public long cents() {
        return Math.multiplyExact(quantity, unitCents);
    }

    /** As a line of a bill. */
    public Bill.Line billed() {
        return new Bill.Line(cents(), taxed);
    }
}
