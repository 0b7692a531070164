package sopwell.call;

import sopwell.menu.Selection;

/**
 * So many of one thing, all made alike. Immutable.
 *
 * @param quantity 1 to 99
 */
public record Counted(int quantity, Selection selection) {}
