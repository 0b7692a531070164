package sopwell.stock.recipes;

import java.math.BigDecimal;
import sopwell.menu.LocalText;

/**
 * What an ingredient is kept in: a pan, a case, a crock, a roast piece. Immutable.
 *
 * @param id unique within its ingredient
 * @param inBase what one holds, in the ingredient's base unit, above 0
 */
public record Container(String id, LocalText name, BigDecimal inBase) {
    public Container {
        inBase = Amounts.plain(inBase);
    }
}
