package sopwell.whatif;

import java.util.List;

/**
 * What one guest asks of one station. Immutable.
 *
 * @param station the place of its station among the day's, from 0
 * @param pieces how many alike, 1 or more
 * @param waitsFor the places of the guest's other tasks that must be made first
 * @param measured whether {@code pieceMs} was measured that day; else it is the middle of what the
 *     stand knew, and is drawn anew for each run
 * @param pieceMs how long one piece takes one hand, or one load its machine, in milliseconds
 * @param spread the standard deviation of the logarithm of times that are drawn
 */
public record Task(
        int station,
        int pieces,
        List<Integer> waitsFor,
        boolean measured,
        double pieceMs,
        double spread) {
    public Task {
        waitsFor = List.copyOf(waitsFor);
    }
}
