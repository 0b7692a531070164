package sopwell.prep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sopwell.mix.DayTally;
import sopwell.prep.MadePlan.Ground;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.NamedOccasion;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.plan.Hindrance;
import sopwell.prep.plan.PlanAsk;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.prep.plan.PrepPlan.Kind;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.larder.StockNow;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Usage;

/** From invented days with the demo's recipes to a plan; amounts are in base units. */
class PlanMakerTest {
    private static final LocalDate TUESDAY = LocalDate.of(2026, 11, 24);
    private static final Instant HALF_PAST_SEVEN = Instant.parse("2026-11-24T13:30:00Z");
    private static final List<DayTally> WEEKS = DemoBook.weeks(8, TUESDAY);

    private static MadePlan plan(double lots) {
        return PlanMaker.make(ask(lots));
    }

    private static PrepAsk ask(double lots) {
        return DemoBook.ask(WEEKS, DemoBook.stock(lots, HALF_PAST_SEVEN), HALF_PAST_SEVEN);
    }

    @Test
    void theSameQuestionGivesTheSamePlan() {
        MadePlan plan = plan(2);
        assertEquals(plan.plan(), plan(2).plan());
        assertEquals(plan.demand(), plan(2).demand());
        assertFalse(plan.plan().tasks().isEmpty());
        assertFalse(plan.plan().orders().isEmpty());
        assertEquals(Ground.DAYS, plan.basis().ground());
        assertEquals(48, plan.basis().learned());
        assertEquals(TUESDAY.minusDays(2), plan.basis().last().orElseThrow());
    }

    /** Somebody roasts on Mondays, and nothing was ever sold on one. */
    @Test
    void aWeekdayOnWhichOnlyTheKitchenIsInIsNoOpenDayOnceSomeWeeksAreKnown() {
        RecipeBook book = DemoBook.withKitchenOn(DayOfWeek.MONDAY);
        StockNow stock = DemoBook.uncounted(book, HALF_PAST_SEVEN);
        assertFalse(opensOn(DayOfWeek.MONDAY, DemoBook.ask(WEEKS, stock, HALF_PAST_SEVEN)));
        assertTrue(opensOn(DayOfWeek.TUESDAY, DemoBook.ask(WEEKS, stock, HALF_PAST_SEVEN)));
        List<DayTally> few = DemoBook.weeks(2, TUESDAY);
        assertTrue(opensOn(DayOfWeek.MONDAY, DemoBook.ask(few, stock, HALF_PAST_SEVEN)));
    }

    private static boolean opensOn(DayOfWeek weekday, PrepAsk ask) {
        return PlanMaker.make(ask).days().stream()
                .anyMatch(day -> day.date().getDayOfWeek() == weekday);
    }

    @Test
    void aDayTakesOfEachIngredientWhatDaysLikeItTook() {
        MadePlan plan = plan(2);
        Map<String, Double> took = new java.util.TreeMap<>();
        RecipeBook book = DemoBook.recipes();
        List<DayTally> thursdays =
                WEEKS.stream().filter(d -> d.date().getDayOfWeek().getValue() == 4).toList();
        for (DayTally day : thursdays) {
            for (DayTally.HalfHour half : day.halfHours()) {
                for (DayTally.Sold sold : half.sold()) {
                    Usage.of(
                                    book,
                                    new sopwell.menu.Selection(
                                            sold.item(),
                                            sold.size(),
                                            PrepDays.options(sold.ways()),
                                            List.of()))
                            .forEach(
                                    (id, u) ->
                                            took.merge(
                                                    id,
                                                    u.doubleValue() * sold.pieces() / 8,
                                                    Double::sum));
                }
            }
        }
        int thursday = 2;
        assertEquals(TUESDAY.plusDays(2), plan.days().get(thursday).date());
        for (String id : List.of("beef-sliced", "roll", "jus", "hot-relish", "sweet-peppers")) {
            double mean = demand(plan, id).means().get(thursday);
            assertEquals(took.get(id), mean, 0.12 * took.get(id), id);
        }
    }

    @Test
    void whatIsSoldOnFridaysAloneIsPlannedForFridays() {
        PlanAsk.DemandFor eggs = demand(plan(2), "egg-mix");
        for (int d = 0; d < eggs.means().size(); d++) {
            boolean friday = plan(2).days().get(d).date().getDayOfWeek().getValue() == 5;
            assertEquals(friday, eggs.means().get(d) > 0);
        }
    }

