package sopwell.prep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import sopwell.mix.DayTally;
import sopwell.prep.MadePlan.Ground;
import sopwell.prep.calendar.CalendarDay;
import sopwell.prep.calendar.KitchenTerms;
import sopwell.prep.calendar.KitchenTerms.Cost;
import sopwell.prep.calendar.KitchenTerms.Out;
import sopwell.prep.calendar.NamedOccasion;
import sopwell.prep.calendar.OpenHours;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.prep.calendar.OwnerTerms;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.plan.Hindrance;
import sopwell.prep.plan.PrepPlan.Kind;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.prep.plan.PrepPlan.Warning;
import sopwell.prep.quantity.Stakes;

/** What each of the owner's settings changes in the demo's plan. */
class TermsPlanTest {
    private static final LocalDate TUESDAY = LocalDate.of(2026, 11, 24);
    private static final Instant NOW = Instant.parse("2026-11-24T13:30:00Z");
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final List<DayTally> WEEKS = DemoBook.weeks(8, TUESDAY);

    private static MadePlan plan(PrepTerms numbers, KitchenTerms kitchen) {
        PrepAsk ask = DemoBook.ask(WEEKS, DemoBook.stock(1, NOW), NOW);
        return PlanMaker.make(with(ask, new OwnerTerms(numbers, kitchen)));
    }

    private static MadePlan plan(KitchenTerms kitchen) {
        return plan(PrepTerms.USUAL, kitchen);
    }

    private static PrepAsk with(PrepAsk ask, OwnerTerms terms) {
        return new PrepAsk(
                ask.menu(),
                ask.stock(),
                ask.past(),
                ask.calendar(),
                terms,
                ask.coolMinutesMax(),
                ask.when());
    }

    private static KitchenTerms kitchen(
            Map<DayOfWeek, OpenHours> hours, List<LocalDate> away, List<Out> out) {
        return new KitchenTerms(
                Optional.empty(),
                hours,
                new TreeSet<>(away),
                out,
                new TreeMap<>(),
                new TreeMap<>());
    }

    private static List<StepTime> steps(MadePlan plan) {
        return plan.plan().tasks().stream().flatMap(task -> task.steps().stream()).toList();
    }

    private static LocalDateTime local(Instant at) {
        return LocalDateTime.ofInstant(at, CHICAGO);
    }

    @Test
    void aShortageThatCostsMoreHasMoreMadeAndWasteThatCostsMoreLess() {
        MadePlan plain = plan(KitchenTerms.NONE);
        MadePlan dear = plan(costing(OptionalInt.of(100_00), OptionalInt.empty()));
        MadePlan wasteful = plan(costing(OptionalInt.of(1), OptionalInt.of(100_00)));
        Stakes set = dear.stakes().get("sweet-peppers");
        assertEquals(100_00 / 453.59237, set.shortage().doubleValue(), 1e-4, "cents a gram");
        assertEquals(plain.stakes().get("sweet-peppers").waste(), set.waste(), "worked out still");
        assertTrue(set.fractile() > plain.stakes().get("sweet-peppers").fractile());
        assertTrue(made(dear) >= made(plain), made(dear) + " against " + made(plain));
        assertTrue(made(wasteful) < made(dear), made(wasteful) + " against " + made(dear));
    }

    private static KitchenTerms costing(OptionalInt shortage, OptionalInt waste) {
        TreeMap<String, Cost> costs = new TreeMap<>();
        costs.put("sweet-peppers", new Cost("lb", shortage, waste));
        return new KitchenTerms(
                Optional.empty(), Map.of(), new TreeSet<>(), List.of(), new TreeMap<>(), costs);
    }

    private static double made(MadePlan plan) {
        return plan.plan().tasks().stream()
                .filter(task -> task.makes().equals("sweet-peppers"))
                .mapToDouble(task -> task.gives().doubleValue())
                .sum();
    }

    @Test
    void aGuestWhoIsWorthMoreMakesEveryShortageDearer() {
        MadePlan plain = plan(KitchenTerms.NONE);
        MadePlan kind = plan(terms(500, 2, LocalTime.of(9, 0)), KitchenTerms.NONE);
        for (String one : List.of("beef-sliced", "roll", "jus")) {
            assertTrue(kind.stakes().get(one).fractile() > plain.stakes().get(one).fractile(), one);
        }
    }

