package sopwell.prep.plan;

import static java.time.DayOfWeek.MONDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static sopwell.prep.plan.BackwardTest.TERMS;
import static sopwell.prep.plan.BackwardTest.at;
import static sopwell.prep.plan.Kitchen.step;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.prep.plan.Kitchen.Routing;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.StockLot;
import sopwell.prep.plan.PrepPlan.Kind;
import sopwell.stock.recipes.RecipeBook;

/** Asks that make little sense still get a plan, and it says what it stands on. */
class OddAsksTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Instant NOW = at("2026-06-08T08:00", ZONE);

    private static RecipeBook book(int perRunHands) {
        Routing routing = new Routing(1, "mix", List.of(step("mix", 30).hands(perRunHands).done()));
        return new Kitchen()
                .open("07:00", "22:00", DayOfWeek.values())
                .keep("salad", 2, Optional.empty())
                .keep("rolls", 2, Optional.of(Kitchen.supply(List.of(MONDAY), 9, 12, 600)))
                .keep("greens", 0, Optional.empty())
                .make("salad", "greens", 900, 1_000, routing)
                .book();
    }

    private static PlanAsk ask(int days, List<DemandFor> demand, List<StockLot> stock) {
        List<OpenDay> open =
                LocalDate.of(2026, 6, 9)
                        .datesUntil(LocalDate.of(2026, 6, 9).plusDays(days))
                        .map(d -> new OpenDay(d, d.atTime(10, 30).atZone(ZONE).toInstant()))
                        .toList();
        return new PlanAsk(book(10), ZONE, NOW, open, demand, stock, List.of(), TERMS);
    }

    @Test
    void noDaysAndNoForecastMakeAnEmptyPlan() {
        assertEquals(List.of(), Planner.plan(ask(0, List.of(), List.of())).tasks());
        PrepPlan plan = Planner.plan(ask(2, List.of(), List.of()));
        assertEquals(List.of(), plan.tasks());
        assertEquals(List.of(), plan.orders());
    }

    @Test
    void nonsenseIsNotPlannedAndNamed() {
        for (DemandFor odd :
                List.of(
                        new DemandFor("salad", List.of(-5.0), List.of(1.0), 0),
                        new DemandFor("salad", List.of(Double.NaN), List.of(1.0), 0),
                        new DemandFor("salad", List.of(5.0, 5.0), List.of(1.0, 1.0), 0),
                        new DemandFor("ghost", List.of(5.0), List.of(1.0), 0))) {
            PrepPlan plan = Planner.plan(ask(1, List.of(odd), List.of()));
            assertEquals(List.of(), plan.tasks());
            assertTrue(has(plan, Kind.NO_FORECAST), odd.toString());
        }
    }

    @Test
    void leadTimeLongerThanTheForecastIsSaid() {
        DemandFor rolls = new DemandFor("rolls", List.of(40.0), List.of(40.0), 0);
        PrepPlan plan = Planner.plan(ask(1, List.of(rolls), List.of()));
        assertEquals(List.of(), plan.orders());
        assertTrue(has(plan, Kind.NO_DELIVERY));
    }

    @Test
    void onHandThatLastsIsUsedAndWhatExpiresIsNot() {
        DemandFor salad = new DemandFor("salad", List.of(1_000.0, 1_000.0), List.of(0.0, 0.0), 0);
        assertEquals(2, lots(List.of(salad), stock(1_000, "2026-06-08")));
        assertEquals(1, lots(List.of(salad), stock(1_000, "2026-06-09")));
        assertEquals(1, lots(List.of(salad), stock(1_000, "2026-06-10")));
        assertEquals(0, lots(List.of(salad), stock(2_000, "2026-06-10")));
        assertEquals(2, lots(List.of(salad), stock(-7, "2026-06-10")));
    }

    @Test
    void lotThatNoHandsCanMakeIsNamed() {
        DemandFor salad = new DemandFor("salad", List.of(900.0), List.of(0.0), 0);
        PlanAsk ask = ask(1, List.of(salad), List.of());
        PlanAsk heavy =
                new PlanAsk(
                        book(500),
                        ZONE,
                        NOW,
                        ask.days(),
                        ask.demand(),
                        List.of(),
                        List.of(),
                        TERMS);
        assertTrue(has(Planner.plan(heavy), Kind.LOT_TOO_LARGE));
    }

    private static int lots(List<DemandFor> demand, List<StockLot> stock) {
        return Planner.plan(ask(2, demand, stock)).tasks().stream()
                .mapToInt(PrepPlan.Task::lots)
                .sum();
    }

    private static List<StockLot> stock(long amount, String lastDay) {
        return List.of(
                new StockLot("salad", BigDecimal.valueOf(amount), NOW, LocalDate.parse(lastDay)));
    }

    private static boolean has(PrepPlan plan, Kind kind) {
        return plan.warnings().stream().anyMatch(w -> w.kind() == kind);
    }
}
