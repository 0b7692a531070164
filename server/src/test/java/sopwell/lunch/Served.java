package sopwell.lunch;

import sopwell.orders.Quote;

/**
 * One order as it went. Immutable.
 *
 * @param sinceMs when it was placed, from the lunch's beginning
 * @param waitMs from placed to handed
 * @param agesMs how old its fries and dogs were when they were handed, one for each part
 */
record Served(long sinceMs, long waitMs, Quote quote, java.util.List<Long> agesMs) {
    boolean isWithin() {
        long seconds = waitMs / 1000;
        return seconds >= quote.fromSeconds() && seconds <= quote.toSeconds();
    }

    int widthSeconds() {
        return quote.toSeconds() - quote.fromSeconds();
    }
}
