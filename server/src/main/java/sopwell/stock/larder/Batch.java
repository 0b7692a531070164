package sopwell.stock.larder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.stock.safety.Reading;

/**
 * A lot of prep that is on. Immutable.
 *
 * @param id unique for ever
 * @param makes the ingredient that it will be
 * @param lots how many lots of the recipe, from 1
 * @param planned what the recipe says it gives, in thousandths of the base unit
 * @param note what the plan or anybody said about it; may be empty
 * @param startedAtMs milliseconds since 1970-01-01 UTC
 * @param step where it is
 * @param stepAtMs since when it is there
 * @param readings temperatures measured in this step, oldest first
 * @param missed steps whose limits were not shown to be met when it left them
 * @param preparedOn day 1 of its life, as 2026-05-03; empty until it has come so far
 */
public record Batch(
        String id,
        String makes,
        int lots,
        long planned,
        String note,
        long startedAtMs,
        String step,
        long stepAtMs,
        List<Reading> readings,
        List<String> missed,
        String preparedOn) {
    public Batch {
        readings = List.copyOf(readings);
        missed = List.copyOf(missed);
    }

    /** The temperature that was measured last in this step. */
    public Optional<Reading> last() {
        return readings.isEmpty()
                ? Optional.empty()
                : Optional.of(readings.get(readings.size() - 1));
    }

    Batch with(Reading reading) {
        List<Reading> more = new ArrayList<>(readings);
        more.add(reading);
        return new Batch(
                id,
                makes,
                lots,
                planned,
                note,
                startedAtMs,
                step,
                stepAtMs,
                more,
                missed,
                preparedOn);
    }

    Batch moved(BatchEvent.BatchMoved to, long atMs) {
        List<String> allMissed = new ArrayList<>(missed);
        if (!to.met()) {
            allMissed.add(step);
        }
        return new Batch(
                id,
                makes,
                lots,
                planned,
                note,
                startedAtMs,
                to.step(),
                atMs,
                List.of(),
                allMissed,
                to.preparedOn().isEmpty() ? preparedOn : to.preparedOn());
    }
}
