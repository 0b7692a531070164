package sopwell.stock.recipes;

import sopwell.menu.LocalText;

/**
 * What steps share and wait for: an oven, a chill room, a pair of hands. Immutable.
 *
 * @param id letters, digits and hyphens
 * @param slots how many slots it has, at least 1
 * @param turnaroundMinutes how long it needs between two runs
 */
public record Resource(String id, LocalText name, int slots, int turnaroundMinutes) {}