    @Test
    void whatIsOnHandIsNotMadeAgain() {
        double none = wanted(plan(0), "beef-sliced");
        double some = wanted(plan(3), "beef-sliced");
        double much = wanted(plan(30), "beef-sliced");
        assertTrue(none > some && some > much, none + " " + some + " " + much);
        assertTrue(
                ordered(plan(0), "roll") > ordered(plan(8), "roll"),
                "rolls keep for two days, and are bought less when there are some");
    }

    @Test
    void everyTaskSaysWhyAndFitsItsRecipe() {
        MadePlan plan = plan(2);
        for (Task task : plan.plan().tasks()) {
            BigDecimal out = plan.book().recipe(task.makes()).orElseThrow().out();
            assertEquals(0, out.multiply(BigDecimal.valueOf(task.lots())).compareTo(task.gives()));
            assertFalse(task.start().isBefore(HALF_PAST_SEVEN));
            assertFalse(task.ready().isAfter(task.why().by()));
            assertTrue(task.why().cost() <= task.why().otherCost() + 1e-9, task.toString());
            if (plan.stakes().containsKey(task.makes())) {
                assertEquals(
                        plan.stakes().get(task.makes()).fractile(), task.why().fractile(), 1e-12);
            }
        }
        assertTrue(plan.forecast(TUESDAY).orElseThrow().why().days() == 48);
    }

    @Test
    void aStandThatHasSoldNothingIsPlannedByAGuessThatIsSaid() {
        PrepAsk ask = DemoBook.ask(List.of(), DemoBook.stock(0, HALF_PAST_SEVEN), HALF_PAST_SEVEN);
        MadePlan plan = PlanMaker.make(ask);
        assertEquals(Ground.EVEN_GUESS, plan.basis().ground());
        assertEquals(200, plan.basis().guessPieces());
        assertFalse(plan.plan().tasks().isEmpty());
        double rolls = demand(plan, "roll").means().get(3);
        assertTrue(rolls > 10 && rolls < 200, "a part of two hundred pieces: " + rolls);
        PrepAsk.Calendar guessed =
                new PrepAsk.Calendar(
                        Set.of(), Map.of(), Map.of(), Map.of("beef", 100.0), List.of());
        MadePlan own = PlanMaker.make(with(ask, guessed));
        assertEquals(Ground.GUESSES, own.basis().ground());
        double beef = demand(own, "beef-sliced").means().get(1);
        double third = (110 + 150 + 200) / 3.0;
        assertEquals(100 * third, beef, 1e-6, "each size alike, as the recipes have it");
    }

    @Test
    void oneWeekIsFewDaysAndAYearAgoIsLongAgo() {
        List<DayTally> week = DemoBook.weeks(1, TUESDAY);
        Instant now = HALF_PAST_SEVEN;
        MadePlan few = PlanMaker.make(DemoBook.ask(week, DemoBook.stock(1, now), now));
        assertEquals(Ground.FEW_DAYS, few.basis().ground());
        List<DayTally> old = DemoBook.weeks(8, TUESDAY.minusYears(1));
        MadePlan year = PlanMaker.make(DemoBook.ask(old, DemoBook.stock(1, now), now));
        assertEquals(Ground.LONG_AGO, year.basis().ground());
        assertEquals(TUESDAY.minusYears(1).getYear(), year.basis().last().orElseThrow().getYear());
    }

    @Test
    void withoutRecipesThereIsNothingToPlan() {
        PrepAsk ask =
                DemoBook.ask(
                        WEEKS,
                        DemoBook.uncounted(RecipeBook.empty(), HALF_PAST_SEVEN),
                        HALF_PAST_SEVEN);
        MadePlan plan = PlanMaker.make(ask);
        assertEquals(Ground.NO_RECIPES, plan.basis().ground());
        assertTrue(plan.plan().tasks().isEmpty());
    }

    @Test
    void whatWasNeverCountedIsNamedAndReckonedToLastForToday() {
        PrepAsk ask =
                DemoBook.ask(
                        WEEKS,
                        DemoBook.uncounted(DemoBook.recipes(), HALF_PAST_SEVEN),
                        HALF_PAST_SEVEN);
        MadePlan plan = PlanMaker.make(ask);
        assertTrue(plan.uncounted().contains("beef-sliced"));
        assertFalse(plan.uncounted().contains("water"), "it needs no order and is not made");
        assertEquals(0.0, demand(plan, "beef-sliced").means().get(0));
        assertTrue(demand(plan, "beef-sliced").means().get(1) > 0);
    }

