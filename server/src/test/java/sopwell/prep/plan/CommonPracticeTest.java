package sopwell.prep.plan;

import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.TUESDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.prep.plan.BackwardTest.at;
import static sopwell.prep.plan.Kitchen.step;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Kitchen.Routing;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.Terms;
import sopwell.prep.plan.PrepPlan.Order;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Watch;

/**
 * A week as such stands commonly work. The figures are common practice without a source, and are
 * used in this test only.
 */
class CommonPracticeTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");

    /** 15 lb, of which 7 in 10 are left: a piece gives 4,762.7 g; taken as 4,763. */
    private static final long PIECE = 6_804;

    private static final long SLICED = 4_763;

    /** 30 US gallons, and the 6 lb of spice mix that they take. */
    private static final long JUS_ML = 113_562;

    private static final long MIX = 2_722;

    /** Two US gallons of relish. */
    private static final long CROCK = 7_571;

    private static RecipeBook book() {
        Routing roast =
                new Routing(
                        4,
                        "slice",
                        List.of(
                                step("roast", 210).on("oven", 1).attended(true, true).done(),
                                step("cool", 240).then(24 * 60, 72 * 60).watched(Watch.COOL).done(),
                                step("slice", 90).attended(true, true).hands(15).done()));
        Routing relish =
                new Routing(
                        4,
                        "mix",
                        List.of(
                                step("mix", 60).attended(true, true).done(),
                                step("stand", 4 * 24 * 60).watched(Watch.MATURE).done()));
        Routing jus =
                new Routing(1, "boil", List.of(step("boil", 120).attended(true, true).done()));
        return new Kitchen()
                .open("07:00", "22:00", DayOfWeek.values())
                .resource("oven", 4, 15)
                .keep("sliced", 4, Optional.empty())
                .keep("relish", 0, Optional.empty())
                .keep("jus", 2, Optional.empty())
                .keep("roast", 5, Optional.of(Kitchen.supply(List.of(MONDAY), 2, PIECE, 9_000)))
                .keep("mix", 0, Optional.of(Kitchen.supply(List.of(TUESDAY), 1, MIX, 2_500)))
                .keep("vegetables", 0, Optional.empty())
                .make("sliced", "roast", PIECE, SLICED, roast)
                .make("relish", "vegetables", 7_000, CROCK, relish)
                .make("jus", "mix", MIX, JUS_ML, jus)
                .book();
    }

    /**
     * Thursday 10:30, 180 sandwiches of three scoops (some 120 g in all) and a tablespoon.
     *
     * <p>Beef: 21,600 g are 4.53 pieces of 4,763 g; four leave 2,548 g short, five 2,215 g over:
     * five, as four and one. Slicing takes 90 minutes, so from 9:00; 24 hours of chill before make
     * that Wednesday 9:00, and 4 hours of cooling Wednesday 5:00, when nobody is there to take the
     * roast out. The last time somebody is there is Tuesday 22:00: in the oven Tuesday 18:30 to
     * 22:00, cold at 2:00, 31 hours of chill. The other run must be out by 18:15: 14:45. Two runs
     * of 3.5 hours are 7 oven hours.
     *
     * <p>Relish: tablespoons of 14.8 ml, 2,664 ml, are one crock. It stands 96 hours: mixed by
     * Sunday 10:30, from 9:30.
     *
     * <p>Jus: 180,000 ml are 1.59 boils of 30 gallons: two, one after the other or beside it, with
     * 12 lb of mix. They need no resource, so both start Thursday 8:30.
     */
    @Test
    void piecesOvenHoursAndLatestStartsComeOutRight() {
        OpenDay thursday = new OpenDay(LocalDate.of(2026, 6, 11), at("2026-06-11T10:30", ZONE));
        List<DemandFor> demand =
                List.of(sure("sliced", 21_600), sure("relish", 2_664), sure("jus", 180_000));
        PlanAsk ask =
                new PlanAsk(
                        book(),
                        ZONE,
                        at("2026-06-05T08:00", ZONE),
                        List.of(thursday),
                        demand,
                        List.of(),
                        List.of(),
                        new Terms(Map.of(), Map.of(), 2, 360, LocalTime.of(9, 0)));
        PrepPlan plan = Planner.plan(ask);
        assertEquals(List.of(), PlanChecker.faults(ask, plan));
        List<Task> roasts = of(plan, "sliced");
        assertEquals(5, roasts.stream().mapToInt(Task::lots).sum());
        assertEquals(at("2026-06-09T14:45", ZONE), roasts.get(0).start());
        assertEquals(at("2026-06-09T18:30", ZONE), roasts.get(1).start());
        assertEquals(at("2026-06-10T02:00", ZONE), roasts.get(1).steps().get(1).until());
        assertEquals(at("2026-06-07T09:30", ZONE), of(plan, "relish").get(0).start());
        assertEquals(
                List.of(at("2026-06-11T08:30", ZONE), at("2026-06-11T08:30", ZONE)),
                of(plan, "jus").stream().map(Task::start).toList());
        Order mix = order(plan, "mix");
        assertEquals(2, mix.packs());
        assertEquals(5_000, mix.cents());
        assertEquals(LocalDate.of(2026, 6, 9), mix.delivered());
        assertEquals(at("2026-06-08T14:00", ZONE), mix.orderBy());
        Order beef = order(plan, "roast");
        assertEquals(5, beef.packs());
        assertEquals(LocalDate.of(2026, 6, 8), beef.delivered());
        assertEquals(at("2026-06-06T14:00", ZONE), beef.orderBy());
        assertTrue(plan.warnings().stream().allMatch(w -> w.kind() == PrepPlan.Kind.NO_STAKES));
    }

    private static DemandFor sure(String ingredient, double amount) {
        return new DemandFor(ingredient, List.of(amount), List.of(0.0), 0);
    }

    private static List<Task> of(PrepPlan plan, String ingredient) {
        return plan.tasks().stream().filter(t -> t.makes().equals(ingredient)).toList();
    }

    private static Order order(PrepPlan plan, String ingredient) {
        return plan.orders().stream()
                .filter(o -> o.ingredient().equals(ingredient))
                .findFirst()
                .orElseThrow();
    }
}
