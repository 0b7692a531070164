package sopwell.stock.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.orders.FoodLimits;
import sopwell.orders.Safety;
import sopwell.stock.safety.Standing.Advice;
import sopwell.stock.safety.Standing.State;

/** Cooling, reheating, holding and time as a control against what is published. */
class ClocksTest {
    private static final long MINUTE_MS = 60_000L;
    private static final FoodLimits FOOD = FoodLimits.USUAL;
    private static final Safety SAFETY = Safety.USUAL;

    private static List<Reading> readings(int... minutesAndF) {
        List<Reading> readings = new ArrayList<>();
        for (int n = 0; n < minutesAndF.length; n += 2) {
            readings.add(
                    new Reading(
                            minutesAndF[n] * MINUTE_MS,
                            Temperature.fahrenheit(minutesAndF[n + 1])));
        }
        return readings;
    }

    private static State cooked(int minute, int... minutesAndF) {
        return CoolingClock.cooked(FOOD, 0, readings(minutesAndF), minute * MINUTE_MS).state();
    }

    /** Food Code 3-501.14(A): 135 to 70 °F within 2 h, and to 41 °F within 6 h in all. */
    @Test
    void cookedFoodHasTwoHoursToSeventyAndSixToFortyOne() {
        assertEquals(State.FINE, cooked(60));
        assertEquals(State.ACT, cooked(91));
        assertEquals(State.ACT, cooked(120));
        assertEquals(State.FAILED, cooked(121));
        assertEquals(State.FINE, cooked(121, 0, 135, 120, 70));
        assertEquals(State.ACT, cooked(331, 0, 135, 119, 70));
        assertEquals(State.FAILED, cooked(361, 0, 135, 120, 70, 359, 42));
        assertEquals(State.DONE, cooked(361, 0, 135, 120, 70, 360, 41));
        Standing standing = CoolingClock.cooked(FOOD, 0, readings(0, 135, 30, 120), 1);
        assertEquals(120 * MINUTE_MS, standing.byMs());
        assertEquals(Advice.COOL_MIDDLE, standing.advice());
        assertEquals(Optional.of(Temperature.fahrenheit(70)), standing.target());
    }

    /** The six hours have the first two in them: missing 70 at two hours is a failure by itself. */
    @Test
    void missingSeventyIsAFailureAlsoWhenFortyOneIsMet() {
        assertEquals(State.FAILED, cooked(361, 0, 135, 121, 70, 300, 41));
        assertEquals(State.DONE, cooked(361, 0, 135, 100, 41), "colder than asked is as good");
    }

    @Test
    void theClockStartsWhereThirtyFiveOverAHundredIsPassed() {
        Standing standing =
                CoolingClock.cooked(FOOD, 0, readings(0, 180, 20, 140, 40, 130), 50 * MINUTE_MS);
        assertEquals((20 + 120) * MINUTE_MS, standing.byMs());
    }

    @Test
    void aPaceThatIsTooSlowAsksToActAtOnce() {
        assertEquals(State.ACT, cooked(31, 0, 135, 30, 125), "10 degrees in half an hour");
        assertEquals(State.FINE, cooked(31, 0, 135, 30, 115));
    }

    /** Food Code 3-501.14(B): from room temperature to 41 °F within 4 h. */
    @Test
    void foodMadeAtRoomTemperatureHasFourHours() {
        assertEquals(State.FINE, CoolingClock.ambient(FOOD, 0, readings(), 1).state());
        List<Reading> late = readings(0, 70, 241, 41);
        assertEquals(State.FAILED, CoolingClock.ambient(FOOD, 0, late, 241 * MINUTE_MS).state());
        List<Reading> inTime = readings(0, 70, 240, 41);
        assertEquals(State.DONE, CoolingClock.ambient(FOOD, 0, inTime, 241 * MINUTE_MS).state());
    }

