package sopwell.prep.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.prep.plan.Calendar.Booking;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PrepPlan.Kind;
import sopwell.prep.plan.PrepPlan.Order;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.prep.plan.PrepPlan.Warning;
import sopwell.prep.plan.Scheduler.Missed;
import sopwell.prep.plan.Scheduler.Placed;
import sopwell.prep.plan.Scheduler.Result;
import sopwell.prep.plan.Sizing.Decision;
import sopwell.prep.quantity.PathCost.Lot;
import sopwell.prep.quantity.PathCost.Window;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Use;
import sopwell.stock.recipes.Watch;

/**
 * From what will be asked for to what to start and to order. Goes down the book of recipes: what is
 * made is sized and placed before what it takes is known. Not thread-safe: for one plan.
 */
public final class Planner {
    /** So far back it is asked whether something only should have been started earlier. */
    private static final int LOOK_BACK_DAYS = 28;

    private final PlanAsk ask;
    private final RecipeBook book;
    private final Sizing sizing;
    private final Calendar calendar;
    private final Scheduler scheduler;
    private final long now;
    private final List<Task> tasks = new ArrayList<>();
    private final List<Order> orders = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();
    private final List<Load> waiting = new ArrayList<>();
    private final List<Decision> decisions = new ArrayList<>();
    private final Map<String, List<Taking>> takings = new HashMap<>();

    /** What a recipe takes when it starts. */
    private record Taking(double amount, long minute) {}

    private Planner(PlanAsk ask) {
        this.ask = ask;
        this.book = ask.book();
        this.sizing = new Sizing(ask);
        this.now = Calendar.minute(ask.now().plusSeconds(59));
        LocalDate first = sizing.date(-LOOK_BACK_DAYS);
        LocalDate last = sizing.date(sizing.dates());
        this.calendar = new Calendar(ask, first, last);
        this.scheduler = new Scheduler(calendar, now);
    }

    /** The plan; the same question always gives the same one. */
    public static PrepPlan plan(PlanAsk ask) {
        if (ask.days().isEmpty()) {
            return new PrepPlan(List.of(), List.of(), List.of());
        }
        return new Planner(ask).plan();
    }

    private PrepPlan plan() {
        bookBusy();
        demand();
        for (Ingredient ingredient : book.downward()) {
            boolean taken =
                    waiting.stream()
                            .flatMap(load -> load.recipe().inputs().stream())
                            .anyMatch(input -> input.ingredient().equals(ingredient.id()));
            if (taken) {
                flush();
            }
            Optional<Recipe> recipe = book.recipe(ingredient.id());
            if (recipe.isPresent()) {
                takings(ingredient.id(), 0);
                make(ingredient, recipe.get());
            } else if (ingredient.supply().isPresent()) {
                flush();
                Buying buying = new Buying(ask, sizing, orders, warnings);
                takings(ingredient.id(), buying.minutesBefore());
                buying.buy(ingredient, ingredient.supply().get());
            }
        }
        flush();
        tasks.sort(Comparator.comparing(Task::start).thenComparing(Task::makes));
        orders.sort(Comparator.comparing(Order::orderBy).thenComparing(Order::ingredient));
        return new PrepPlan(tasks, orders, warnings);
    }

    private void bookBusy() {
        Set<String> known = new HashSet<>();
        book.resources().forEach(one -> known.add(one.id()));
        for (PlanAsk.Busy busy : ask.busy()) {
            if (known.contains(busy.resource())) {
                long from = Calendar.minute(busy.from());
                long until = Calendar.minute(busy.until().plusSeconds(59));
                calendar.book(busy.resource(), new Booking(from, until, busy.slots()));
            }
        }
    }

    private void demand() {
        Set<String> said = new HashSet<>();
        for (DemandFor demand : ask.demand()) {
            if (isSound(demand) && said.add(demand.ingredient())) {
                sizing.sell(demand);
                if (!ask.terms().stakes().containsKey(demand.ingredient())) {
                    warn(Kind.NO_STAKES, demand.ingredient());
                }
            } else {
                warn(Kind.NO_FORECAST, demand.ingredient());
                said.add(demand.ingredient());
            }
        }
        for (Use use : book.uses()) {
            if (said.add(use.ingredient())) {
                warn(Kind.NO_FORECAST, use.ingredient());
            }
        }
    }

    private boolean isSound(DemandFor demand) {
        int days = ask.days().size();
        return book.hasIngredient(demand.ingredient())
                && demand.means().size() == days
                && demand.variances().size() == days
                && demand.means().stream().allMatch(Planner::isAmount)
                && demand.variances().stream().allMatch(Planner::isAmount)
                && isAmount(demand.levelPhi());
    }

    private static boolean isAmount(double number) {
        return number >= 0 && number < 1e15;
    }

    private void takings(String ingredient, long before) {
        for (Taking taking : takings.getOrDefault(ingredient, List.of())) {
            int date = Math.max(0, sizing.index(taking.minute() - before));
            if (date < sizing.dates()) {
                sizing.need(ingredient).add(date, taking.amount(), taking.minute());
            }
        }
    }

