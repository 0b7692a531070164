package sopwell.stock.safety;

import java.util.List;
import java.util.Optional;
import sopwell.orders.FoodLimits;
import sopwell.orders.FoodLimits.Cooling;
import sopwell.stock.safety.Standing.Advice;

/**
 * Cooling of cooked food in two stages, and of food made at room temperature in one. Stateless.
 *
 * <p>The clock of cooked food starts with the last measurement at the start temperature or above
 * before one below it; when there is none, with the beginning of the step: never too late. What was
 * not measured in time was not reached in time.
 */
public final class CoolingClock {
    private CoolingClock() {}

    /**
     * Cooked food.
     *
     * @param sinceMs when cooling began
     * @param readings oldest first
     */
    public static Standing cooked(
            FoodLimits limits, long sinceMs, List<Reading> readings, long nowMs) {
        Cooling cooling = limits.cooling();
        long startMs = startMs(cooling, sinceMs, readings);
        long middleByMs = startMs + minutes(cooling.middleMinutes());
        Optional<Reading> middle = reached(readings, cooling.middleF());
        boolean inTime = middle.isPresent() && middle.get().atMs() <= middleByMs;
        if (!inTime && nowMs > middleByMs) {
            return Standing.failed(middleByMs);
        }
        long coldByMs = startMs + minutes(cooling.totalMinutes());
        return inTime
                ? toCold(limits, coldByMs, readings, nowMs)
                : new Goal(Advice.COOL_MIDDLE, cooling.middleF(), middleByMs)
                        .at(nowMs, limits, readings);
    }

    /** Food made from ingredients at room temperature. */
    public static Standing ambient(
            FoodLimits limits, long sinceMs, List<Reading> readings, long nowMs) {
        long byMs = sinceMs + minutes(limits.cooling().ambientMinutes());
        return toCold(limits, byMs, readings, nowMs);
    }

    private static Standing toCold(
            FoodLimits limits, long byMs, List<Reading> readings, long nowMs) {
        int toF = limits.cooling().toF();
        Optional<Reading> cold = reached(readings, toF);
        if (cold.isPresent() && cold.get().atMs() <= byMs) {
            return Standing.done();
        }
        return nowMs > byMs
                ? Standing.failed(byMs)
                : new Goal(Advice.COOL_COLD, toF, byMs).at(nowMs, limits, readings);
    }

    private static long startMs(Cooling cooling, long sinceMs, List<Reading> readings) {
        long startMs = sinceMs;
        for (Reading reading : readings) {
            if (!reading.temperature().isAtLeast(cooling.fromF())) {
                break;
            }
            startMs = Math.max(startMs, reading.atMs());
        }
        return startMs;
    }

    private static Optional<Reading> reached(List<Reading> readings, int degreesF) {
        return readings.stream().filter(r -> r.temperature().isAtMost(degreesF)).findFirst();
    }

    /** What is to be reached by when. */
    private record Goal(Advice advice, int degreesF, long byMs) {
        Standing at(long nowMs, FoodLimits limits, List<Reading> readings) {
            Temperature target = Temperature.fahrenheit(degreesF);
            boolean soon = nowMs > byMs - minutes(limits.warnMinutes());
            return soon || isTooSlow(readings)
                    ? Standing.act(advice, byMs, target)
                    : Standing.fine(advice, byMs, target);
        }

        /**
         * Whether the pace between the last two measurements is too slow. Food cools ever slower,
         * so a straight line is the most that can be hoped for.
         */
        private boolean isTooSlow(List<Reading> readings) {
            if (readings.size() < 2) {
                return false;
            }
            Reading last = readings.get(readings.size() - 1);
            Reading before = readings.get(readings.size() - 2);
            long fell =
                    (long) before.temperature().hundredthsF() - last.temperature().hundredthsF();
            long inMs = last.atMs() - before.atMs();
            long toFall = last.temperature().hundredthsF() - degreesF * 100L;
            long leftMs = byMs - last.atMs();
            return inMs > 0 && fell * leftMs < toFall * inMs;
        }
    }

    private static long minutes(int minutes) {
        return minutes * 60_000L;
    }
}
