package sopwell.prep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.mix.DayTally;
import sopwell.prep.MadePlan.Basis;
import sopwell.prep.MadePlan.Ground;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.forecast.ComingDay;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.forecast.Forecaster;
import sopwell.prep.forecast.Guesses;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.plan.PlanAsk;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.Terms;
import sopwell.prep.plan.Planner;
import sopwell.prep.plan.PrepPlan;
import sopwell.prep.plan.PrepPlan.Warning;
import sopwell.prep.quantity.Stakes;
import sopwell.stock.recipes.RecipeBook;

/**
 * Joins what was sold, what recipes take and what is on hand into a plan. The same question gives
 * the same plan. For one plan, on one thread.
 */
public final class PlanMaker {
    /** How many open days are planned for, so that orders see their next delivery. */
    public static final int DAYS = 12;

    private final PrepAsk ask;
    private final RecipeBook book;
    private final List<PastDay> learned;
    private final List<DayTally> tallies;
    private final OnHand onHand;
    private final Opening opening;
    private final Map<String, Stakes> stakes = new HashMap<>();

    private PlanMaker(PrepAsk ask) {
        LocalDate today = ask.when().today();
        this.ask = ask;
        this.book = SetBook.of(ask.stock().book(), ask.terms().kitchen());
        Map<LocalDate, PastDay> past = new TreeMap<>();
        ask.past().days().stream()
                .filter(day -> day.date().isBefore(today))
                .forEach(day -> past.put(day.date(), day));
        this.learned = List.copyOf(past.values());
        this.tallies =
                ask.past().tallies().stream().filter(day -> day.date().isBefore(today)).toList();
        this.onHand = new OnHand(ask.stock(), ask.when());
        this.opening = new Opening(ask, book.hours(), learned);
    }

    /** The plan for the next open days. */
    public static MadePlan make(PrepAsk ask) {
        return new PlanMaker(ask).make();
    }

    private MadePlan make() {
        if (book.isEmpty() || book.ingredients().isEmpty()) {
            return nothing(Ground.NO_RECIPES);
        }
        List<OpenDay> days = opening.next(DAYS);
        if (days.isEmpty()) {
            return nothing(Ground.NO_OPEN_DAYS);
        }
        Guesses guesses = guesses();
        Forecaster forecaster =
                Forecaster.of(
                        new History(PrepDays.BIN_MINUTES, learned, ask.past().outlooks()), guesses);
        List<DayForecast> forecasts = forecaster.forecast(days.stream().map(this::coming).toList());
        Kinds kinds = Kinds.of(ask.menu(), tallies);
        Takings takings = new Takings(book, kinds.all());
        Worth worth = new Worth(book, ask.terms());
        for (String ingredient : takings.ingredients()) {
            stakes.put(ingredient, worth.stakes(ingredient, kinds.all(), takings));
        }
        List<DemandFor> demand = new Demands(kinds, takings, forecasts, this::part).all(ask.menu());
        List<PlanAsk.Busy> busy = new ArrayList<>(onHand.busy());
        busy.addAll(ask.calendar().busy());
        busy.addAll(SetBook.out(book, ask));
        PlanAsk planAsk =
                new PlanAsk(
                        book,
                        ask.when().zone(),
                        ask.when().now(),
                        days,
                        demand,
                        onHand.lots(),
                        busy,
                        terms());
        Map<LocalDate, DayForecast> byDate = new LinkedHashMap<>();
        forecasts.forEach(one -> byDate.put(one.date(), one));
        return made(planAsk, byDate, basis(forecasts, guesses), told(Planner.plan(planAsk)));
    }

    private MadePlan made(
            PlanAsk planAsk, Map<LocalDate, DayForecast> forecasts, Basis basis, PrepPlan plan) {
        Set<String> used = new TreeSet<>(onHand.uncounted());
        return new MadePlan(
                ask.when().now(),
                ask.when().zone(),
                book,
                planAsk.days(),
                forecasts,
                planAsk.demand(),
                planAsk.stock(),
                stakes,
                used,
                ask.terms().numbers().withHands(planAsk.terms().hands()),
                basis,
                plan);
    }

