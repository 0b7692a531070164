package sopwell.stock.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.orders.FoodLimits;
import sopwell.orders.FoodLimits.OvenKind;
import sopwell.orders.RoastTable;
import sopwell.stock.safety.Standing.Advice;
import sopwell.stock.safety.Standing.State;

/** Roasts against what is published. */
class RoastClockTest {
    private static final long MINUTE_MS = 60_000L;

    private static Optional<Integer> at(RoastTable table, int tenthsF) {
        return RoastClock.secondsAt(table, Temperature.tenthsF(tenthsF));
    }

    /** FDA Food Code 3-401.11(B)(2) as Florida and Alaska (18 AAC 31.232) adopted it. */
    @ParameterizedTest(name = "{0} °F is held {1} s")
    @CsvSource({
        "130,6720",
        "131,5340",
        "133,3360",
        "135,2160",
        "136,1680",
        "138,1080",
        "140,720",
        "142,480",
        "144,300",
        "145,240",
        "147,134",
        "149,85",
        "151,54",
        "153,34",
        "155,22",
        "157,14",
        "158,0",
        "180,0"
    })
    void everyRowOfTheFoodCodeIsAsPublished(int f, int seconds) {
        assertEquals(Optional.of(seconds), at(RoastTable.FOOD_CODE, f * 10));
    }

    /** USDA FSIS Appendix A (1999): both columns, minutes up to 145 °F and seconds above. */
    @ParameterizedTest(name = "{0} °F: {1} for 6.5-log, {2} for 7-log")
    @CsvSource({
        "130,112,121",
        "131,89,97",
        "132,71,77",
        "133,56,62",
        "134,45,47",
        "135,36,37",
        "136,28,32",
        "137,23,24",
        "138,18,19",
        "139,15,15",
        "140,12,12",
        "141,9,10",
        "142,8,8",
        "143,6,6",
        "144,5,5",
        "145,4,4",
        "146,169,182",
        "147,134,144",
        "148,107,115",
        "149,85,91",
        "150,67,72",
        "151,54,58",
        "152,43,46",
        "153,34,37",
        "154,27,29",
        "155,22,23",
        "156,17,19",
        "157,14,15",
        "158,0,0",
        "159,0,0",
        "160,0,0"
    })
    void everyRowOfTheAppendixIsAsPublished(int f, int lower, int higher) {
        int unit = f <= 145 ? 60 : 1;
        assertEquals(Optional.of(lower * unit), at(RoastTable.LOG_6_5, f * 10));
        assertEquals(Optional.of(higher * unit), at(RoastTable.LOG_7, f * 10));
    }

    /** The Food Code's rows are those of the 6.5-log column, wherever both have one. */
    @Test
    void theFoodCodeSharesItsRowsWithTheSixAndAHalfLogColumn() {
        assertEquals(17, RoastTable.FOOD_CODE.rows().size());
        assertTrue(RoastTable.LOG_6_5.rows().containsAll(RoastTable.FOOD_CODE.rows()));
        assertFalse(RoastTable.LOG_7.rows().containsAll(RoastTable.FOOD_CODE.rows()));
    }

    @Test
    void betweenTwoRowsTheCoolerOneHolds() {
        assertEquals(Optional.of(89 * 60), at(RoastTable.FOOD_CODE, 1_320));
        assertEquals(Optional.of(89 * 60), at(RoastTable.FOOD_CODE, 1_329));
        assertEquals(Optional.of(14), at(RoastTable.FOOD_CODE, 1_579));
        assertEquals(Optional.empty(), at(RoastTable.FOOD_CODE, 1_299));
    }

    @Test
    void aRoastIsDoneOnceMeasurementsShowItsTime() {
        List<Reading> first = List.of(reading(0, 1_300), reading(10, 1_310));
        Standing waits = RoastClock.roast(RoastTable.FOOD_CODE, first);
        assertEquals(State.FINE, waits.state());
        assertEquals(Advice.ROAST_HOLD, waits.advice());
        assertEquals(99 * MINUTE_MS, waits.byMs(), "131 °F from minute 10 is sooner than 130");
        List<Reading> early = List.of(first.get(0), first.get(1), reading(98, 1_312));
        assertEquals(State.FINE, RoastClock.roast(RoastTable.FOOD_CODE, early).state());
        List<Reading> held = List.of(first.get(0), first.get(1), reading(99, 1_312));
        assertEquals(State.DONE, RoastClock.roast(RoastTable.FOOD_CODE, held).state());
        assertEquals(State.FINE, RoastClock.roast(RoastTable.LOG_7, held).state());
    }

    @Test
    void aDipBelowTheRowStartsItsTimeAnew() {
        List<Reading> dip = List.of(reading(0, 1_360), reading(20, 1_299), reading(50, 1_360));
        Standing standing = RoastClock.roast(RoastTable.FOOD_CODE, dip);
        assertEquals(State.FINE, standing.state());
        assertEquals((50 + 28) * MINUTE_MS, standing.byMs());
    }

    @Test
    void aRoastBelowEveryRowGoesOnAndOneAtTheTopIsDone() {
        Standing cool = RoastClock.roast(RoastTable.FOOD_CODE, List.of(reading(5, 1_250)));
        assertEquals(Advice.ROAST_ON, cool.advice());
        assertEquals(Optional.of(Temperature.fahrenheit(130)), cool.target());
        assertEquals(Advice.ROAST_ON, RoastClock.roast(RoastTable.FOOD_CODE, List.of()).advice());
        Standing hot = RoastClock.roast(RoastTable.FOOD_CODE, List.of(reading(5, 1_580)));
        assertEquals(State.DONE, hot.state());
    }

    /** Food Code 3-401.11(B)(1): still dry, convection and humid ovens, below 10 lb and from it. */
    @ParameterizedTest(name = "{0}, {1} g: {2} °F")
    @CsvSource({
        "DRY,4535,350",
        "DRY,4536,250",
        "CONVECTION,4535,325",
        "CONVECTION,4536,250",
        "HUMID,4535,250",
        "HUMID,9000,250"
    })
    void anOvenIsAsHotAsPublished(OvenKind kind, long grams, int f) {
        Temperature limit = Temperature.fahrenheit(f);
        FoodLimits usual = FoodLimits.USUAL;
        assertEquals(Optional.of(limit), RoastClock.oven(usual, kind, grams));
    }

    private static Reading reading(int minute, int tenthsF) {
        return new Reading(minute * MINUTE_MS, Temperature.tenthsF(tenthsF));
    }
}
