package sopwell.stock.larder;

import java.util.ArrayList;
import java.util.List;
import sopwell.orders.Safety;
import sopwell.stock.safety.HoldingClock;
import sopwell.stock.safety.Reading;
import sopwell.stock.safety.Standing;

/**
 * Food that stands out of temperature control, held by time alone. Immutable.
 *
 * @param id {@code t1}, {@code t2}, ... over the whole log
 * @param what which food, in which pan, as people call it
 * @param isLonger the longer time, for food that started cold and stays cool
 * @param startedAtMs when it was taken out, milliseconds since 1970-01-01 UTC
 * @param readings its temperatures, oldest first; the first is from when it was taken out
 */
public record TimeClock(
        String id, String what, boolean isLonger, long startedAtMs, List<Reading> readings) {
    public TimeClock {
        readings = List.copyOf(readings);
    }

    /** How it stands. */
    public Standing standing(Safety safety, long nowMs) {
        return isLonger
                ? HoldingClock.longTime(safety, startedAtMs, readings, nowMs)
                : HoldingClock.shortTime(safety, startedAtMs, readings.get(0).temperature(), nowMs);
    }

    /** The newest of its temperatures. */
    public Reading last() {
        return readings.get(readings.size() - 1);
    }

    TimeClock with(Reading reading) {
        List<Reading> more = new ArrayList<>(readings);
        more.add(reading);
        return new TimeClock(id, what, isLonger, startedAtMs, more);
    }
}
