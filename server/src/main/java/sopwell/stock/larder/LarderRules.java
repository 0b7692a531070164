package sopwell.stock.larder;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.OrderRules;
import sopwell.orders.Orders;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;
import sopwell.stock.recipes.RecipeBook;

/** What may be said about what is kept. Stateless and pure: looks, never changes. */
public final class LarderRules {
    private LarderRules() {}

    /**
     * The events that a command comes to now, or why it is refused. Opens the day if none is open:
     * shelves are counted before the first guest.
     *
     * @param book the recipes in force
     */
    public static Decision decide(
            Larder larder, Orders orders, RecipeBook book, LarderCommand command, Deciding with) {
        Decision decision =
                switch (command.kind()) {
                    case COUNT -> count(book, (LarderCommand.Count) command);
                    case WASTE -> waste(book, (LarderCommand.Waste) command);
                    case DELIVER -> deliver(book, (LarderCommand.Deliver) command);
                    case CLEAN_SLICER -> Decision.accepted(new LarderEvent.SlicerCleaned());
                    case CLOCK -> ClockRules.decide(larder, (LarderCommand.ForClock) command);
                    case START, MOVE, MEASURE, YIELD, DISCARD, USE_UP ->
                            BatchRules.decide(larder, book, command, with);
                };
        return decision.isRefused()
                ? decision
                : decision.after(OrderRules.beforeToday(orders, with));
    }

    /**
     * Why a book can't follow on another while things are kept: a batch that is on or kept would be
     * of nothing, or what was counted in grams would be read as pieces.
     */
    public static Optional<Refusal> lost(Larder larder, RecipeBook inForce, RecipeBook book) {
        Set<String> made = new LinkedHashSet<>();
        larder.batches().forEach(batch -> made.add(batch.makes()));
        larder.labels().forEach(label -> made.add(label.makes()));
        Set<String> kept = new LinkedHashSet<>(made);
        larder.carried().held().forEach(held -> kept.add(held.ingredient()));
        return kept.stream()
                .filter(inForce::hasIngredient)
                .filter(
                        id ->
                                book.hasIngredient(id)
                                        ? book.ingredient(id).base()
                                                != inForce.ingredient(id).base()
                                        : made.contains(id))
                .findFirst()
                .map(id -> Refusal.of(Reason.INGREDIENT_KEPT, id));
    }

    private static Decision count(RecipeBook book, LarderCommand.Count count) {
        return Measures.wrong(book, count.asked())
                .map(LarderRules::refused)
                .orElseGet(
                        () ->
                                Decision.accepted(
                                        new LarderEvent.IngredientCounted(
                                                Measures.of(book, count.asked()))));
    }

    private static Decision waste(RecipeBook book, LarderCommand.Waste waste) {
        Optional<Refusal> wrong = Measures.wrongOrNothing(book, waste.asked());
        if (wrong.isEmpty() && waste.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        return wrong.or(() -> Texts.reason(waste.reason()))
                .map(LarderRules::refused)
                .orElseGet(
                        () ->
                                Decision.accepted(
                                        new LarderEvent.IngredientWasted(
                                                Measures.of(book, waste.asked()),
                                                waste.reason().strip())));
    }

    private static Decision deliver(RecipeBook book, LarderCommand.Deliver deliver) {
        return Measures.wrongOrNothing(book, deliver.asked())
                .or(() -> Texts.note(deliver.note()))
                .map(LarderRules::refused)
                .orElseGet(
                        () ->
                                Decision.accepted(
                                        new LarderEvent.IngredientDelivered(
                                                Measures.of(book, deliver.asked()),
                                                deliver.note().strip())));
    }

    static Decision refused(Refusal refusal) {
        return new Decision(List.of(), Optional.of(refusal));
    }
}
