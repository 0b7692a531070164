package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;

/**
 * Who brings an ingredient, and when. Immutable.
 *
 * @param supplier as the stand calls them
 * @param deliveryDays the weekdays on which they come
 * @param leadDays how many calendar days before a delivery it must be ordered; 0 on the same day
 * @param orderBy until when on that day, in the stand's local time
 * @param packInBase the smallest amount they sell, in the ingredient's base unit, above 0
 * @param packCents what that costs
 */
public record Supply(
        String supplier,
        List<DayOfWeek> deliveryDays,
        int leadDays,
        LocalTime orderBy,
        BigDecimal packInBase,
        long packCents) {
    public Supply {
        deliveryDays = List.copyOf(deliveryDays);
        packInBase = Amounts.plain(packInBase);
    }
}
