package sopwell.stock.larder;

/**
 * An amount as somebody typed it, not looked at yet. Immutable.
 *
 * @param amount a number with a point, such as 2.5
 * @param unit a unit's id ({@code lb}, {@code fl-oz}) or one of the ingredient's containers
 */
public record TypedAmount(String ingredient, String amount, String unit) {}
