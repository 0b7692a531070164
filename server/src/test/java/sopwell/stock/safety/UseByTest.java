package sopwell.stock.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.orders.FoodLimits;
import sopwell.orders.FoodLimits.Dating;
import sopwell.stock.safety.Standing.State;

class UseByTest {
    private static final Dating USUAL = FoodLimits.USUAL.dating();
    private static final LocalDate MONDAY = LocalDate.of(2026, 6, 1);

    /** Food Code 3-501.17, as Minn. R. 4626.0400 has it: the day of preparation is day 1. */
    @Test
    void whatIsPreparedOnMondayTheFirstIsUsedOnSundayTheSeventh() {
        assertEquals(LocalDate.of(2026, 6, 7), UseBy.of(MONDAY, 0, false, USUAL));
        assertEquals(LocalDate.of(2026, 6, 7), UseBy.of(MONDAY, 30, false, USUAL));
        assertEquals(LocalDate.of(2026, 6, 3), UseBy.of(MONDAY, 3, false, USUAL));
        assertEquals(MONDAY, UseBy.of(MONDAY, 1, false, USUAL));
    }

    /**
     * PNW 664: vegetables in oil at most 4 days, refrigerated; published advice is 2 to 10 days.
     */
    @Test
    void whatIsUnderOilIsNeverKeptLongerThanTheStandHasSet() {
        assertEquals(LocalDate.of(2026, 6, 4), UseBy.of(MONDAY, 0, true, USUAL));
        assertEquals(LocalDate.of(2026, 6, 4), UseBy.of(MONDAY, 7, true, USUAL));
        assertEquals(LocalDate.of(2026, 6, 2), UseBy.of(MONDAY, 2, true, USUAL));
        Dating loose = new Dating(7, 10, "Penn State Extension");
        assertEquals(LocalDate.of(2026, 6, 7), UseBy.of(MONDAY, 0, true, loose));
    }

    @Test
    void whatIsMadeOfSeveralFoodsTakesTheEarliestDate() {
        LocalDate own = LocalDate.of(2026, 6, 7);
        LocalDate relish = LocalDate.of(2026, 6, 4);
        LocalDate beef = LocalDate.of(2026, 6, 5);
        assertEquals(relish, UseBy.combined(own, List.of(beef, relish)));
        assertEquals(own, UseBy.combined(own, List.of(LocalDate.of(2026, 6, 9))));
        assertEquals(own, UseBy.combined(own, List.of()));
    }

    @Test
    void theLastDayAsksToUseItUpAndTheNextToDiscard() {
        LocalDate useBy = LocalDate.of(2026, 6, 7);
        assertEquals(State.FINE, UseBy.on(useBy.minusDays(1), useBy).state());
        assertEquals(State.ACT, UseBy.on(useBy, useBy).state());
        assertEquals(State.FAILED, UseBy.on(useBy.plusDays(1), useBy).state());
    }
}
