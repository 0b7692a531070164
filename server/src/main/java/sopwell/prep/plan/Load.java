package sopwell.prep.plan;

import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.recipes.Watch;

/**
 * Lots that are made in one run. Immutable.
 *
 * @param lots at least 1
 * @param need the index of what they are needed for
 * @param byMinute until when they must be ready
 * @param freshMinute the step that dates them must not end before; else they expire too early
 */
record Load(Recipe recipe, int lots, int need, long byMinute, long freshMinute) {
    /** How long hands are busy with this many lots of a step, within the step's time. */
    static int handsMinutes(PrepStep step, int lots) {
        return Math.min(step.minutes(), step.handsMinutes() * lots);
    }

    /** How many pairs of hands that takes. */
    static int hands(PrepStep step, int lots) {
        int all = step.handsMinutes() * lots;
        return all == 0 ? 0 : (all + step.minutes() - 1) / step.minutes();
    }

    /** How many lots fit into one run: by recipe, by slots and by hands; 0 when none does. */
    static int lotsMax(RecipeBook book, Recipe recipe, int hands) {
        int most = recipe.lot().perRunMax();
        for (PrepStep step : recipe.steps()) {
            if (step.resource().isPresent()) {
                int slots = book.resource(step.resource().get()).slots();
                most = Math.min(most, slots / step.slotsPerLot());
            }
            if (step.handsMinutes() > 0) {
                most = Math.min(most, hands * step.minutes() / step.handsMinutes());
            }
        }
        return most;
    }

    Load withLots(int other) {
        return new Load(recipe, other, need, byMinute, freshMinute);
    }

    /**
     * How long the step after this one may wait; {@link Spans#FAR} when that does not matter. What
     * is to be cooled stands for no time in between unless the recipe says how long it may.
     */
    long mostWait(int step) {
        PrepStep before = recipe.steps().get(step);
        if (before.maxWaitMinutes() > 0) {
            return before.maxWaitMinutes();
        }
        boolean cools =
                step + 1 < recipe.steps().size()
                        && recipe.steps().get(step + 1).watch() == Watch.COOL;
        return cools ? before.minWaitMinutes() : Spans.FAR;
    }
}
