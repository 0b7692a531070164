package sopwell.boards;

/**
 * One number that is up. It holds what any guest may see and nothing else. Immutable.
 *
 * @param number the order's number, which no other open order has
 * @param name the guest's name, or empty
 * @param freshAtMs when it came up, or was called last, milliseconds since 1970-01-01 UTC
 */
public record ReadyRow(int number, String name, long freshAtMs) implements Row {
    @Override
    public String rowId() {
        return Integer.toString(number);
    }
}
