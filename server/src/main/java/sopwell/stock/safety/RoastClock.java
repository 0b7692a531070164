package sopwell.stock.safety;

import java.util.List;
import java.util.Optional;
import sopwell.orders.FoodLimits;
import sopwell.orders.FoodLimits.OvenKind;
import sopwell.orders.RoastTable;
import sopwell.stock.safety.Standing.Advice;
import sopwell.stock.safety.Standing.State;

/**
 * The inside of a roast against the table of temperatures and times. Stateless.
 *
 * <p>A temperature between two rows counts as the lower one; nothing is interpolated. What the
 * table asks for must be shown by measurements: from the first to the last of a run of them in
 * which none is below the row. Heat that rises after the oven counts, as the code says.
 */
public final class RoastClock {
    private RoastClock() {}

    /** How long the table has a roast held at a temperature; empty when it is below every row. */
    public static Optional<Integer> secondsAt(RoastTable table, Temperature temperature) {
        Optional<Integer> seconds = Optional.empty();
        for (RoastTable.Row row : table.rows()) {
            if (temperature.isAtLeast(row.f())) {
                seconds = Optional.of(row.seconds());
            }
        }
        return seconds;
    }

    /**
     * How a roast stands.
     *
     * @param readings of its inside, oldest first
     */
    public static Standing roast(RoastTable table, List<Reading> readings) {
        if (table.rows().stream().anyMatch(row -> isShown(row, readings))) {
            return Standing.done();
        }
        Temperature lowest = Temperature.fahrenheit(table.rows().get(0).f());
        if (readings.isEmpty() || isBelow(readings.get(readings.size() - 1), lowest)) {
            return new Standing(State.FINE, Advice.ROAST_ON, 0, Optional.of(lowest));
        }
        Standing best = new Standing(State.FINE, Advice.ROAST_ON, 0, Optional.of(lowest));
        for (RoastTable.Row row : table.rows()) {
            Optional<Reading> from = runStart(row, readings);
            long byMs = from.map(r -> r.atMs() + row.seconds() * 1_000L).orElse(Long.MAX_VALUE);
            if (from.isPresent() && (best.byMs() == 0 || byMs <= best.byMs())) {
                best = Standing.fine(Advice.ROAST_HOLD, byMs, Temperature.fahrenheit(row.f()));
            }
        }
        return best;
    }

    /** The oven's limit for a roast of a weight: at least, in a humid oven at most. */
    public static Optional<Temperature> oven(FoodLimits limits, OvenKind kind, long grams) {
        return limits.ovens().stream()
                .filter(oven -> oven.kind() == kind)
                .findFirst()
                .map(oven -> grams < limits.largeFromGrams() ? oven.smallF() : oven.largeF())
                .map(Temperature::fahrenheit);
    }

    private static boolean isBelow(Reading reading, Temperature limit) {
        return reading.temperature().compareTo(limit) < 0;
    }

    private static boolean isShown(RoastTable.Row row, List<Reading> readings) {
        long fromMs = -1;
        for (Reading reading : readings) {
            if (!reading.temperature().isAtLeast(row.f())) {
                fromMs = -1;
                continue;
            }
            fromMs = fromMs < 0 ? reading.atMs() : fromMs;
            if (reading.atMs() - fromMs >= row.seconds() * 1_000L) {
                return true;
            }
        }
        return false;
    }

    /** The first of the newest measurements of which none is below a row. */
    private static Optional<Reading> runStart(RoastTable.Row row, List<Reading> readings) {
        Optional<Reading> start = Optional.empty();
        for (Reading reading : readings) {
            boolean held = reading.temperature().isAtLeast(row.f());
            start = held ? Optional.of(start.orElse(reading)) : Optional.empty();
        }
        return start;
    }
}