    /** Food Code 3-403.11: 165 °F for 15 s, within 2 h. */
    /** 3-403.11(E): an unsliced roast by the table of 3-401.11(B): 140 °F for 12 minutes. */
    @Test
    void aWholeRoastIsReheatedByItsTableToo() {
        List<Reading> held =
                List.of(
                        new Reading(60 * MINUTE_MS, Temperature.fahrenheit(140)),
                        new Reading(72 * MINUTE_MS, Temperature.fahrenheit(141)));
        long now = 73 * MINUTE_MS;
        assertEquals(State.DONE, HoldingClock.reheatRoast(SAFETY, 0, held, now).state());
        assertEquals(State.FINE, HoldingClock.reheat(SAFETY, 0, held, now).state(), "not sliced");
        Standing waits = HoldingClock.reheatRoast(SAFETY, 0, held.subList(0, 1), now);
        assertEquals(Advice.ROAST_HOLD, waits.advice());
        assertEquals(72 * MINUTE_MS, waits.byMs());
        List<Reading> late =
                List.of(
                        new Reading(115 * MINUTE_MS, Temperature.fahrenheit(140)),
                        new Reading(127 * MINUTE_MS, Temperature.fahrenheit(140)));
        Standing failed = HoldingClock.reheatRoast(SAFETY, 0, late, 128 * MINUTE_MS);
        assertEquals(State.FAILED, failed.state(), "after two hours");
    }

    @Test
    void reheatingIsDoneFifteenSecondsAboveTheLimitAndWithinTwoHours() {
        List<Reading> hot = readings(60, 165);
        long atMs = 60 * MINUTE_MS;
        Standing waits = HoldingClock.reheat(SAFETY, 0, hot, atMs + 14_999);
        assertEquals(Advice.REHEAT_HOLD, waits.advice());
        assertEquals(State.FINE, waits.state());
        assertEquals(State.DONE, HoldingClock.reheat(SAFETY, 0, hot, atMs + 15_000).state());
        List<Reading> slow = readings(60, 164);
        assertEquals(State.ACT, HoldingClock.reheat(SAFETY, 0, slow, 91 * MINUTE_MS).state());
        assertEquals(State.FAILED, HoldingClock.reheat(SAFETY, 0, slow, 121 * MINUTE_MS).state());
        List<Reading> late = readings(121, 165);
        assertEquals(State.FAILED, HoldingClock.reheat(SAFETY, 0, late, 130 * MINUTE_MS).state());
        List<Reading> dipped = readings(60, 165, 90, 150);
        assertEquals(State.DONE, HoldingClock.reheat(SAFETY, 0, dipped, 99 * MINUTE_MS).state());
    }

    /** Food Code 3-501.16(A): 135 °F, 130 °F for roasts, 41 °F for what is cold. */
    @Test
    void hotFoodIsHotColdFoodColdAndARoastMayBeALittleCooler() {
        long nowMs = 11 * MINUTE_MS;
        List<Reading> warm = readings(10, 134);
        assertEquals(Advice.HOT_AGAIN, HoldingClock.hot(SAFETY, false, 0, warm, nowMs).advice());
        assertEquals(Advice.HOT_HOLD, HoldingClock.hot(SAFETY, true, 0, warm, nowMs).advice());
        List<Reading> cooler = readings(10, 129);
        assertEquals(State.ACT, HoldingClock.hot(SAFETY, true, 0, cooler, nowMs).state());
        assertEquals(State.FINE, HoldingClock.cold(SAFETY, 0, readings(10, 41), nowMs).state());
        Standing warmed = HoldingClock.cold(SAFETY, 0, readings(10, 42), nowMs);
        assertEquals(Advice.COLD_AGAIN, warmed.advice());
    }

    @Test
    void foodTooCoolForFourHoursSinceItWasRightIsDiscarded() {
        List<Reading> cool = readings(60, 136, 120, 100);
        assertEquals(State.ACT, HoldingClock.hot(SAFETY, false, 0, cool, 300 * MINUTE_MS).state());
        assertEquals(
                State.FAILED, HoldingClock.hot(SAFETY, false, 0, cool, 301 * MINUTE_MS).state());
        List<Reading> foundLate = readings(0, 136, 241, 100, 250, 170);
        assertEquals(
                State.FAILED,
                HoldingClock.hot(SAFETY, false, 0, foundLate, 251 * MINUTE_MS).state());
    }

