package sopwell.stock.recipes;

import java.math.BigDecimal;

/**
 * What one sold piece takes of one ingredient. Immutable.
 *
 * <p>Without an option it is what the item takes by itself, of one size or of all. With an option
 * it adds its amount to that, or makes it so many percent.
 *
 * @param ingredient what is taken
 * @param item the item; empty, with an option, for every item that the option is chosen on
 * @param size the size, or empty for those that no other use names
 * @param option the modifier, or empty
 * @param amount how much, in the ingredient's base unit; 0 when the use is a percentage
 * @param percent what an option makes of the item's own amount, 100 leaves it as it is; 0 when the
 *     use is an amount
 */
public record Use(
        String ingredient,
        String item,
        String size,
        String option,
        BigDecimal amount,
        int percent) {
    public Use {
        amount = Amounts.plain(amount);
    }

    /** Whether it scales the item's own amount rather than adding to it. */
    public boolean isPercent() {
        return percent != 0;
    }
}
