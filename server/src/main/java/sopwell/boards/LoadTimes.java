package sopwell.boards;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import sopwell.kitchen.PartId;
import sopwell.kitchen.Settler;

/**
 * Keeps the times of one board's loads from moving under the eyes of whoever works by them: when to
 * begin is steady within ten seconds, what is to be begun now stays so since it first was, and when
 * a load is to come up stays as it was when the load was begun. Not thread-safe.
 */
final class LoadTimes {
    private final Settler starts = new Settler();
    private final Map<PartId, Long> dueSinceMs = new HashMap<>();
    private final Map<Begun, Long> upAtMs = new HashMap<>();

    /** A part and when work on it began; begun again, it is another promise. */
    private record Begun(PartId part, long startedAtMs) {}

    long startBy(PartId first, long startByMs, long nowMs) {
        if (startByMs <= nowMs) {
            return dueSinceMs.computeIfAbsent(first, part -> startByMs);
        }
        dueSinceMs.remove(first);
        return starts.settled(first, startByMs, nowMs);
    }

    long upAt(PartId first, long startedAtMs, long expectedMs) {
        return upAtMs.computeIfAbsent(new Begun(first, startedAtMs), begun -> expectedMs);
    }

    void keepOnly(Set<PartId> parts) {
        starts.keepOnly(parts);
        dueSinceMs.keySet().retainAll(parts);
        upAtMs.keySet().removeIf(begun -> !parts.contains(begun.part()));
    }
}