    /** Food Code 3-501.19(B) and (C): 4 h; 6 h when it starts at 41 °F and stays at 70 or below. */
    @ParameterizedTest(name = "{0} °F at the start, {1} °F at most, after {2} min: {3}, {4}")
    @CsvSource({
        "41,41,209,FINE,FINE", "41,41,211,ACT,FINE", "41,41,241,FAILED,FINE",
        "41,70,331,FAILED,ACT", "41,70,361,FAILED,FAILED", "41,71,60,FINE,FAILED",
        "42,42,60,FAILED,FAILED", "135,135,60,FINE,FAILED", "134,134,60,FAILED,FAILED"
    })
    void timeAloneControlsForFourOrSixHours(
            int start, int most, int minute, State shorter, State longer) {
        long nowMs = minute * MINUTE_MS;
        Temperature from = Temperature.fahrenheit(start);
        assertEquals(shorter, HoldingClock.shortTime(SAFETY, 0, from, nowMs).state());
        List<Reading> readings = readings(0, start, 30, most);
        assertEquals(longer, HoldingClock.longTime(SAFETY, 0, readings, nowMs).state());
    }

    /** Food Code 4-602.11(C): at least every 4 h. */
    @Test
    void aSlicerInUseIsCleanedEveryFourHours() {
        assertEquals(State.FINE, HoldingClock.slicer(SAFETY, 0, 209 * MINUTE_MS).state());
        assertEquals(State.ACT, HoldingClock.slicer(SAFETY, 0, 240 * MINUTE_MS).state());
        assertEquals(State.FAILED, HoldingClock.slicer(SAFETY, 0, 241 * MINUTE_MS).state());
        assertEquals(Advice.CLEAN, HoldingClock.slicer(SAFETY, 0, 241 * MINUTE_MS).advice());
    }

    /** On 8 March 2026 the hour after 01:59 in Chicago is 03:00: six hours end at 07:00. */
    @Test
    void sixHoursAreSixHoursOnTheNightWhenTheClocksChange() {
        ZoneId zone = ZoneId.of("America/Chicago");
        long startMs = LocalDateTime.of(2026, 3, 8, 0, 0).atZone(zone).toInstant().toEpochMilli();
        List<Reading> readings =
                List.of(
                        new Reading(startMs, Temperature.fahrenheit(135)),
                        new Reading(startMs + 100 * MINUTE_MS, Temperature.fahrenheit(70)));
        long byMs = CoolingClock.cooked(FOOD, startMs, readings, startMs + MINUTE_MS * 101).byMs();
        assertEquals(
                LocalDateTime.of(2026, 3, 8, 7, 0),
                LocalDateTime.ofInstant(java.time.Instant.ofEpochMilli(byMs), zone));
    }

    @Test
    void timeNeverMendsWhatFailed() {
        Random random = new Random(7);
        for (int n = 0; n < 2_000; n++) {
            List<Reading> readings = new ArrayList<>();
            int minute = 0;
            for (int r = random.nextInt(5); r > 0; r--) {
                minute += random.nextInt(200);
                readings.addAll(readings(minute, 30 + random.nextInt(150)));
            }
            boolean failed = false;
            for (int now = minute; now < minute + 800; now += 37) {
                long nowMs = now * MINUTE_MS;
                State state = CoolingClock.cooked(FOOD, 0, readings, nowMs).state();
                assertEquals(failed || state == State.FAILED, state == State.FAILED);
                failed = state == State.FAILED;
            }
        }
    }

    @Test
    void theLimitsAreSettings() {
        FoodLimits strict =
                new FoodLimits(
                        new FoodLimits.Cooling(140, 75, 60, 40, 300, 120),
                        40,
                        FOOD.dating(),
                        FOOD.time(),
                        FOOD.roast(),
                        FOOD.ovens(),
                        FOOD.largeFromGrams(),
                        10,
                        true);
        Standing standing = CoolingClock.cooked(strict, 0, List.of(), 49 * MINUTE_MS);
        assertEquals(State.FINE, standing.state());
        assertEquals(60 * MINUTE_MS, standing.byMs());
        assertEquals(11 * MINUTE_MS, standing.leftMs(49 * MINUTE_MS));
        assertEquals(Optional.of(Temperature.fahrenheit(75)), standing.target());
    }
}
