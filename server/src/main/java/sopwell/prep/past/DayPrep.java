package sopwell.prep.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.prep.past.PlanEvent.PlanKept;
import sopwell.stock.larder.Compared;

/**
 * What one business day planned, made, used, threw away and had left, out of its own events;
 * amounts in thousandths of each ingredient's base unit. Immutable.
 *
 * @param plan what was planned for it, if it was kept
 * @param started the batches that were started on it, in that order
 * @param gave what batches that came to their end on it gave, by their id; 0 for what was thrown
 *     away before it was made
 * @param used what its orders took, by ingredient, by the recipes of the day
 * @param taken what its batches took, by ingredient
 * @param wasted what was entered as thrown away, by ingredient
 * @param left what the books had at its end, by ingredient; what was never counted is not in it
 * @param compared its counts against the books
 */
public record DayPrep(
        LocalDate date,
        Optional<PlanKept> plan,
        List<Started> started,
        Map<String, Long> gave,
        Map<String, Long> used,
        Map<String, Long> taken,
        Map<String, Long> wasted,
        Map<String, Long> left,
        List<Compared> compared) {
    public DayPrep {
        started = List.copyOf(started);
        gave = Map.copyOf(gave);
        used = Map.copyOf(used);
        taken = Map.copyOf(taken);
        wasted = Map.copyOf(wasted);
        left = Map.copyOf(left);
        compared = List.copyOf(compared);
    }

    /**
     * A batch that was started.
     *
     * @param says what its recipe says it gives
     */
    public record Started(String batch, String makes, int lots, long says, long atMs) {}
}
