package sopwell.web.pages;

/**
 * What stands in the counter's form. Immutable.
 *
 * @param key the idempotency key of the next order or change
 * @param order the order that is being changed, or empty for a new one
 * @param number that order's number
 * @param version the version that the editor saw
 */
public record CounterForm(
        String key, String call, String name, boolean toGo, String order, int number, int version) {
    /** A form for the next order. */
    static CounterForm fresh(String key) {
        return new CounterForm(key, "", "", true, "", 0, 0);
    }

    /** Whether an order is being changed. */
    public boolean isEdit() {
        return !order.isEmpty();
    }

    /** Where it is sent. */
    public String address() {
        return isEdit() ? "/counter/orders/" + order + "/changes" : "/counter/orders";
    }
}
