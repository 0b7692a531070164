package sopwell.prep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Kitchen.Routing;

/**
 * Two products that share one oven and one bench, and may be needed at different times; small cases
 * in which every placement there is can be tried.
 */
class SharedOvenTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final int TICK = 30;
    private static final String START = "2026-06-11T08:00";

    /** One product in ticks: in the oven, waiting at least and at most (0: no bound), finished. */
    private record Product(int loads, int roast, int least, int most, int finish) {}

    /** Both products and how many ticks there are until they are needed. */
    private record Case(Product one, Product other, int ticks) {}

    @Test
    void nothingIsLateWhenAnyPlacementOfBothWouldBeInTime() {
        int possible = 0;
        int impossible = 0;
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            Case both = new Case(product(dice), product(dice), dice.nextInt(5, 15));
            boolean reached = new Search(both).reaches(0);
            PlanAsk ask = ask(both);
            PrepPlan plan = Planner.plan(ask);
            assertEquals(List.of(), PlanChecker.faults(ask, plan), "seed " + seed);
            int loads = both.one().loads() + both.other().loads();
            assertEquals(reached, plan.tasks().size() == loads, "seed " + seed + " " + both);
            Instant needed = ask.days().get(0).readyBy();
            assertFalse(
                    plan.tasks().stream().anyMatch(task -> task.ready().isAfter(needed)),
                    "seed " + seed + " is late");
            possible += reached ? 1 : 0;
            impossible += reached ? 0 : 1;
        }
        assertTrue(possible > 50 && impossible > 50, possible + " and " + impossible);
    }

    private static Product product(SplittableRandom dice) {
        int least = dice.nextInt(3);
        return new Product(
                dice.nextInt(1, 3),
                dice.nextInt(1, 4),
                least,
                dice.nextBoolean() ? 0 : least + dice.nextInt(1, 3),
                dice.nextInt(1, 3));
    }

    private static PlanAsk ask(Case both) {
        Kitchen kitchen =
                new Kitchen()
                        .open("08:00", "20:00", DayOfWeek.values())
                        .resource("oven", 1, 0)
                        .resource("bench", 1, 0)
                        .keep("one", 0, Optional.empty())
                        .keep("other", 0, Optional.empty())
                        .keep("raw", 0, Optional.empty())
                        .make("one", "raw", 1, 1_000, routing(both.one()))
                        .make("other", "raw", 1, 1_000, routing(both.other()));
        PlanAsk ask =
                BackwardTest.ask(
                        kitchen.book(),
                        START,
                        START,
                        ZONE,
                        BackwardTest.lots("one", both.one().loads()));
        PlanAsk.OpenDay day = ask.days().get(0);
        Instant needed = day.readyBy().plus(Duration.ofMinutes((long) both.ticks() * TICK));
        return new PlanAsk(
                ask.book(),
                ZONE,
                ask.now(),
                List.of(new PlanAsk.OpenDay(day.date(), needed)),
                List.of(
                        BackwardTest.lots("one", both.one().loads()),
                        BackwardTest.lots("other", both.other().loads())),
                List.of(),
                List.of(),
                ask.terms());
    }

    private static Routing routing(Product one) {
        return new Routing(
                1,
                "finish",
                List.of(
                        step("roast", one.roast() * TICK)
                                .then(one.least() * TICK, one.most() * TICK)
                                .on("oven", 1)
                                .attended(true, true)
                                .done(),
                        step("finish", one.finish() * TICK)
                                .on("bench", 1)
                                .attended(true, true)
                                .done()));
    }

    /** Tries every tick for every step of every load. */
    private static final class Search {
        private final int ticks;
        private final List<Product> loads = new ArrayList<>();
        private final boolean[] oven;
        private final boolean[] bench;

        Search(Case both) {
            ticks = both.ticks();
            oven = new boolean[ticks];
            bench = new boolean[ticks];
            for (Product one : List.of(both.one(), both.other())) {
                for (int n = 0; n < one.loads(); n++) {
                    loads.add(one);
                }
            }
        }

        boolean reaches(int at) {
            if (at == loads.size()) {
                return true;
            }
            Product one = loads.get(at);
            for (int roast = 0; roast + one.roast() <= ticks; roast++) {
                if (take(oven, roast, one.roast())) {
                    if (finishes(one, roast + one.roast(), at)) {
                        return true;
                    }
                    free(oven, roast, one.roast());
                }
            }
            return false;
        }

        private boolean finishes(Product one, int out, int at) {
            int latest = one.most() == 0 ? ticks : out + one.most();
            for (int from = out + one.least(); from <= latest; from++) {
                if (take(bench, from, one.finish())) {
                    if (reaches(at + 1)) {
                        return true;
                    }
                    free(bench, from, one.finish());
                }
            }
            return false;
        }

        /** Takes ticks that are all free; takes none otherwise. */
        private static boolean take(boolean[] place, int from, int length) {
            if (from + length > place.length) {
                return false;
            }
            for (int n = from; n < from + length; n++) {
                if (place[n]) {
                    return false;
                }
            }
            for (int n = from; n < from + length; n++) {
                place[n] = true;
            }
            return true;
        }

        private static void free(boolean[] place, int from, int length) {
            for (int n = from; n < from + length; n++) {
                place[n] = false;
            }
        }
    }
}