    private static PrepTerms terms(int goodwill, int hands, LocalTime delivered) {
        return new PrepTerms(goodwill, 20, 2, 200, LocalTime.of(10, 30), delivered, hands);
    }

    @Test
    void handsThatAreSetCountInPlaceOfTheBooks() {
        assertEquals(2, plan(KitchenTerms.NONE).terms().hands(), "the book has two");
        MadePlan one = plan(terms(50, 1, LocalTime.of(9, 0)), KitchenTerms.NONE);
        assertEquals(1, one.terms().hands());
        assertFalse(one.plan().equals(plan(KitchenTerms.NONE).plan()), "another plan");
    }

    @Test
    void theKitchensHoursBoundEveryStartAndItsWeekdaysAreTheStands() {
        Map<DayOfWeek, OpenHours> hours =
                Map.of(
                        DayOfWeek.MONDAY, new OpenHours(600, 1_200),
                        DayOfWeek.WEDNESDAY, new OpenHours(600, 1_200),
                        DayOfWeek.THURSDAY, new OpenHours(600, 1_200));
        MadePlan plan = plan(kitchen(hours, List.of(), List.of()));
        assertFalse(plan.plan().tasks().isEmpty());
        for (Task task : plan.plan().tasks()) {
            LocalDateTime start = local(task.start());
            OpenHours that = hours.get(start.getDayOfWeek());
            assertTrue(that != null, start.toString());
            int minute = start.getHour() * 60 + start.getMinute();
            assertTrue(minute >= that.fromMinute() && minute < that.toMinute(), start.toString());
        }
        plan.days().forEach(day -> assertTrue(hours.containsKey(day.date().getDayOfWeek())));
    }

    @Test
    void onADateWithNobodyInTheKitchenNothingStartsThoughTheStandOpens() {
        LocalDate away = TUESDAY.plusDays(2);
        MadePlan plan = plan(kitchen(Map.of(), List.of(away), List.of()));
        assertTrue(
                steps(plan(KitchenTerms.NONE)).stream()
                        .anyMatch(step -> local(step.from()).toLocalDate().equals(away)));
        for (Task task : plan.plan().tasks()) {
            assertFalse(local(task.start()).toLocalDate().equals(away), task.toString());
        }
        assertTrue(plan.days().stream().anyMatch(day -> day.date().equals(away)));
    }

    @Test
    void anOvenThatIsOutForAWhileIsNotUsedAndForAllDaysTheBestIsSaid() {
        LocalDateTime from = TUESDAY.plusDays(1).atTime(0, 0);
        LocalDateTime until = TUESDAY.plusDays(3).atTime(12, 0);
        Out out = new Out("oven", 0, from, until);
        MadePlan plan = plan(kitchen(Map.of(), List.of(), List.of(out)));
        for (StepTime step : steps(plan)) {
            boolean oven = step.resource().filter("oven"::equals).isPresent();
            boolean within =
                    local(step.until()).isAfter(from) && local(step.from()).isBefore(until);
            assertFalse(oven && within, step.toString());
        }
        LocalDateTime ever = TUESDAY.plusDays(300).atTime(0, 0);
        MadePlan never =
                plan(
                        kitchen(
                                Map.of(),
                                List.of(),
                                List.of(new Out("oven", 0, from.minusDays(1), ever))));
        assertTrue(steps(never).stream().noneMatch(s -> s.resource().equals(Optional.of("oven"))));
        List<Warning> roast =
                never.plan().warnings().stream()
                        .filter(one -> one.kind() == Kind.NOT_IN_TIME)
                        .filter(one -> one.ingredient().equals("beef-sliced"))
                        .toList();
        assertFalse(roast.isEmpty());
        assertTrue(
                roast.stream()
                        .anyMatch(one -> one.hindrance().equals(Optional.of(Hindrance.RESOURCE))));
        for (Warning one : roast) {
            assertEquals(0, one.possible(), "the best that can be done is none");
        }
        assertTrue(
                never.plan().tasks().stream().anyMatch(task -> task.makes().equals("jus")),
                "what needs no oven is planned still");
    }

