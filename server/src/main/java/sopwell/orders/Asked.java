package sopwell.orders;

import sopwell.menu.Selection;

/**
 * One line as it is asked for, before it has a number and a price. Immutable.
 *
 * @param quantity 1 to 99
 */
public record Asked(int quantity, Selection selection) {}
