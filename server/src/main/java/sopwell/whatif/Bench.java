package sopwell.whatif;

import java.util.List;
import sopwell.Check;
import sopwell.menu.LocalText;

/**
 * One station of the day. Immutable.
 *
 * @param load how many pieces one hand or machine makes in one go
 * @param hands how many there were, from when on, the first from the beginning
 */
public record Bench(String id, LocalText name, int load, List<Shift> hands) {
    public Bench {
        hands = List.copyOf(hands);
        Check.that(!hands.isEmpty(), "a station has hands from the beginning");
    }

    /** So many hands from a moment on, milliseconds since 1970-01-01 UTC. */
    public record Shift(long fromMs, int hands) {}

    /** The same with more hands, or fewer, at all times; never less than one. */
    Bench with(int more) {
        List<Shift> changed =
                hands.stream()
                        .map(s -> new Shift(s.fromMs(), Math.max(1, s.hands() + more)))
                        .toList();
        return new Bench(id, name, load, changed);
    }

    /** How many there are at a moment. */
    int at(long atMs) {
        int now = hands.get(0).hands();
        for (Shift shift : hands) {
            if (shift.fromMs() <= atMs) {
                now = shift.hands();
            }
        }
        return now;
    }
}
