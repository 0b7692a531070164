package sopwell.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;

/** More guests, or fewer, of the kind that came in each half hour. Stateless. */
final class Arrivals {
    static final long HALF_HOUR_MS = 1_800_000;

    private static final long ARRIVALS = 2;
    private static final double PERCENT = 100;

    private Arrivals() {}

    /**
     * The day's guests with so many more of them, in percent: those who come on top order what some
     * guest of their half hour ordered, at any time of it between the day's first guest and its
     * last; those who stay away are any. A part of a guest is one by chance.
     *
     * @param guests in the order in which they came
     */
    static List<Guest> of(List<Guest> guests, int percent, Draws draws) {
        if (percent == 0 || guests.isEmpty()) {
            return guests;
        }
        long firstMs = guests.get(0).atMs();
        long lastMs = guests.get(guests.size() - 1).atMs();
        Map<Long, List<Guest>> byWindow = new TreeMap<>();
        for (Guest guest : guests) {
            byWindow.computeIfAbsent(guest.windowMs(), w -> new ArrayList<>()).add(guest);
        }
        List<Guest> all = new ArrayList<>(guests);
        byWindow.forEach(
                (fromMs, some) -> {
                    SplittableRandom random = draws.on(ARRIVALS, fromMs);
                    int many = many(some.size() * Math.abs(percent) / PERCENT, random);
                    for (int n = 0; n < many; n++) {
                        Guest one = some.get(random.nextInt(some.size()));
                        if (percent < 0) {
                            some.remove(one);
                            all.remove(one);
                        } else {
                            long beginMs = Math.max(firstMs, fromMs);
                            long endMs = Math.min(lastMs + 1, fromMs + HALF_HOUR_MS);
                            long atMs = random.nextLong(beginMs, endMs);
                            all.add(one.comingAt(all.size(), atMs));
                        }
                    }
                });
        all.sort(Comparator.comparingLong(Guest::atMs));
        return all;
    }

    private static int many(double exact, SplittableRandom random) {
        int whole = (int) exact;
        return random.nextDouble() < exact - whole ? whole + 1 : whole;
    }
}
