package sopwell.whatif;

import java.util.Map;

/**
 * What is different from the day as it was. Immutable.
 *
 * @param hands how many hands or machines more, or fewer, by the station's id
 * @param guestsPercent how many more guests, or fewer, in percent
 */
public record Changes(Map<String, Integer> hands, int guestsPercent) {
    public static final Changes NONE = new Changes(Map.of(), 0);

    public Changes {
        hands = Map.copyOf(hands);
    }

    /** Whether the day is as it was. */
    public boolean isNone() {
        return guestsPercent == 0 && hands.values().stream().allMatch(more -> more == 0);
    }

    int more(String station) {
        return hands.getOrDefault(station, 0);
    }
}
