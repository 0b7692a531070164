package sopwell.stock.larder;

import java.util.Optional;
import sopwell.menu.Caution;
import sopwell.orders.Safety;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Watch;
import sopwell.stock.safety.CoolingClock;
import sopwell.stock.safety.HoldingClock;
import sopwell.stock.safety.RoastClock;
import sopwell.stock.safety.Standing;

/** Which clock watches a batch in its present step, and how it stands. Stateless. */
public final class BatchWatch {
    private BatchWatch() {}

    /** How a batch stands; empty when nothing is watched in its step. */
    public static Optional<Standing> of(Batch batch, RecipeBook book, Safety safety, long nowMs) {
        Watch watch = step(batch, book).map(PrepStep::watch).orElse(Watch.NONE);
        long sinceMs = batch.stepAtMs();
        return switch (watch) {
            case NONE -> Optional.empty();
            case COOK_ROAST ->
                    Optional.of(RoastClock.roast(safety.food().roast(), batch.readings()));
            case COOL ->
                    Optional.of(
                            CoolingClock.cooked(safety.food(), sinceMs, batch.readings(), nowMs));
            case CHILL ->
                    Optional.of(
                            CoolingClock.ambient(safety.food(), sinceMs, batch.readings(), nowMs));
            case REHEAT ->
                    Optional.of(
                            isWholeRoast(batch, book)
                                    ? HoldingClock.reheatRoast(
                                            safety, sinceMs, batch.readings(), nowMs)
                                    : HoldingClock.reheat(
                                            safety, sinceMs, batch.readings(), nowMs));
            case HOT_HOLD ->
                    Optional.of(
                            HoldingClock.hot(
                                    safety,
                                    isRoast(batch, book),
                                    sinceMs,
                                    batch.readings(),
                                    nowMs));
            case COLD_HOLD, MATURE ->
                    Optional.of(HoldingClock.cold(safety, sinceMs, batch.readings(), nowMs));
        };
    }

    /**
     * Whether the limits of the present step were shown to be met: a goal was reached in time, or
     * what is held was right when it was measured last. What was not measured was not shown.
     */
    static boolean isMet(Batch batch, RecipeBook book, Safety safety, long nowMs) {
        Optional<Standing> standing = of(batch, book, safety, nowMs);
        if (standing.isEmpty()) {
            return true;
        }
        return switch (standing.get().advice()) {
            case NOTHING -> true;
            case HOT_HOLD, COLD_HOLD -> batch.last().isPresent();
            case COOL_MIDDLE,
                    COOL_COLD,
                    ROAST_ON,
                    ROAST_HOLD,
                    REHEAT,
                    REHEAT_HOLD,
                    HOT_AGAIN,
                    COLD_AGAIN,
                    USE_UP,
                    CLEAN,
                    DISCARD ->
                    false;
        };
    }

    /** The step that a batch is in; empty when the recipe has it no more. */
    public static Optional<PrepStep> step(Batch batch, RecipeBook book) {
        return book.recipe(batch.makes()).flatMap(recipe -> recipe.step(batch.step()));
    }

    /** The step after the present one; the first when the recipe has the present one no more. */
    public static Optional<PrepStep> next(Batch batch, RecipeBook book) {
        Optional<Recipe> recipe = book.recipe(batch.makes());
        if (recipe.isEmpty()) {
            return Optional.empty();
        }
        int present = step(batch, book).map(step -> recipe.get().steps().indexOf(step)).orElse(-1);
        return recipe.get().steps().stream().skip(present + 1L).findFirst();
    }

    /** A roast that was not sliced may be reheated by its own table: what is sliced is not one. */
    static boolean isWholeRoast(Batch batch, RecipeBook book) {
        return isRoast(batch, book)
                && !book.ingredient(batch.makes()).cautions().contains(Caution.SLICER);
    }

    private static boolean isRoast(Batch batch, RecipeBook book) {
        return book.recipe(batch.makes()).stream()
                .flatMap(recipe -> recipe.steps().stream())
                .anyMatch(step -> step.watch() == Watch.COOK_ROAST);
    }
}
