package sopwell.stock.larder;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.stock.larder.LarderEvent.ClockMeasured;
import sopwell.stock.larder.LarderEvent.ClockStarted;
import sopwell.stock.larder.LarderEvent.ClockStopped;
import sopwell.stock.safety.Reading;

/** The clocks of food that is held by time alone. Not thread-safe: its owner is one thread. */
final class TimeClocks {
    private final Map<String, TimeClock> running = new LinkedHashMap<>();
    private int started;

    void started(ClockStarted event, long atMs) {
        started++;
        running.put(
                event.clock(),
                new TimeClock(
                        event.clock(),
                        event.what(),
                        event.isLonger(),
                        atMs,
                        List.of(new Reading(atMs, event.temperature()))));
    }

    void measured(ClockMeasured event, long atMs) {
        running.computeIfPresent(
                event.clock(), (id, one) -> one.with(new Reading(atMs, event.temperature())));
    }

    void stopped(ClockStopped event) {
        running.remove(event.clock());
    }

    void carried(List<TimeClock> clocks, int many) {
        running.clear();
        clocks.forEach(one -> running.put(one.id(), one));
        started = many;
    }

    Optional<TimeClock> one(String id) {
        return Optional.ofNullable(running.get(id));
    }

    /** Those that run, in the order in which they were started. */
    List<TimeClock> all() {
        return List.copyOf(running.values());
    }

    /** How many were ever started. */
    int started() {
        return started;
    }
}
