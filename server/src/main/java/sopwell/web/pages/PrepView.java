package sopwell.web.pages;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Caution;
import sopwell.prep.MadePlan;
import sopwell.prep.calendar.PrepTerms;
import sopwell.prep.plan.PrepPlan.Order;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.prep.plan.PrepPlan.Warning;
import sopwell.stock.larder.Measures;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.Resource;
import sopwell.web.T;

/**
 * The plan of prep, in one language. Immutable.
 *
 * @param from the first date that is shown
 * @param days how many calendar dates are shown
 */
public record PrepView(StockWords words, MadePlan plan, LocalDate from, int days) {
    /** The texts. */
    public T t() {
        return words.t();
    }

    /** What the plan stands on, in a sentence. */
    public String ground() {
        MadePlan.Basis basis = plan.basis();
        long many = basis.learned() > 0 ? basis.learned() : basis.guessPieces();
        return t().many(
                        "prep.ground." + basis.ground().name(),
                        many,
                        basis.learned(),
                        basis.first().map(t()::day).orElse(""),
                        basis.last().map(t()::day).orElse(""),
                        basis.guessPieces());
    }

    /** What is assumed of costs and hours, in a sentence; empty when nothing can be planned. */
    public String assumed() {
        PrepTerms terms = plan.terms();
        return plan.days().isEmpty()
                ? ""
                : t().of(
                                "prep.assumed",
                                t().money(terms.goodwillCents()),
                                t().percent(terms.withoutPercent(), 100),
                                terms.nightPerMille(),
                                terms.deliveredBy(),
                                terms.hands(),
                                terms.opens());
    }

    /** What the calendar makes of the days that are shown, a line each. */
    public List<String> known() {
        List<String> said = new ArrayList<>();
        for (LocalDate date = from; date.isBefore(from.plusDays(days)); date = date.plusDays(1)) {
            List<String> effects =
                    plan.forecast(date).stream()
                            .flatMap(day -> day.why().effects().stream())
                            .map(one -> OccasionWords.effect(t(), one))
                            .toList();
            if (!effects.isEmpty()) {
                said.add(t().of("prep.known", day(date), t().list(effects)));
            }
        }
        return said;
    }

    /** What was never counted, in a sentence; empty when everything was. */
    public String uncounted() {
        List<String> names = plan.uncounted().stream().sorted().map(this::name).toList();
        int all = names.size();
        return all == 0
                ? ""
                : t().many(
                                "prep.uncounted",
                                all,
                                all,
                                t().list(names.subList(0, Math.min(all, 5))));
    }

    /** What an ingredient is called. */
    public String name(String ingredient) {
        return t().local(plan.book().ingredient(ingredient).name());
    }

    /** What starts on each date that is shown, in the order of time; the first date always. */
    public Map<LocalDate, List<Task>> starts() {
        Map<LocalDate, List<Task>> starts = new LinkedHashMap<>();
        starts.put(from, new ArrayList<>());
        for (Task task : plan.plan().tasks()) {
            LocalDate date = date(task.start());
            if (!date.isBefore(from) && date.isBefore(from.plusDays(days))) {
                starts.computeIfAbsent(date, d -> new ArrayList<>()).add(task);
            }
        }
        return starts;
    }

    private LocalDate date(Instant at) {
        return LocalDate.ofInstant(at, plan.zone());
    }

    /** A date in words; today is called so. */
    public String day(LocalDate date) {
        return date.equals(plan.today()) ? t().of("prep.today", t().day(date)) : t().day(date);
    }

    /** A time of day. */
    public String time(Instant at) {
        return words.time(at.toEpochMilli());
    }

    /** A time with its day. */
    public String when(Instant at) {
        return t().day(date(at)) + " " + time(at);
    }

    /** An amount of an ingredient, of its base unit. */
    public String amount(String ingredient, double base) {
        return words.amount(plan.book().ingredient(ingredient), Math.round(base * 1000));
    }

    /** How much is made, such as {@code 6 × piece = 21.8 kg}. */
    public String makes(Task task) {
        Recipe recipe = plan.book().recipe(task.makes()).orElseThrow();
        return t().of(
                        "prep.makes",
                        task.lots(),
                        t().local(recipe.lot().name()),
                        amount(task.makes(), task.gives().doubleValue()));
    }

    /** In how many pans, where more than one lot goes into one; empty otherwise. */
    public String pans(Task task) {
        int perPan = plan.book().recipe(task.makes()).orElseThrow().lot().perPan();
        int pans = (task.lots() + perPan - 1) / perPan;
        return perPan > 1 ? t().of("prep.pans", pans) : "";
    }

    /** What goes in. */
    public String takes(Task task) {
        Recipe recipe = plan.book().recipe(task.makes()).orElseThrow();
        List<String> parts = new ArrayList<>();
        for (Recipe.Input input : recipe.inputs()) {
            BigDecimal amount = task.takes().getOrDefault(input.ingredient(), BigDecimal.ZERO);
            parts.add(
                    amount(input.ingredient(), amount.doubleValue())
                            + " "
                            + name(input.ingredient()));
        }
        return t().of("prep.takes", t().list(parts));
    }