    private void make(Ingredient made, Recipe recipe) {
        Need need = sizing.need(made.id());
        if (!need.isAny() || isRefused(recipe)) {
            return;
        }
        int most = Load.lotsMax(book, recipe, ask.terms().hands());
        if (most == 0) {
            warn(Kind.LOT_TOO_LARGE, made.id());
            return;
        }
        Shelf shelf = sizing.stock(made.id());
        double out = recipe.out().doubleValue();
        int review = Math.max(1, ask.terms().reviewDays().getOrDefault(made.id(), 1));
        for (int date = 0; date < need.dates(); date++) {
            if (!need.isOn(date)) {
                continue;
            }
            Load one = new Load(recipe, 1, decisions.size(), need.by(date), fresh(made, date));
            int keepsTo = Math.max(date, keepsTo(made, one));
            int wanted = Math.min(need.dates(), need.next(date, review)) - 1;
            if (review > 1 && lasts(made, shelf, new Window(date, date, keepsTo), out)) {
                continue;
            }
            if (keepsTo < wanted && review > 1) {
                warnings.add(early(made.id(), need.by(date)));
            }
            Window window = new Window(date, Math.min(wanted, keepsTo), keepsTo);
            Decision decision = sizing.decide(made.id(), shelf, window, out);
            if (decision.lots() > 0) {
                shelf.add(new Lot(decision.lots() * out, date, keepsTo));
                split(one, decision.lots(), most);
                decisions.add(decision);
                date = window.last();
            }
        }
    }

    /** Whether what is there is enough for a window: no batch for several days begins there. */
    private boolean lasts(Ingredient made, Shelf shelf, Window window, double out) {
        return sizing.decide(made.id(), shelf, window, out).lots() == 0;
    }

    private boolean isRefused(Recipe recipe) {
        boolean slow =
                recipe.steps().stream()
                        .anyMatch(
                                step ->
                                        step.watch() == Watch.COOL
                                                && step.minutes() > ask.terms().coolMinutesMax());
        if (slow) {
            warn(Kind.COOLING_TOO_LONG, recipe.makes());
        }
        return slow;
    }

    private void split(Load one, long lots, int most) {
        long left = lots;
        while (left > 0) {
            int now = (int) Math.min(left, most);
            waiting.add(one.withLots(now));
            left -= now;
        }
    }

    /** The minute at which the earliest date begins that keeps to the date of need. */
    private long fresh(Ingredient made, int date) {
        int days = made.shelfLifeDays();
        return days == 0
                ? -Spans.FAR / 2
                : Calendar.minute(
                        sizing.date(date - days + 1).atStartOfDay(ask.zone()).toInstant());
    }

    /** The last date of a lot that is made as late as can be. */
    private int keepsTo(Ingredient made, Load one) {
        if (made.shelfLifeDays() == 0) {
            return sizing.dates();
        }
        long dated =
                Placing.latest(calendar, one, now)
                        .map(starts -> dated(one, starts))
                        .orElse(one.byMinute());
        return sizing.index(dated) + made.shelfLifeDays() - 1;
    }

    private static long dated(Load load, List<Long> starts) {
        List<PrepStep> steps = load.recipe().steps();
        for (int k = 0; k < steps.size(); k++) {
            if (steps.get(k).id().equals(load.recipe().datedFrom())) {
                return starts.get(k) + steps.get(k).minutes();
            }
        }
        return load.byMinute();
    }

    private void flush() {
        if (waiting.isEmpty()) {
            return;
        }
        Result result = scheduler.place(List.copyOf(waiting));
        waiting.clear();
        for (Placed placed : result.placed()) {
            Load load = placed.load();
            tasks.add(
                    Tasks.of(
                            placed,
                            decisions.get(load.need()).why().orElseThrow(),
                            lastDay(load, placed.starts()),
                            Bounds.of(calendar, placed, now)));
            for (Recipe.Input input : load.recipe().inputs()) {
                double amount = input.amount().doubleValue() * load.lots();
                takings.computeIfAbsent(input.ingredient(), id -> new ArrayList<>())
                        .add(new Taking(amount, placed.starts().get(0)));
            }
        }
        result.missed().forEach(this::missed);
    }

    private Optional<LocalDate> lastDay(Load load, List<Long> starts) {
        int days = book.ingredient(load.recipe().makes()).shelfLifeDays();
        return days == 0
                ? Optional.empty()
                : Optional.of(sizing.date(sizing.index(dated(load, starts)) + days - 1));
    }

    private void missed(Missed missed) {
        Load load = missed.load();
        long asked = decisions.get(load.need()).lots();
        warnings.add(
                new Warning(
                        Kind.NOT_IN_TIME,
                        load.recipe().makes(),
                        Optional.of(Calendar.instant(load.byMinute())),
                        asked,
                        asked - load.lots(),
                        Optional.of(missed.hindrance()),
                        missed.readyMinute().isPresent()
                                ? Optional.of(Calendar.instant(missed.readyMinute().getAsLong()))
                                : Optional.empty()));
    }

    private static Warning early(String ingredient, long by) {
        return Warning.of(Kind.EXPIRES_TOO_EARLY, ingredient, Optional.of(Calendar.instant(by)));
    }

    private void warn(Kind kind, String ingredient) {
        warnings.add(Warning.of(kind, ingredient, Optional.empty()));
    }
}
