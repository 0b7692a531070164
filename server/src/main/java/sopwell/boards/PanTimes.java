package sopwell.boards;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.stock.PanLeft;

/**
 * Keeps the times on one board's pans from moving with every order: a time that was shown stays
 * until the reckoning has moved away from it by two minutes, or the pan was refilled. Not
 * thread-safe.
 */
final class PanTimes {
    private static final long STEADY_MS = 120_000;

    private final Map<String, PanLeft> shown = new HashMap<>();

    List<PanLeft> settled(List<PanLeft> pans) {
        return pans.stream().map(this::settled).toList();
    }

    private PanLeft settled(PanLeft now) {
        PanLeft before = shown.get(now.pan().id());
        boolean steady =
                before != null
                        && before.refilledAtMs() == now.refilledAtMs()
                        && before.startByMs() != 0
                        && now.startByMs() != 0
                        && Math.abs(before.startByMs() - now.startByMs()) < STEADY_MS;
        PanLeft settled = steady ? now.startingBy(before.startByMs()) : now;
        shown.put(now.pan().id(), settled);
        return settled;
    }
}
