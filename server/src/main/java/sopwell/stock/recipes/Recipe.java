package sopwell.stock.recipes;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import sopwell.menu.LocalText;

/**
 * How one ingredient is made of others, told for one lot: the smallest amount that is made at once
 * (one roast, one crock). Immutable.
 *
 * <p>What a lot gives is said in one of two ways. A recipe that works on one main thing and loses
 * some of it on the way (a roast: trimmed, roasted, sliced) says what is left after each stage, as
 * shares of what came in; its first input is the main one, and a lot gives that amount times all
 * shares. Any other recipe says what a lot gives.
 *
 * @param makes the ingredient that is made
 * @param inputs what one lot takes; the first is the main one where there are yields
 * @param yields what is left after each stage, in order; empty when {@code statedOut} is there
 * @param statedOut what one lot gives, in the made ingredient's base unit; empty when there are
 *     yields
 * @param steps what is done, in order
 * @param datedFrom the step whose last minute's date is day 1 of the made ingredient's shelf life
 */
public record Recipe(
        String makes,
        List<Input> inputs,
        List<StageYield> yields,
        Optional<BigDecimal> statedOut,
        Lot lot,
        List<PrepStep> steps,
        String datedFrom) {
    public Recipe {
        inputs = List.copyOf(inputs);
        yields = List.copyOf(yields);
        statedOut = statedOut.map(Amounts::plain);
        steps = List.copyOf(steps);
    }

    /**
     * What one lot takes of one ingredient. Immutable.
     *
     * @param amount in the ingredient's base unit, above 0
     */
    public record Input(String ingredient, BigDecimal amount) {
        public Input {
            amount = Amounts.plain(amount);
        }
    }

    /**
     * What is left after one stage. Immutable.
     *
     * @param id unique within its recipe
     * @param left the share that is left, above 0 and at most 1
     */
    public record StageYield(String id, LocalText name, BigDecimal left) {
        public StageYield {
            left = Amounts.plain(left);
        }
    }

    /**
     * The smallest amount that is made at once. Immutable.
     *
     * @param name what one lot is called: a roast, a crock
     * @param perPan how many lots go into one pan, at least 1
     * @param perRunMax how many lots may be made in one run, at least 1
     */
    public record Lot(LocalText name, int perPan, int perRunMax) {}

    /** The share of the main input that is left in the end, exact; 1 without yields. */
    public BigDecimal left() {
        return Amounts.plain(
                yields.stream().map(StageYield::left).reduce(BigDecimal.ONE, BigDecimal::multiply));
    }

    /** What one lot gives, in the made ingredient's base unit, exact. */
    public BigDecimal out() {
        return statedOut.orElseGet(() -> Amounts.plain(inputs.get(0).amount().multiply(left())));
    }

    /** The step with this id, if the recipe has it. */
    public Optional<PrepStep> step(String id) {
        return steps.stream().filter(step -> step.id().equals(id)).findFirst();
    }
}
