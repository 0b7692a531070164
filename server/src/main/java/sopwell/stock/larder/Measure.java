package sopwell.stock.larder;

/**
 * An amount of one ingredient, as it is reckoned with and as somebody entered it. Immutable.
 *
 * @param thousandths in thousandths of the ingredient's base unit, not below 0
 * @param entered the number that was entered, such as 2.5
 * @param unit what it was entered in: a unit's id or one of the ingredient's containers
 */
public record Measure(String ingredient, long thousandths, String entered, String unit) {}
