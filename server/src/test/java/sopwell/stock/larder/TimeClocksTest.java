package sopwell.stock.larder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.orders.OrderEvent.DayOpened;
import sopwell.orders.Reason;
import sopwell.orders.Safety;
import sopwell.stock.larder.LarderCommand.MeasureClock;
import sopwell.stock.larder.LarderCommand.StartClock;
import sopwell.stock.larder.LarderCommand.StopClock;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;
import sopwell.stock.safety.Standing;
import sopwell.stock.safety.Standing.Advice;
import sopwell.stock.safety.Standing.State;

/** Food that is held by time alone: FDA Food Code 3-501.19, as States have it. */
class TimeClocksTest {
    private final Script script = new Script().recipes(Books.small());

    private TimeClock clock(String id) {
        return script.stand().larder().clock(id).orElseThrow();
    }

    private Standing standing(String id) {
        return clock(id).standing(Safety.USUAL, script.nowMs());
    }

    @Test
    void theShorterClockRunsForFourHours() {
        long start = script.nowMs();
        script.must(new StartClock(" relish, line ", false, "41", false));
        assertEquals("relish, line", clock("t1").what());
        assertEquals(start + 4 * 3_600_000L, standing("t1").byMs());
        assertEquals(Advice.USE_UP, standing("t1").advice());
        script.later(3 * 3_600 + 31 * 60);
        assertEquals(State.ACT, standing("t1").state(), "half an hour before");
        script.later(30 * 60);
        assertEquals(State.FAILED, standing("t1").state());
        assertEquals(Advice.DISCARD, standing("t1").advice());
        script.must(new StopClock("t1", true));
        assertEquals(List.of(), script.stand().larder().clocks());
    }

    @Test
    void theLongerClockStopsAtSeventyDegrees() {
        script.must(new StartClock("egg mix", true, "5", true));
        assertEquals(State.FINE, standing("t1").state());
        assertEquals(clock("t1").startedAtMs() + 6 * 3_600_000L, standing("t1").byMs());
        script.later(3_600);
        script.must(new MeasureClock("t1", "70", false));
        assertEquals(State.FINE, standing("t1").state());
        script.must(new MeasureClock("t1", "70.1", false));
        assertEquals(State.FAILED, standing("t1").state());
    }

    @Test
    void whatStartsTooWarmIsToldAtOnceAndNothingIsLocked() {
        script.must(new StartClock("relish", false, "60", false));
        assertEquals(State.FAILED, standing("t1").state());
        script.must(new StartClock("jus", false, "140", false));
        assertEquals(State.FINE, standing("t2").state(), "hot food starts it too");
        script.must(new StartClock("jus", true, "140", false));
        assertEquals(State.FAILED, standing("t3").state(), "not the longer one");
    }

    @Test
    void whatCanNotBeIsRefused() {
        refused(Reason.CLOCK_NAME, new StartClock("  ", false, "41", false));
        refused(Reason.CLOCK_NAME, new StartClock("x".repeat(41), false, "41", false));
        refused(Reason.TEMPERATURE_RANGE, new StartClock("relish", false, "cold", false));
        refused(Reason.UNKNOWN_CLOCK, new StopClock("t1", false));
        refused(Reason.UNKNOWN_CLOCK, new MeasureClock("t1", "41", false));
        for (int n = 0; n < ClockLimits.CLOCKS_MAX; n++) {
            script.must(new StartClock("relish", false, "41", false));
        }
        refused(Reason.TOO_MANY_CLOCKS, new StartClock("relish", false, "41", false));
        for (int n = 1; n < ClockLimits.CLOCK_READINGS_MAX; n++) {
            script.must(new MeasureClock("t1", "41", false));
        }
        refused(Reason.TOO_MANY_READINGS, new MeasureClock("t1", "41", false));
    }

    private void refused(Reason reason, LarderCommand command) {
        assertEquals(
                Optional.of(reason),
                script.decide(new sopwell.desk.StandCommand.ForLarder(command))
                        .refusal()
                        .map(one -> one.reason()));
    }

    @Test
    void aClockRunsOnIntoTheNextDayAndIsNeverNumberedAgain() {
        script.at("2026-01-14T23:00").must(new StartClock("relish", false, "40", false));
        TimeClock before = clock("t1");
        script.at("2026-01-15T06:00").must(new StartClock("jus", false, "140", false));
        List<Recorded> newest = new ArrayList<>();
        for (Recorded one : script.log()) {
            if (one.event() instanceof DayOpened) {
                newest.clear();
            }
            newest.add(one);
        }
        Stand stand = new Stand(Script.SETTINGS);
        stand.apply(new Recorded(1, 1, "menu", 0, new MenuAdopted(script.menu())));
        stand.apply(new Recorded(2, 2, "recipes", 0, new RecipesAdopted(Books.small())));
        newest.forEach(stand::apply);
        assertTrue(newest.size() < script.log().size());
        assertEquals(Optional.of(before), stand.larder().clock("t1"));
        assertEquals(List.of(before, clock("t2")), stand.larder().clocks());
        assertEquals(2, stand.larder().clocksStarted());
    }
}