    @Test
    void partOfTheOvenLeavesTheRestOfIt() {
        LocalDateTime from = TUESDAY.atTime(0, 0);
        LocalDateTime until = TUESDAY.plusDays(20).atTime(0, 0);
        Out out = new Out("oven", 5, from, until);
        MadePlan plan = plan(kitchen(Map.of(), List.of(), List.of(out)));
        List<Task> roasts =
                plan.plan().tasks().stream()
                        .filter(task -> task.makes().equals("beef-sliced"))
                        .toList();
        assertFalse(roasts.isEmpty());
        roasts.forEach(task -> assertEquals(1, task.lots(), "one place is left"));
    }

    @Test
    void oneBatchForSeveralDaysIsMadeLessOften() {
        MadePlan four = plan(relishForDays(4));
        long often = runs(plan(KitchenTerms.NONE), "hot-relish");
        long seldom = runs(four, "hot-relish");
        assertTrue(seldom > 0 && seldom < often, seldom + " against " + often);
    }

    /** Otherwise each day's plan would begin one, for the day that has just come into reach. */
    @Test
    void aBatchForSeveralDaysBeginsWhenWhatIsThereNoLongerLasts() {
        Optional<LocalDate> daily = first(plan(KitchenTerms.NONE), "hot-relish");
        assertTrue(daily.isPresent());
        assertEquals(daily, first(plan(relishForDays(4)), "hot-relish"), "not before it is short");
    }

    /** A batch of relish is to last so many days. */
    private static KitchenTerms relishForDays(int days) {
        return new KitchenTerms(
                Optional.empty(),
                Map.of(),
                new TreeSet<>(),
                List.of(),
                new TreeMap<>(Map.of("hot-relish", days)),
                new TreeMap<>());
    }

    private static Optional<LocalDate> first(MadePlan plan, String makes) {
        return plan.plan().tasks().stream()
                .filter(task -> task.makes().equals(makes))
                .map(task -> task.why().firstDay())
                .min(LocalDate::compareTo);
    }

    private static long runs(MadePlan plan, String makes) {
        return plan.plan().tasks().stream()
                .filter(task -> task.makes().equals(makes))
                .map(task -> task.why().firstDay())
                .distinct()
                .count();
    }

    @Test
    void beforeTheStandsFirstDayNothingIsPlannedFor() {
        LocalDate first = TUESDAY.plusDays(10);
        KitchenTerms opening =
                new KitchenTerms(
                        Optional.of(first),
                        Map.of(),
                        new TreeSet<>(),
                        List.of(),
                        new TreeMap<>(),
                        new TreeMap<>());
        PrepAsk ask = DemoBook.ask(List.of(), DemoBook.stock(0, NOW), NOW);
        PrepTerms guessed =
                new PrepTerms(50, 20, 2, 90, LocalTime.of(11, 15), LocalTime.of(9, 0), 0);
        MadePlan plan = PlanMaker.make(with(ask, new OwnerTerms(guessed, opening)));
        assertEquals(first, plan.days().get(0).date());
        assertEquals(PlanMaker.DAYS, plan.days().size());
        assertEquals(Ground.EVEN_GUESS, plan.basis().ground());
        assertEquals(90, plan.basis().guessPieces());
        assertEquals(LocalTime.of(11, 15), local(plan.days().get(0).readyBy()).toLocalTime());
        assertFalse(plan.plan().tasks().isEmpty());
    }

    @Test
    void whatTheOwnerSaysOfTheWeatherStandsInTheForecastWithItsShare() {
        LocalDate saturday = LocalDate.of(2026, 11, 28);
        CalendarDay rain =
                new CalendarDay(
                        saturday,
                        false,
                        Optional.empty(),
                        List.of(new NamedOccasion("weather: rain", -20)));
        PrepAsk ask = DemoBook.ask(WEEKS, DemoBook.stock(1, NOW), NOW);
        PrepAsk wet =
                new PrepAsk(
                        ask.menu(),
                        ask.stock(),
                        ask.past(),
                        PrepAsk.Calendar.of(OwnerCalendar.of(List.of(rain), Map.of())),
                        ask.terms(),
                        ask.coolMinutesMax(),
                        ask.when());
        MadePlan plan = PlanMaker.make(wet);
        double dry = PlanMaker.make(ask).forecast(saturday).orElseThrow().total().mean();
        assertEquals(0.8, plan.forecast(saturday).orElseThrow().total().mean() / dry, 0.02);
        assertEquals(
                List.of("weather: rain"),
                plan.forecast(saturday).orElseThrow().why().effects().stream()
                        .map(effect -> effect.name())
                        .toList());
    }
}
