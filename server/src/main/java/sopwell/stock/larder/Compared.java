package sopwell.stock.larder;

/**
 * What the books expected against what was counted today, in thousandths of the base unit.
 * Immutable.
 *
 * @param expected what the books had at the last count
 * @param counted what was there
 * @param difference counted less expected, of all the day's counts together
 */
public record Compared(
        String ingredient, long countedAtMs, long expected, long counted, long difference) {}
