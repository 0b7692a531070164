package sopwell.demo;

import java.util.HashMap;
import java.util.Map;
import sopwell.menu.Menu;
import sopwell.menu.Station;

/** The hands of invented days, each free again when its last piece was up. Not thread-safe. */
final class HistoryHands {
    private final Map<String, long[]> freeMs = new HashMap<>();

    /**
     * Hands for a day.
     *
     * @param building how many there are where sandwiches are built
     */
    HistoryHands(Menu menu, int building) {
        for (Station station : menu.stations()) {
            int hands = station.builds() ? building : station.hands();
            freeMs.put(station.id(), new long[hands * Math.max(1, station.load())]);
        }
    }

    /**
     * Gives work to the hand that is free first.
     *
     * @param readyMs when it can be begun at the earliest
     * @return when it is begun
     */
    long begin(String station, long readyMs, long workMs) {
        long[] hands = freeMs.get(station);
        int first = 0;
        for (int hand = 1; hand < hands.length; hand++) {
            if (hands[hand] < hands[first]) {
                first = hand;
            }
        }
        long startMs = Math.max(readyMs, hands[first]);
        hands[first] = startMs + workMs;
        return startMs;
    }
}