    /** Its steps with their times, and what they are done on. */
    public List<String> steps(Task task) {
        Recipe recipe = plan.book().recipe(task.makes()).orElseThrow();
        List<String> said = new ArrayList<>();
        for (StepTime step : task.steps()) {
            String name =
                    recipe.step(step.step()).map(s -> t().local(s.name())).orElse(step.step());
            String on = step.resource().map(id -> ", " + resource(id)).orElse("");
            said.add(t().of("prep.step", name + on, when(step.from()), time(step.until())));
        }
        return said;
    }

    /** What a resource is called. */
    String resource(String id) {
        return plan.book().resources().stream()
                .filter(one -> one.id().equals(id))
                .map(Resource::name)
                .map(t()::local)
                .findFirst()
                .orElse(id);
    }

    /** By when it is needed, and until when it keeps. */
    public String needed(Task task) {
        String by = t().of("prep.needed", when(task.why().by()));
        return task.lastDay()
                .map(last -> by + " " + t().of("prep.keeps", t().day(last)))
                .orElse(by);
    }

    /** What is written on a batch that is started by the plan. */
    public String note(Task task) {
        return t().of("prep.note", when(task.start()), when(task.why().by()));
    }

    /** Why so much. */
    public List<String> why(Task task) {
        Recipe recipe = plan.book().recipe(task.makes()).orElseThrow();
        List<String> said =
                new PrepWhy(this).of(task.makes(), task.why(), t().local(recipe.lot().name()));
        said.addAll(new PrepBounds(this).of(task));
        return said;
    }

    /** Why so many packs. */
    public List<String> why(Order order) {
        return new PrepWhy(this).of(order.ingredient(), order.why(), t().get("prep.pack"));
    }

    /** What does not work out, each in a sentence; what was never counted is said at once. */
    public List<String> problems() {
        List<String> said = new ArrayList<>();
        Set<String> kinds = new LinkedHashSet<>();
        for (Warning warning : plan.plan().warnings()) {
            boolean near =
                    warning.by()
                            .map(this::date)
                            .map(d -> d.isBefore(from.plusDays(days)))
                            .orElse(true);
            String sentence = near && !isUnknown(warning) ? sentence(warning) : "";
            if (!sentence.isEmpty() && kinds.add(sentence)) {
                said.add(sentence);
            }
        }
        return said;
    }

    /** Nobody knows what there is, so that nobody knows whether it is short before a delivery. */
    private boolean isUnknown(Warning warning) {
        return plan.uncounted().contains(warning.ingredient())
                && switch (warning.kind()) {
                    case SHORT_BEFORE_DELIVERY, NO_DELIVERY -> true;
                    case NOT_IN_TIME,
                            EXPIRES_TOO_EARLY,
                            COOLING_TOO_LONG,
                            LOT_TOO_LARGE,
                            NO_STAKES,
                            NO_FORECAST ->
                            false;
                };
    }

    private String sentence(Warning warning) {
        String best = warning.readyAt().map(at -> t().of("prep.best", when(at))).orElse("");
        String way = warning.hindrance().map(h -> t().under("prep.way", h.name())).orElse("");
        return t().many(
                        "prep.warning." + warning.kind().name(),
                        warning.asked(),
                        name(warning.ingredient()),
                        warning.by().map(this::when).orElse(""),
                        warning.asked(),
                        warning.possible(),
                        way,
                        best);
    }

    /** What must be ordered on the first date that is shown or the next one. */
    public List<Order> orders() {
        return plan.plan().orders().stream()
                .filter(order -> date(order.orderBy()).isBefore(from.plusDays(2)))
                .filter(order -> !date(order.orderBy()).isBefore(from))
                .toList();
    }

    /** An order in a line: how many packs, how much that is, and what it costs. */
    public String packs(Order order) {
        double pack =
                plan.book()
                        .ingredient(order.ingredient())
                        .supply()
                        .orElseThrow()
                        .packInBase()
                        .doubleValue();
        return t().of(
                        "prep.packs",
                        order.packs(),
                        amount(order.ingredient(), pack),
                        t().money(order.cents()));
    }

    /** By when an order is placed and when it comes. */
    public String dates(Order order) {
        return t().of("prep.order-by", when(order.orderBy()), t().day(order.delivered()));
    }

    /** The unit that people here count an ingredient in. */
    String unit(Ingredient ingredient) {
        return words.unit(ingredient, Measures.id(ingredient.unit()));
    }

    /** What is on when, drawn. */
    public PrepTimeline timeline() {
        return PrepTimeline.of(this);
    }

    /** The cautions of what is made. */
    public CautionView cautions() {
        Set<Caution> cautions = new LinkedHashSet<>();
        starts().values()
                .forEach(
                        tasks ->
                                tasks.forEach(
                                        task ->
                                                cautions.addAll(
                                                        plan.book()
                                                                .ingredient(task.makes())
                                                                .cautions())));
        return new CautionView(t(), words.safety(), List.copyOf(cautions));
    }

    /** What a date is forecast to ask for. */
    Optional<sopwell.prep.forecast.DayForecast> forecast(LocalDate date) {
        return plan.forecast(date);
    }
}
