package sopwell.kitchen;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Keeps the start-by times that people read from jittering: a time that was shown stays until the
 * schedule has moved away from it by ten seconds, or its moment has come. Not thread-safe: for one
 * board on one thread.
 */
public final class Settler {
    /** Less than this is no news to a cook. */
    public static final long STEADY_MS = 10_000;

    private final Map<PartId, Long> shownMs = new HashMap<>();

    /** The time to show for a part whose schedule says {@code startByMs} now. */
    public long settled(PartId part, long startByMs, long nowMs) {
        Long shown = shownMs.get(part);
        boolean due = startByMs <= nowMs;
        if (shown != null && !due && shown > nowMs && Math.abs(shown - startByMs) < STEADY_MS) {
            return shown;
        }
        shownMs.put(part, startByMs);
        return startByMs;
    }

    /** Forgets every part but these. */
    public void keepOnly(Set<PartId> parts) {
        shownMs.keySet().retainAll(parts);
    }
}