    @Test
    void anOvenThatIsOutIsSaidToStandInTheWay() {
        Instant back = HALF_PAST_SEVEN.plusSeconds(6 * 86_400);
        Busy out = new Busy("oven", 6, HALF_PAST_SEVEN, back);
        PrepAsk.Calendar calendar =
                new PrepAsk.Calendar(Set.of(), Map.of(), Map.of(), Map.of(), List.of(out));
        MadePlan plan = PlanMaker.make(with(ask(1), calendar));
        assertTrue(
                plan.plan().warnings().stream()
                        .anyMatch(
                                w ->
                                        w.kind() == Kind.NOT_IN_TIME
                                                && w.ingredient().equals("sweet-peppers")
                                                && w.hindrance()
                                                        .filter(h -> h == Hindrance.RESOURCE)
                                                        .isPresent()));
        assertTrue(
                plan.plan().tasks().stream()
                        .flatMap(task -> task.steps().stream())
                        .filter(s -> s.resource().filter("oven"::equals).isPresent())
                        .noneMatch(s -> s.from().isBefore(back)));
    }

    @Test
    void whatTheOwnerSaidOfDaysChangesWhatIsPlannedForThem() {
        LocalDate next = TUESDAY.plusDays(1);
        LocalDate monday = TUESDAY.plusDays(6);
        CalendarDay festival =
                new CalendarDay(
                        next,
                        false,
                        Optional.of(new OpenHours(480, 1_200)),
                        List.of(new NamedOccasion("river festival", 100)));
        CalendarDay extra =
                new CalendarDay(monday, false, Optional.of(new OpenHours(630, 900)), List.of());
        OwnerCalendar said = OwnerCalendar.of(List.of(festival, extra), Map.of());
        MadePlan plain = PlanMaker.make(with(ask(1), PrepAsk.Calendar.NONE));
        MadePlan festive = PlanMaker.make(with(ask(1), PrepAsk.Calendar.of(said)));
        double usual = plain.forecast(next).orElseThrow().total().mean();
        double more = festive.forecast(next).orElseThrow().total().mean();
        assertTrue(more > 1.4 * usual, more + " against " + usual);
        assertEquals(Instant.parse("2026-11-25T14:00:00Z"), festive.days().get(1).readyBy());
        assertTrue(festive.days().stream().anyMatch(day -> day.date().equals(monday)));
        assertTrue(plain.days().stream().noneMatch(day -> day.date().equals(monday)));
    }

    @Test
    void aDayThatIsClosedIsNotPlannedForAndOfTodayOnlyTheRestIs() {
        PrepAsk.Calendar calendar =
                new PrepAsk.Calendar(
                        Set.of(TUESDAY.plusDays(1)), Map.of(), Map.of(), Map.of(), List.of());
        List<PlanAsk.OpenDay> days = PlanMaker.make(with(ask(1), calendar)).days();
        assertEquals(TUESDAY, days.get(0).date());
        assertEquals(TUESDAY.plusDays(2), days.get(1).date());
        assertEquals(Instant.parse("2026-11-24T16:30:00Z"), days.get(0).readyBy());
        Instant late = Instant.parse("2026-11-24T23:00:00Z");
        MadePlan evening = PlanMaker.make(DemoBook.ask(WEEKS, DemoBook.stock(2, late), late));
        double rest = demand(evening, "roll").means().get(0);
        double whole = demand(plan(2), "roll").means().get(0);
        // Half past ten to eight, alike in every half hour: at five 6 of 19 are to come.
        assertEquals(6.0 / 19, rest / whole, 0.03);
        assertEquals(late.plusSeconds(3600), evening.days().get(0).readyBy());
    }

    private static PrepAsk with(PrepAsk ask, PrepAsk.Calendar calendar) {
        return new PrepAsk(
                ask.menu(),
                ask.stock(),
                ask.past(),
                calendar,
                ask.terms(),
                ask.coolMinutesMax(),
                ask.when());
    }

    private static PlanAsk.DemandFor demand(MadePlan plan, String ingredient) {
        return plan.demand().stream()
                .filter(one -> one.ingredient().equals(ingredient))
                .findFirst()
                .orElseThrow();
    }

    /** What should be made, ready in time or not. */
    private static double wanted(MadePlan plan, String ingredient) {
        double made =
                plan.plan().tasks().stream()
                        .filter(task -> task.makes().equals(ingredient))
                        .mapToDouble(task -> task.gives().doubleValue())
                        .sum();
        double out = plan.book().recipe(ingredient).orElseThrow().out().doubleValue();
        return made
                + plan.plan().warnings().stream()
                        .filter(w -> w.ingredient().equals(ingredient))
                        .mapToDouble(w -> (w.asked() - w.possible()) * out)
                        .sum();
    }

    private static long ordered(MadePlan plan, String ingredient) {
        return plan.plan().orders().stream()
                .filter(order -> order.ingredient().equals(ingredient))
                .mapToLong(order -> order.packs())
                .sum();
    }
}
