package sopwell.money;

/**
 * So many of one note or coin. Immutable.
 *
 * @param pieces 0 or more
 */
public record CashCount(CashUnit unit, long pieces) {
    /** What they are worth. */
    public long cents() {
        return Math.multiplyExact(unit.cents(), pieces);
    }
}