    /** Loads of one need that miss their time are told together. */
    private static PrepPlan told(PrepPlan plan) {
        Map<List<Object>, Warning> told = new LinkedHashMap<>();
        for (Warning one : plan.warnings()) {
            told.merge(
                    List.of(one.kind(), one.ingredient(), one.by(), one.asked()),
                    one,
                    PlanMaker::both);
        }
        return new PrepPlan(plan.tasks(), plan.orders(), List.copyOf(told.values()));
    }

    private static Warning both(Warning one, Warning other) {
        boolean later =
                one.readyAt().isPresent()
                        && other.readyAt().filter(one.readyAt().get()::isAfter).isEmpty();
        return new Warning(
                one.kind(),
                one.ingredient(),
                one.by(),
                one.asked(),
                Math.max(0, one.possible() + other.possible() - one.asked()),
                one.hindrance(),
                later ? other.readyAt() : one.readyAt());
    }

    private MadePlan nothing(Ground ground) {
        PlanAsk none =
                new PlanAsk(
                        book,
                        ask.when().zone(),
                        ask.when().now(),
                        List.of(),
                        List.of(),
                        onHand.lots(),
                        List.of(),
                        terms());
        Basis basis = new Basis(ground, 0, Optional.empty(), Optional.empty(), 0);
        PrepPlan plan = new PrepPlan(List.of(), List.of(), List.of());
        return made(none, Map.of(), basis, plan);
    }

    /** How much of a day's demand is planned for: of today what is still to come. */
    private double part(LocalDate date, String ingredient) {
        if (!date.equals(ask.when().today())) {
            return 1;
        }
        return onHand.uncounted().contains(ingredient) ? 0 : opening.rest();
    }

    private ComingDay coming(OpenDay day) {
        return new ComingDay(
                day.date(),
                ask.calendar().hours().getOrDefault(day.date(), Hours.UNKNOWN),
                ask.calendar().occasions().getOrDefault(day.date(), List.of()));
    }

    private boolean isNew() {
        return learned.stream().noneMatch(PastDay::open);
    }

    private Guesses guesses() {
        if (!ask.calendar().guesses().isEmpty()) {
            return new Guesses(ask.calendar().guesses());
        }
        if (!isNew()) {
            return Guesses.NONE;
        }
        Map<String, Double> even = new TreeMap<>();
        double pieces = ask.terms().numbers().guessPieces();
        double each = pieces / Math.max(1, ask.menu().items().size());
        ask.menu().items().forEach(item -> even.put(item.id(), each));
        return new Guesses(even);
    }

    private Basis basis(List<DayForecast> forecasts, Guesses guesses) {
        List<LocalDate> dates = learned.stream().filter(PastDay::open).map(PastDay::date).toList();
        Ground ground =
                switch (forecasts.isEmpty()
                        ? sopwell.prep.forecast.Why.Basis.GUESSES
                        : forecasts.get(0).why().basis()) {
                    case NOTHING, GUESSES ->
                            ask.calendar().guesses().isEmpty() ? Ground.EVEN_GUESS : Ground.GUESSES;
                    case FEW_DAYS -> Ground.FEW_DAYS;
                    case LONG_AGO -> Ground.LONG_AGO;
                    case DAYS -> Ground.DAYS;
                };
        double pieces = guesses.items().values().stream().mapToDouble(g -> g).sum();
        return new Basis(
                ground,
                dates.size(),
                dates.stream().findFirst(),
                dates.isEmpty() ? Optional.empty() : Optional.of(dates.get(dates.size() - 1)),
                Math.round(pieces));
    }

    private Terms terms() {
        PrepTerms numbers = ask.terms().numbers();
        return new Terms(
                stakes,
                ask.terms().kitchen().reviewDays(),
                numbers.hands() > 0 ? numbers.hands() : PrepTerms.handsOf(book),
                ask.coolMinutesMax(),
                numbers.deliveredBy(),
                ask.terms().kitchen().away());
    }
}
