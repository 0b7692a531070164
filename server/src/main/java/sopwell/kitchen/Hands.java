package sopwell.kitchen;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import sopwell.menu.Station;

/**
 * How many hands are on duty at each station on the newest business day. Not thread-safe: its owner
 * is one thread.
 */
final class Hands {
    private final Map<String, Integer> set = new HashMap<>();
    private LocalDate date;

    /** What was said of a station on this day, or else what the menu says. */
    int at(Station station) {
        return set.getOrDefault(station.id(), station.hands());
    }

    void apply(StationEvent.HandsSet event) {
        set.put(event.station(), event.hands());
    }

    /** A day opens; another date begins with the menu's hands. */
    void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            set.clear();
        }
        date = opened;
    }
}
