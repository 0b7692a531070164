package sopwell.web.pages;

import sopwell.orders.OrderEvent.OrderPlaced;

/**
 * What a press at the counter came to, for the panel that says so. Immutable.
 *
 * @param kind {@code placed}, {@code changed}, {@code voided}, {@code refused}, {@code stale}, or
 *     empty for nothing
 * @param placed the order that was placed, or null
 * @param number the order's number, or 0
 * @param sentence why it was refused, or empty
 * @param meanwhile what somebody else changed, when it was refused for that; or null
 */
record CounterResult(
        String kind, OrderPlaced placed, int number, String sentence, MeanwhileView meanwhile) {
    /** Headers of an answer: the order that something was done to, and its number. */
    static final String ORDER = "Sopwell-Order";

    static final String NUMBER = "Sopwell-Number";

    static final CounterResult NONE = new CounterResult("", null, 0, "");

    CounterResult(String kind, OrderPlaced placed, int number, String sentence) {
        this(kind, placed, number, sentence, null);
    }

    static CounterResult stale(MeanwhileView meanwhile) {
        return new CounterResult("stale", null, 0, "", meanwhile);
    }

    static CounterResult refused(String sentence) {
        return new CounterResult("refused", null, 0, sentence);
    }
}
