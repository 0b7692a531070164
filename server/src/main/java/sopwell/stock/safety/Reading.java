package sopwell.stock.safety;

/**
 * A temperature that somebody measured in the food. Immutable.
 *
 * @param atMs when, milliseconds since 1970-01-01 UTC
 */
public record Reading(long atMs, Temperature temperature) {}
