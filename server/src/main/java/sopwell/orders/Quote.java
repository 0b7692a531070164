package sopwell.orders;

/**
 * The wait told to the guest, as a range. Immutable.
 *
 * @param fromSeconds 0 or more
 * @param toSeconds not less than {@code fromSeconds}
 */
public record Quote(int fromSeconds, int toSeconds) {}
