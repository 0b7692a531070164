package sopwell.prep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Kitchen.Routing;
import sopwell.prep.plan.Kitchen.Step;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.Terms;
import sopwell.stock.recipes.PrepStep;

/** Laws over stands of every kind, looked at by a checker that shares nothing with the planner. */
class RandomStandsTest {
    private static final List<String> ZONES =
            List.of("America/Chicago", "Europe/Warsaw", "America/New_York", "Europe/Lisbon");
    private static final List<LocalDate> WEEKS =
            List.of(
                    LocalDate.of(2026, 3, 5),
                    LocalDate.of(2026, 3, 26),
                    LocalDate.of(2026, 10, 22),
                    LocalDate.of(2026, 10, 29),
                    LocalDate.of(2026, 6, 11));

    @Test
    void thousandStandsKeepToHoursSlotsWaitsAndDates() {
        int tasks = 0;
        int missed = 0;
        for (int seed = 0; seed < 1_000; seed++) {
            PlanAsk ask = ask(new SplittableRandom(seed));
            PrepPlan plan = Planner.plan(ask);
            assertEquals(List.of(), PlanChecker.faults(ask, plan), "seed " + seed);
            tasks += plan.tasks().size();
            missed +=
                    (int)
                            plan.warnings().stream()
                                    .filter(w -> w.kind() == PrepPlan.Kind.NOT_IN_TIME)
                                    .count();
        }
        assertTrue(tasks > 2_000, "the stands made something: " + tasks);
        assertTrue(missed > 100, "some stands were too small: " + missed);
    }

    @Test
    void sameQuestionGetsTheSamePlan() {
        for (int seed = 0; seed < 50; seed++) {
            PrepPlan plan = Planner.plan(ask(new SplittableRandom(seed)));
            assertEquals(plan, Planner.plan(ask(new SplittableRandom(seed))), "seed " + seed);
        }
    }

    private static PlanAsk ask(SplittableRandom dice) {
        ZoneId zone = ZoneId.of(ZONES.get(dice.nextInt(ZONES.size())));
        LocalDate first = WEEKS.get(dice.nextInt(WEEKS.size()));
        Kitchen kitchen = new Kitchen().resource("oven", dice.nextInt(1, 5), dice.nextInt(30));
        kitchen.resource("chill", dice.nextInt(2, 9), 0).keep("raw", 0, Optional.empty());
        for (DayOfWeek day : DayOfWeek.values()) {
            if (dice.nextInt(5) > 0) {
                kitchen.open("0" + dice.nextInt(5, 10) + ":00", dice.nextInt(15, 24) + ":00", day);
            }
        }
        int products = dice.nextInt(1, 4);
        List<DemandFor> demand = new ArrayList<>();
        List<OpenDay> days = new ArrayList<>();
        int open = dice.nextInt(1, 4);
        for (int d = 0; d < open; d++) {
            LocalDate date = first.plusDays(2L + d);
            days.add(new OpenDay(date, date.atTime(10, 15).atZone(zone).toInstant()));
        }
        for (int p = 0; p < products; p++) {
            String id = "made" + p;
            kitchen.keep(id, dice.nextInt(4), Optional.empty());
            String of = p > 0 && dice.nextBoolean() ? "made" + (p - 1) : "raw";
            kitchen.make(id, of, 800, 1_000, routing(dice));
            List<Double> means = new ArrayList<>();
            List<Double> variances = new ArrayList<>();
            for (int d = 0; d < open; d++) {
                means.add(dice.nextDouble(200, 4_000));
                variances.add(dice.nextDouble(0, 200_000));
            }
            demand.add(new DemandFor(id, means, variances, dice.nextDouble(.02)));
        }
        Instant now = first.atTime(7, 3).atZone(zone).toInstant();
        Instant from = now.plus(Duration.ofMinutes(dice.nextInt(2_000)));
        List<Busy> busy = List.of(new Busy("oven", 1, from, from.plus(Duration.ofHours(3))));
        Terms terms = new Terms(Map.of(), Map.of(), dice.nextInt(1, 4), 360, LocalTime.of(9, 0));
        return new PlanAsk(kitchen.book(), zone, now, days, demand, List.of(), busy, terms);
    }

    private static Routing routing(SplittableRandom dice) {
        List<PrepStep> steps = new ArrayList<>();
        int count = dice.nextInt(1, 4);
        for (int k = 0; k < count; k++) {
            Step step = step("s" + k, dice.nextInt(10, 300));
            int least = dice.nextInt(4) == 0 ? dice.nextInt(1_200) : 0;
            step.then(least, dice.nextBoolean() ? 0 : least + dice.nextInt(1, 900));
            step.attended(dice.nextBoolean(), dice.nextBoolean());
            step.hands(dice.nextBoolean() ? dice.nextInt(1, 10) : 0);
            if (dice.nextBoolean()) {
                step.on(dice.nextBoolean() ? "oven" : "chill", 1);
            }
            steps.add(step.done());
        }
        return new Routing(dice.nextInt(1, 5), "s" + dice.nextInt(count), steps);
    }
}
