package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.desk.ClockState.Trust;
import sopwell.log.Recorded;
import sopwell.orders.Order;
import sopwell.orders.OrderEvent.DayOpened;

/** Whatever the box's clock does, the stand's goes on evenly while a day is open. */
class StandClockTest {
    private static final long NOON = Instant.parse("2026-01-14T18:00:00Z").toEpochMilli();
    private static final List<Duration> STEPS =
            List.of(
                    Duration.ofHours(1),
                    Duration.ofHours(-1),
                    Duration.ofHours(24),
                    Duration.ofHours(-24),
                    Duration.between(
                            Instant.ofEpochMilli(NOON), Instant.parse("2038-01-19T03:14:08Z")));

    private long boxMs = NOON;
    private long upMs = 5_000_000;
    private long sleptMs;
    private boolean open;

    @Test
    void aStepWhileADayIsOpenMovesNothing() {
        for (Duration step : STEPS) {
            StandClock clock = clock(NOON - 3_600_000);
            open = true;
            long before = clock.millis();
            boxMs += step.toMillis();
            pass(clock, 10);
            assertEquals(before + 10_000, clock.millis(), step.toString());
            assertEquals(Trust.STEPPED, clock.state().trust(), step.toString());
            boxMs -= step.toMillis();
            pass(clock, 1);
            assertEquals(before + 11_000, clock.millis(), step.toString());
            assertEquals(Trust.RIGHT, clock.state().trust(), step.toString());
        }
    }

    @Test
    void aStepForwardIsTakenOnWhenTheDayIsClosed() {
        StandClock clock = clock(NOON);
        open = true;
        boxMs += 3_600_000;
        pass(clock, 1);
        assertEquals(NOON + 1_000, clock.millis());
        open = false;
        pass(clock, 1);
        assertEquals(NOON + 3_602_000, clock.millis());
    }

    @Test
    void aStepBackWithNoDayOpenIsWaitedFor() {
        StandClock clock = clock(NOON - 86_400_000);
        boxMs -= 60_000;
        pass(clock, 30);
        assertEquals(NOON, clock.millis(), "it waits");
        assertEquals(Trust.BEHIND, clock.state().trust());
        pass(clock, 60);
        assertEquals(boxMs, clock.millis());
        assertEquals(Trust.RIGHT, clock.state().trust());
    }

    @Test
    void aBoxWithoutAClockGoesOnAtTheLogsTimeUntilItHasOne() {
        boxMs = 5_000;
        StandClock clock = clock(NOON);
        assertEquals(NOON, clock.millis());
        assertEquals(Trust.BEHIND, clock.state().trust());
        open = true;
        pass(clock, 20);
        assertEquals(NOON + 20_000, clock.millis());
        boxMs = NOON + 240_000;
        pass(clock, 1);
        assertEquals(NOON + 241_000, clock.millis(), "also in the middle of a day");
        assertEquals(Trust.RIGHT, clock.state().trust());
    }

    @Test
    void aBoxThatSleptDidNotStep() {
        StandClock clock = clock(NOON);
        open = true;
        sleptMs = 28_800_000;
        boxMs += sleptMs;
        pass(clock, 1);
        assertEquals(boxMs, clock.millis());
        assertEquals(Trust.RIGHT, clock.state().trust());
    }

    @Test
    void aHundredStepsAMinuteUnderOrdersKeepOneDayAndEveryAge() {
        SplittableRandom dice = new SplittableRandom(7);
        StandClock clock = clock(NOON - 1_000);
        Script script = new Script().atMs(clock.millis());
        script.place("beef");
        open = true;
        List<Integer> numbers = new ArrayList<>();
        for (int step = 0; step < 600; step++) {
            boxMs += STEPS.get(dice.nextInt(STEPS.size())).toMillis();
            upMs += 600;
            boxMs += 600;
            clock.look();
            Order order = script.atMs(clock.millis()).place("fries");
            numbers.add(order.number());
            assertTrue(clock.millis() >= order.placedAtMs(), "an age is never negative");
            assertEquals(NOON + (step + 1) * 600L, order.placedAtMs(), "nor jumps");
        }
        assertEquals(600, numbers.stream().distinct().count());
        assertEquals(1, script.log().stream().filter(r -> r.event() instanceof DayOpened).count());
        long last = 0;
        for (Recorded recorded : script.log()) {
            assertTrue(recorded.atMs() >= last, "the log's order holds");
            last = recorded.atMs();
        }
    }

    private StandClock clock(long floorMs) {
        sleptMs = 0;
        StandClock clock =
                new StandClock(
                        new StandClock.Clocks(
                                () -> Instant.ofEpochMilli(boxMs),
                                () -> upMs * 1_000_000,
                                () -> upMs + sleptMs),
                        floorMs);
        clock.during(() -> open);
        return clock;
    }

    /** Seconds go by, with a look after each. */
    private void pass(StandClock clock, int seconds) {
        for (int second = 0; second < seconds; second++) {
            upMs += 1_000;
            boxMs += 1_000;
            clock.look();
        }
    }
}
