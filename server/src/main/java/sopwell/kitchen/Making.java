package sopwell.kitchen;

import sopwell.menu.Selection;

/**
 * What is to be made. Immutable.
 *
 * @param quantity how many alike, 1 to 99
 * @param toGo whether it leaves the stand
 * @param menuRevision the menu that its words come from
 */
public record Making(Selection selection, int quantity, boolean toGo, String menuRevision) {}
