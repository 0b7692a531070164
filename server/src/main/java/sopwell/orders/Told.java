package sopwell.orders;

import sopwell.menu.Menu;

/**
 * What a guest was told before the stand could be asked: a price by a menu that the counter had at
 * hand, at a time. Immutable.
 *
 * @param menu the menu by which the price was told; one that was in force here once
 * @param totalCents the total that was told
 * @param atMs when the call was taken, milliseconds since 1970-01-01 UTC
 */
public record Told(Menu menu, long totalCents, long atMs) {}
