package sopwell.lunch;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Who comes when and orders what. Orders come as a Poisson process whose rate runs straight from
 * one given point to the next (drawn by thinning, Lewis and Shedler 1979). Invented: nobody counted
 * this at a stand.
 */
final class Guests {
    private static final List<String> SANDWICHES =
            List.of(
                    "beef",
                    "beef",
                    "beef dipped hot",
                    "beef hot",
                    "beef sweet",
                    "beef dry sweet",
                    "beef provolone hot",
                    "beef mozzarella",
                    "large beef hot",
                    "beef dipped",
                    "combo hot",
                    "combo sweet",
                    "sausage hot",
                    "beef dry",
                    "small beef");
    private static final List<String> DRINKS = List.of("cola", "lemonade", "iced tea", "water");
    private static final double FRIES = 0.4;
    private static final double DOG = 0.12;
    private static final double DRINK = 0.4;

    private Guests() {}

    /** One order to come. */
    record Coming(long afterMs, String call) {}

    /** Everyone who comes. */
    static List<Coming> all(Draws draws, Truth truth) {
        List<Integer> perHour = truth.perHour();
        long stepMs = truth.stepMinutes() * 60_000L;
        SplittableRandom random = draws.on("guests");
        double most = 0;
        for (int rate : perHour) {
            most = Math.max(most, rate);
        }
        List<Coming> all = new ArrayList<>();
        double atMs = 0;
        long endMs = stepMs * (perHour.size() - 1);
        while (true) {
            atMs -= Math.log(1 - random.nextDouble()) * 3_600_000 / most;
            if (atMs >= endMs) {
                return all;
            }
            int step = (int) (atMs / stepMs);
            double part = atMs / stepMs - step;
            double rate = perHour.get(step) * (1 - part) + perHour.get(step + 1) * part;
            if (random.nextDouble() * most < rate) {
                String usual = call(draws.on("call", all.size()));
                String call = truth.only().isEmpty() ? usual : truth.only();
                all.add(new Coming(Math.round(atMs), call));
            }
        }
    }

    private static String call(SplittableRandom random) {
        List<String> lines = new ArrayList<>();
        double many = random.nextDouble();
        int sandwiches = many < 0.06 ? 0 : many < 0.56 ? 1 : many < 0.9 ? 2 : 3;
        for (int n = 0; n < sandwiches; n++) {
            lines.add(pick(random, SANDWICHES));
        }
        boolean dog = random.nextDouble() < DOG;
        if (dog) {
            lines.add(random.nextBoolean() ? "hot dog everything" : "2 hot dog");
        }
        if (random.nextDouble() < FRIES || lines.isEmpty()) {
            lines.add(sandwiches > 1 && random.nextBoolean() ? "2 fries" : "fries");
        }
        if (random.nextDouble() < DRINK) {
            lines.add(pick(random, DRINKS));
        }
        return String.join(", ", lines);
    }

    private static String pick(SplittableRandom random, List<String> from) {
        return from.get(random.nextInt(from.size()));
    }
}
