package sopwell.web.pages;

import java.util.List;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.orders.Safety;
import sopwell.stock.larder.Larder;
import sopwell.stock.larder.StockNow;

/**
 * What the shelves and the batches still want before the day closes. Immutable.
 *
 * @param now what is kept and made
 * @param known how many of the ingredients on the shelves were ever counted
 * @param counted how many of those were counted since the day was opened
 * @param wasted what was thrown away since then, by ingredient, thousandths of the base unit
 */
record CloseStock(StockNow now, int known, int counted, Map<String, Long> wasted) {
    CloseStock {
        wasted = Map.copyOf(wasted);
    }

    static CloseStock of(Stand stand, long nowMs) {
        Larder larder = stand.larder();
        Safety safety = stand.settings().safety();
        StockNow now = StockNow.of(stand.recipes(), larder, safety, nowMs);
        List<String> known =
                now.left().stream()
                        .filter(left -> left.held().isPresent())
                        .map(left -> left.ingredient().id())
                        .toList();
        int counted = (int) known.stream().filter(larder.countedToday()::contains).count();
        return new CloseStock(now, known.size(), counted, larder.wastedToday());
    }

    /** Whether everything that is ever counted was counted today. */
    boolean isCounted() {
        return known > 0 && counted == known;
    }
}
