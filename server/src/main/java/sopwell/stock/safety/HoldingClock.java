package sopwell.stock.safety;

import java.util.List;
import java.util.Optional;
import sopwell.orders.Safety;
import sopwell.stock.safety.Standing.Advice;

/**
 * Reheating, hot and cold holding, time alone as a control, and the cleaning of a slicer.
 * Stateless.
 *
 * <p>Food that is found too cool or too warm may have been so since the last good measurement: it
 * must be right again within the shorter time of time control, counted from there; after that it is
 * discarded. As long as the last measurement was right, the clock only asks for another one.
 */
public final class HoldingClock {
    private HoldingClock() {}

    /**
     * Reheating for hot holding. It is done when the last measurement hot enough is as many seconds
     * ago as the food must stay there, and none below came after it.
     *
     * @param sinceMs when it was put on
     */
    public static Standing reheat(Safety safety, long sinceMs, List<Reading> readings, long nowMs) {
        long byMs = sinceMs + safety.reheatHours() * 3_600_000L;
        Temperature target = Temperature.fahrenheit(safety.reheatF());
        long holdMs = safety.reheatSeconds() * 1_000L;
        long hotSinceMs = -1;
        for (Reading reading : readings) {
            boolean hot = reading.temperature().compareTo(target) >= 0;
            if (hotSinceMs >= 0 && isHeld(hotSinceMs, reading.atMs(), holdMs, byMs)) {
                return Standing.done();
            }
            hotSinceMs = !hot ? -1 : hotSinceMs < 0 ? reading.atMs() : hotSinceMs;
        }
        if (hotSinceMs >= 0 && isHeld(hotSinceMs, nowMs, holdMs, byMs)) {
            return Standing.done();
        }
        if (nowMs > byMs) {
            return Standing.failed(byMs);
        }
        if (hotSinceMs >= 0) {
            return Standing.fine(Advice.REHEAT_HOLD, hotSinceMs + holdMs, target);
        }
        boolean soon = nowMs > byMs - warnMs(safety);
        return soon
                ? Standing.act(Advice.REHEAT, byMs, target)
                : Standing.fine(Advice.REHEAT, byMs, target);
    }

    /**
     * Reheating of a roast that was not sliced: as any food, or by the roast's table, whichever is
     * shown first, within the same time.
     */
    public static Standing reheatRoast(
            Safety safety, long sinceMs, List<Reading> readings, long nowMs) {
        long byMs = sinceMs + safety.reheatHours() * 3_600_000L;
        List<Reading> inTime = readings.stream().filter(r -> r.atMs() <= byMs).toList();
        Standing roast = RoastClock.roast(safety.food().roast(), inTime);
        Standing plain = reheat(safety, sinceMs, readings, nowMs);
        if (roast.state() == Standing.State.DONE) {
            return roast;
        }
        boolean isHeld = roast.advice() == Advice.ROAST_HOLD && roast.byMs() <= byMs;
        boolean waits = plain.advice() == Advice.REHEAT;
        return isHeld && waits
                ? new Standing(plain.state(), roast.advice(), roast.byMs(), roast.target())
                : plain;
    }

    /** Holding of hot food; roasts cooked or reheated by the roast table may be a little cooler. */
    public static Standing hot(
            Safety safety, boolean roast, long sinceMs, List<Reading> readings, long nowMs) {
        int limitF = roast ? safety.holdRoastF() : safety.holdF();
        return held(
                safety,
                new Held(Advice.HOT_HOLD, Advice.HOT_AGAIN, limitF, true),
                sinceMs,
                readings,
                nowMs);
    }

    /** Holding of cold food. */
    public static Standing cold(Safety safety, long sinceMs, List<Reading> readings, long nowMs) {
        return held(
                safety,
                new Held(Advice.COLD_HOLD, Advice.COLD_AGAIN, safety.food().coldF(), false),
                sinceMs,
                readings,
                nowMs);
    }

    /**
     * Time alone as a control, for the shorter time.
     *
     * @param start how hot or cold it was when it was taken out
     */
    public static Standing shortTime(Safety safety, long sinceMs, Temperature start, long nowMs) {
        boolean right = start.isAtMost(safety.food().coldF()) || start.isAtLeast(safety.holdF());
        long byMs = sinceMs + safety.food().time().shortMinutes() * 60_000L;
        return right ? useUp(safety, byMs, nowMs) : Standing.failed(sinceMs);
    }

    /**
     * Time as a control for the longer time: started cold, never above the limit.
     *
     * @param readings the first is the one when it was taken out
     */
    public static Standing longTime(
            Safety safety, long sinceMs, List<Reading> readings, long nowMs) {
        boolean cold =
                !readings.isEmpty()
                        && readings.get(0).temperature().isAtMost(safety.food().coldF());
        Optional<Reading> above =
                readings.stream()
                        .filter(r -> !r.temperature().isAtMost(safety.food().time().longMaxF()))
                        .findFirst();
        if (!cold || above.isPresent()) {
            return Standing.failed(above.map(Reading::atMs).orElse(sinceMs));
        }
        return useUp(safety, sinceMs + safety.food().time().longMinutes() * 60_000L, nowMs);
    }

    /**
     * A slicer in use.
     *
     * @param cleanedMs when it was cleaned last, or its use began
     */
    public static Standing slicer(Safety safety, long cleanedMs, long nowMs) {
        long byMs = cleanedMs + safety.slicerCleanHours() * 3_600_000L;
        boolean soon = nowMs > byMs - warnMs(safety);
        Standing.State state = soon ? Standing.State.ACT : Standing.State.FINE;
        return nowMs > byMs
                ? new Standing(Standing.State.FAILED, Advice.CLEAN, byMs, Optional.empty())
                : new Standing(state, Advice.CLEAN, byMs, Optional.empty());
    }

    private static Standing useUp(Safety safety, long byMs, long nowMs) {
        if (nowMs > byMs) {
            return Standing.failed(byMs);
        }
        boolean soon = nowMs > byMs - warnMs(safety);
        Standing.State state = soon ? Standing.State.ACT : Standing.State.FINE;
        return new Standing(state, Advice.USE_UP, byMs, Optional.empty());
    }

    private record Held(Advice keep, Advice again, int limitF, boolean hot) {
        boolean isRight(Reading reading) {
            return hot
                    ? reading.temperature().isAtLeast(limitF)
                    : reading.temperature().isAtMost(limitF);
        }
    }

    private static Standing held(
            Safety safety, Held held, long sinceMs, List<Reading> readings, long nowMs) {
        long allowedMs = safety.food().time().shortMinutes() * 60_000L;
        long goodMs = sinceMs;
        boolean right = true;
        for (Reading reading : readings) {
            if (!right && reading.atMs() > goodMs + allowedMs) {
                return Standing.failed(goodMs + allowedMs);
            }
            right = held.isRight(reading);
            goodMs = right ? reading.atMs() : goodMs;
        }
        long byMs = goodMs + allowedMs;
        Temperature target = Temperature.fahrenheit(held.limitF());
        if (!right) {
            return nowMs > byMs ? Standing.failed(byMs) : Standing.act(held.again(), byMs, target);
        }
        return nowMs > byMs - warnMs(safety)
                ? Standing.act(held.keep(), byMs, target)
                : Standing.fine(held.keep(), byMs, target);
    }

    private static boolean isHeld(long sinceMs, long untilMs, long holdMs, long byMs) {
        return untilMs - sinceMs >= holdMs && sinceMs + holdMs <= byMs;
    }

    private static long warnMs(Safety safety) {
        return safety.food().warnMinutes() * 60_000L;
    }
}
