package sopwell.prep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Kitchen.Routing;

/** Small cases in which every placement there is can be tried. */
class EveryPlacementTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final int TICK = 30;

    /** One product's two steps on an oven and a bench, in ticks; {@code most} 0 is no bound. */
    private record Case(int loads, int roast, int least, int most, int trim, int ticks) {}

    @Test
    void nothingIsMissedThatAnyPlacementCouldReach() {
        int possible = 0;
        int impossible = 0;
        for (int seed = 0; seed < 400; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            int least = dice.nextInt(3);
            int most = dice.nextBoolean() ? 0 : least + dice.nextInt(1, 3);
            Case one =
                    new Case(
                            dice.nextInt(1, 5),
                            dice.nextInt(1, 4),
                            least,
                            most,
                            dice.nextInt(1, 4),
                            dice.nextInt(4, 17));
            boolean reached = reaches(one, new int[one.loads()], new int[one.loads()], 0);
            PlanAsk ask = ask(one);
            PrepPlan plan = Planner.plan(ask);
            assertEquals(List.of(), PlanChecker.faults(ask, plan), "seed " + seed);
            boolean planned = plan.tasks().size() == one.loads();
            assertEquals(reached, planned, "seed " + seed + " " + one);
            possible += reached ? 1 : 0;
            impossible += reached ? 0 : 1;
        }
        assertTrue(possible > 50 && impossible > 50, possible + " and " + impossible);
    }

    private static PlanAsk ask(Case one) {
        Routing routing =
                new Routing(
                        1,
                        "trim",
                        List.of(
                                step("roast", one.roast() * TICK)
                                        .then(one.least() * TICK, one.most() * TICK)
                                        .on("oven", 1)
                                        .attended(true, true)
                                        .done(),
                                step("trim", one.trim() * TICK)
                                        .on("bench", 1)
                                        .attended(true, true)
                                        .done()));
        Kitchen kitchen =
                new Kitchen()
                        .open("08:00", "20:00", DayOfWeek.values())
                        .resource("oven", 1, 0)
                        .resource("bench", 1, 0)
                        .keep("made", 0, Optional.empty())
                        .keep("raw", 0, Optional.empty())
                        .make("made", "raw", 1, 1_000, routing);
        String end = "2026-06-11T08:00";
        PlanAsk ask =
                BackwardTest.ask(
                        kitchen.book(), end, end, ZONE, BackwardTest.lots("made", one.loads()));
        List<PlanAsk.OpenDay> days =
                ask.days().stream()
                        .map(
                                day ->
                                        new PlanAsk.OpenDay(
                                                day.date(),
                                                day.readyBy()
                                                        .plus(
                                                                Duration.ofMinutes(
                                                                        (long) one.ticks()
                                                                                * TICK))))
                        .toList();
        return new PlanAsk(
                ask.book(), ZONE, ask.now(), days, ask.demand(), List.of(), List.of(), ask.terms());
    }

    /** Tries every tick for every step of every load from this one on. */
    private static boolean reaches(Case one, int[] roasts, int[] trims, int at) {
        if (at == one.loads()) {
            return true;
        }
        int first = at == 0 ? 0 : roasts[at - 1];
        for (int roast = first; roast + one.roast() <= one.ticks(); roast++) {
            int from = roast + one.roast() + one.least();
            int to = one.most() == 0 ? one.ticks() : roast + one.roast() + one.most();
            for (int trim = from; trim <= to && trim + one.trim() <= one.ticks(); trim++) {
                if (clear(roasts, at, roast, one.roast()) && clear(trims, at, trim, one.trim())) {
                    roasts[at] = roast;
                    trims[at] = trim;
                    if (reaches(one, roasts, trims, at + 1)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean clear(int[] starts, int count, int start, int length) {
        for (int i = 0; i < count; i++) {
            if (start < starts[i] + length && starts[i] < start + length) {
                return false;
            }
        }
        return true;
    }
}
