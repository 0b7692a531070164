package sopwell.orders;

import sopwell.menu.Menu;

/**
 * What a decision may look at besides the orders. Immutable.
 *
 * @param nowMs the one reading of the clock for this command, milliseconds since 1970-01-01 UTC
 * @param selling what can be sold now
 * @param quoting says what wait to quote for these lines
 */
public record Deciding(
        StandSettings settings, Menu menu, long nowMs, Selling selling, Quoting quoting) {
    /** Quotes the wait for a new order. Pure. */
    @FunctionalInterface
    public interface Quoting {
        /** The wait for an order of these lines placed now. */
        Quote quote(java.util.List<OrderLine> lines);
    }
}
