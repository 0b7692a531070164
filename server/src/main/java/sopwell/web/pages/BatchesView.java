package sopwell.web.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.menu.Caution;
import sopwell.orders.FoodLimits.OvenKind;
import sopwell.stock.larder.BatchRow;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.StockNow;
import sopwell.stock.larder.Yields;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.Unit;
import sopwell.stock.recipes.Watch;
import sopwell.stock.safety.RoastClock;
import sopwell.stock.safety.Standing;
import sopwell.stock.safety.UseBy;
import sopwell.web.T;

/** What is being made and what was made, in one language. Immutable. */
public record BatchesView(StockWords words, StockNow now, long nowMs) {
    private static final int TENS = 10;
    private static final int THOUSAND_DIGITS = 3;

    /** The texts. */
    public T t() {
        return words.t();
    }

    /** What can be made. */
    public List<Ingredient> made() {
        return now.book().recipes().stream()
                .map(recipe -> now.book().ingredient(recipe.makes()))
                .toList();
    }

    /** What a batch makes, such as {@code sliced beef, 2 × roast}. */
    public String what(BatchRow row) {
        String name = t().local(ingredient(row).name());
        String lot =
                now.book()
                        .recipe(row.batch().makes())
                        .map(recipe -> t().local(recipe.lot().name()))
                        .orElse("");
        return row.batch().lots() == 1 ? name : name + ", " + row.batch().lots() + " × " + lot;
    }

    /** The ingredient that a batch makes. */
    public Ingredient ingredient(BatchRow row) {
        return now.book().ingredient(row.batch().makes());
    }

    /** What the recipe says it gives. */
    public String planned(BatchRow row) {
        return words.amount(ingredient(row), row.batch().planned());
    }

    /** Where it is, since when. */
    public String where(BatchRow row) {
        String step =
                row.step().map(one -> t().local(one.name())).orElseGet(() -> row.batch().step());
        return t().of("batches.since", step, words.time(row.batch().stepAtMs()));
    }

    /** Where it goes next, on a button. */
    public String next(PrepStep step) {
        return t().of("batches.next", t().local(step.name()));
    }

    /** What a step is called, also one that the recipe has no more. */
    public String step(BatchRow row, String id) {
        return now.book()
                .recipe(row.batch().makes())
                .flatMap(recipe -> recipe.step(id))
                .map(step -> t().local(step.name()))
                .orElse(id);
    }

    /** The steps whose limits were not shown to be met. */
    public String missed(BatchRow row) {
        return t().of(
                        "batches.missed",
                        t().list(
                                        row.batch().missed().stream()
                                                .distinct()
                                                .map(id -> step(row, id))
                                                .toList()));
    }

    /** How long is left, large; a word when no time is set or it is over. */
    public String left(Standing standing) {
        boolean counts =
                standing.byMs() > nowMs
                        && (standing.state() == Standing.State.FINE
                                || standing.state() == Standing.State.ACT);
        return counts
                ? words.lasting(standing.leftMs(nowMs))
                : t().get("clock." + standing.state().name());
    }

    /** The last temperature of the step and when it was measured; empty without one. */
    public String last(BatchRow row) {
        return row.batch()
                .last()
                .map(
                        reading ->
                                t().of(
                                                "batches.last",
                                                words.degrees(reading.temperature()),
                                                words.time(reading.atMs())))
                .orElse("");
    }

    /** Whether a temperature is wanted in the step of a batch. */
    public boolean isWatched(BatchRow row) {
        return row.standing().isPresent();
    }

    /** Whether a batch can go on: its step's limit was reached, or there is none to reach. */
    public boolean isReady(BatchRow row) {
        return row.standing().isEmpty() || row.standing().get().state() == Standing.State.DONE;
    }

    /** What the limits of a step are and whose; with the oven's for a roast. */
    public List<String> limits(BatchRow row) {
        Watch watch = row.step().map(PrepStep::watch).orElse(Watch.NONE);
        List<String> said = new ArrayList<>();
        if (watch != Watch.NONE) {
            said.add(LimitWords.of(watch, words));
        }
        if (watch == Watch.COOK_ROAST) {
            now.book().recipe(row.batch().makes()).ifPresent(recipe -> said.add(oven(row, recipe)));
        }
        return said;
    }

    private String oven(BatchRow row, Recipe recipe) {
        long grams = roastGrams(row, recipe);
        return t().of(
                        "limit.oven",
                        degrees(OvenKind.DRY, grams),
                        degrees(OvenKind.CONVECTION, grams),
                        degrees(OvenKind.HUMID, grams));
    }

    /**
     * What one roast of a batch weighs raw. The code's limits go by the roast, not by how many are
     * in the oven; and by what the batch was begun with, though the recipe may say otherwise now.
     * Of what is not weighed nothing is known: 0, for which the stricter limits count.
     */
    private long roastGrams(BatchRow row, Recipe recipe) {
        Recipe.Input main = recipe.inputs().get(0);
        if (now.book().ingredient(main.ingredient()).base() != Unit.G) {
            return 0;
        }
        BigDecimal lots = BigDecimal.valueOf(row.batch().lots());
        return main.amount()
                .multiply(BigDecimal.valueOf(row.batch().planned(), THOUSAND_DIGITS))
                .divide(recipe.out().multiply(lots), 0, RoundingMode.HALF_UP)
                .longValue();
    }

    private String degrees(OvenKind kind, long grams) {
        return RoastClock.oven(words.safety().food(), kind, grams).map(words::degrees).orElse("–");
    }

    /** The cautions of what is being made and what is kept of it. */
    public CautionView cautions() {
        Set<Caution> cautions = new LinkedHashSet<>();
        now.batches().forEach(row -> cautions.addAll(ingredient(row).cautions()));
        now.labels().forEach(label -> cautions.addAll(ingredient(label).cautions()));
        return new CautionView(t(), words.safety(), List.copyOf(cautions));
    }

    /** The cautions of one batch. */
    public CautionView cautions(BatchRow row) {
        return new CautionView(t(), words.safety(), ingredient(row).cautions());
    }

    /** What was made. */
    public Ingredient ingredient(Label label) {
        return now.book().ingredient(label.makes());
    }

    /** The label's dates. */
    public String dates(Label label) {
        return t().of("batches.dates", t().day(label.preparedOn()), t().day(label.useBy()));
    }

    /** Whether a label is on its last day or past it; and what is said then. */
    public String dated(Label label) {
        Standing.State state = UseBy.on(today(), label.useBy()).state();
        return switch (state) {
            case FINE, DONE -> "";
            case ACT -> t().get("batches.today");
            case FAILED -> t().get("batches.past");
        };
    }

    /** The recipes whose batches give something else than they say. */
    public List<String> departing() {
        List<String> said = new ArrayList<>();
        for (Yields yields : now.yields()) {
            Optional<Integer> really = yields.departing();
            if (really.isPresent() && now.book().hasIngredient(yields.makes())) {
                said.add(
                        t().of(
                                        "batches.departs",
                                        t().local(now.book().ingredient(yields.makes()).name()),
                                        yields.perMille().size(),
                                        tenths(really.get())));
            }
        }
        return said;
    }

    private static String tenths(int perMille) {
        return perMille / TENS + "." + perMille % TENS;
    }

    /** How the slicer stands. */
    public String slicer() {
        return now.slicer().map(words::advice).orElseGet(() -> t().get("batches.slicer.unknown"));
    }

    private LocalDate today() {
        return Instant.ofEpochMilli(nowMs).atZone(words.zone()).toLocalDate();
    }
}
