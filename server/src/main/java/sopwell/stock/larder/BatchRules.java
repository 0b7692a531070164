package sopwell.stock.larder;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.menu.Caution;
import sopwell.orders.Deciding;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.orders.Texts;
import sopwell.stock.recipes.Explosion;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.RecipeBook;
import sopwell.stock.safety.Temperature;
import sopwell.stock.safety.UseBy;

/** What may be done with batches. Stateless and pure: looks, never changes. */
final class BatchRules {

    private BatchRules() {}

    static Decision decide(Larder larder, RecipeBook book, LarderCommand command, Deciding with) {
        return switch (command.kind()) {
            case START -> start(larder, book, (LarderCommand.StartBatch) command);
            case MOVE -> move(larder, book, (LarderCommand.MoveBatch) command, with);
            case MEASURE -> measure(larder, (LarderCommand.TakeTemperature) command);
            case YIELD -> gave(larder, book, (LarderCommand.YieldBatch) command, with);
            case DISCARD -> discard(larder, book, (LarderCommand.DiscardBatch) command);
            case USE_UP -> useUp(larder, (LarderCommand.UseUpBatch) command);
            case COUNT, WASTE, DELIVER, CLEAN_SLICER, CLOCK -> Decision.accepted();
        };
    }

    private static Decision start(Larder larder, RecipeBook book, LarderCommand.StartBatch start) {
        Optional<Recipe> recipe = book.recipe(start.makes());
        if (recipe.isEmpty()) {
            Reason reason =
                    book.hasIngredient(start.makes())
                            ? Reason.NO_RECIPE
                            : Reason.UNKNOWN_INGREDIENT;
            return Decision.refused(reason, start.makes());
        }
        if (start.lots() < 1 || start.lots() > Limits.BATCH_LOTS_MAX) {
            return Decision.refused(Reason.LOTS_RANGE, start.lots(), Limits.BATCH_LOTS_MAX);
        }
        if (larder.batches().size() >= Limits.BATCHES_MAX) {
            return Decision.refused(Reason.TOO_MANY_BATCHES, Limits.BATCHES_MAX);
        }
        Optional<Refusal> wrong = Texts.note(start.note());
        if (wrong.isPresent()) {
            return LarderRules.refused(wrong.get());
        }
        BigDecimal amount = recipe.get().out().multiply(BigDecimal.valueOf(start.lots()));
        List<BatchEvent.Taken> takes = new ArrayList<>();
        for (Map.Entry<String, BigDecimal> input :
                Explosion.inputs(recipe.get(), amount).entrySet()) {
            takes.add(new BatchEvent.Taken(input.getKey(), Measures.thousandths(input.getValue())));
        }
        String first = recipe.get().steps().stream().findFirst().map(PrepStep::id).orElse("");
        return Decision.accepted(
                new BatchEvent.BatchStarted(
                        newId(larder),
                        start.makes(),
                        start.lots(),
                        Measures.thousandths(amount),
                        start.note().strip(),
                        first,
                        takes));
    }

    /** Batches are numbered for ever, so a number that was written on a lid stays the same. */
    private static String newId(Larder larder) {
        return "b" + (larder.started() + 1);
    }

    private static Decision move(
            Larder larder, RecipeBook book, LarderCommand.MoveBatch move, Deciding with) {
        Optional<Batch> batch = larder.batch(move.batch());
        if (batch.isEmpty()) {
            return notOn(larder, move.batch());
        }
        String next = BatchWatch.next(batch.get(), book).map(PrepStep::id).orElse("");
        if (next.isEmpty() || !next.equals(move.step())) {
            return Decision.refused(Reason.WRONG_STEP, move.step(), next);
        }
        return Decision.accepted(
                new BatchEvent.BatchMoved(
                        move.batch(),
                        next,
                        BatchWatch.isMet(batch.get(), book, with.settings().safety(), with.nowMs()),
                        isDated(batch.get(), book) ? today(with).toString() : ""));
    }

    private static Decision measure(Larder larder, LarderCommand.TakeTemperature take) {
        Optional<Batch> batch = larder.batch(take.batch());
        if (batch.isEmpty()) {
            return notOn(larder, take.batch());
        }
        Optional<Temperature> temperature = Degrees.read(take.degrees(), take.celsius());
        if (temperature.isEmpty()) {
            return LarderRules.refused(Degrees.refusal(take.degrees(), take.celsius()));
        }
        if (batch.get().readings().size() >= Limits.BATCH_READINGS_MAX) {
            return Decision.refused(Reason.TOO_MANY_READINGS, Limits.BATCH_READINGS_MAX);
        }
        return Texts.by(take.by())
                .map(LarderRules::refused)
                .orElseGet(
                        () ->
                                Decision.accepted(
                                        new BatchEvent.TemperatureTaken(
                                                take.batch(),
                                                temperature.get(),
                                                take.celsius(),
                                                take.by().strip())));
    }

    private static Decision gave(
            Larder larder, RecipeBook book, LarderCommand.YieldBatch gave, Deciding with) {
        Optional<Batch> batch = larder.batch(gave.batch());
        if (batch.isEmpty()) {
            return notOn(larder, gave.batch());
        }
        TypedAmount asked = new TypedAmount(batch.get().makes(), gave.amount(), gave.unit());
        Optional<Refusal> wrong = Measures.wrongOrNothing(book, asked);
        if (wrong.isPresent()) {
            return LarderRules.refused(wrong.get());
        }
        boolean dated = !batch.get().preparedOn().isEmpty();
        LocalDate prepared = dated ? LocalDate.parse(batch.get().preparedOn()) : today(with);
        return Decision.accepted(
                new BatchEvent.BatchYielded(
                        gave.batch(),
                        Measures.of(book, asked),
                        BatchWatch.isMet(batch.get(), book, with.settings().safety(), with.nowMs()),
                        prepared,
                        useBy(larder, book, batch.get(), prepared, with)));
    }

    private static Decision discard(
            Larder larder, RecipeBook book, LarderCommand.DiscardBatch discard) {
        if (discard.reason().isBlank()) {
            return Decision.refused(Reason.REASON_MISSING);
        }
        Optional<Refusal> wrong = Texts.reason(discard.reason());
        Optional<Label> label = larder.label(discard.batch());
        long thousandths = label.map(Label::thousandths).orElse(0L);
        if (larder.batch(discard.batch()).isEmpty() && label.isEmpty()) {
            return Decision.refused(Reason.UNKNOWN_BATCH, discard.batch());
        }
        if (label.isPresent() && !discard.amount().isEmpty()) {
            TypedAmount asked =
                    new TypedAmount(label.get().makes(), discard.amount(), discard.unit());
            wrong = wrong.or(() -> Measures.wrong(book, asked));
            thousandths = wrong.isEmpty() ? Measures.of(book, asked).thousandths() : 0;
        }
        return wrong.isPresent()
                ? LarderRules.refused(wrong.get())
                : Decision.accepted(
                        new BatchEvent.BatchDiscarded(
                                discard.batch(), thousandths, discard.reason().strip()));
    }

    private static Decision useUp(Larder larder, LarderCommand.UseUpBatch useUp) {
        if (larder.batch(useUp.batch()).isPresent()) {
            return Decision.refused(Reason.BATCH_NOT_MADE, useUp.batch());
        }
        return larder.label(useUp.batch()).isPresent()
                ? Decision.accepted(new BatchEvent.BatchUsedUp(useUp.batch()))
                : Decision.refused(Reason.UNKNOWN_BATCH, useUp.batch());
    }

    private static Decision notOn(Larder larder, String batch) {
        Reason reason = larder.label(batch).isPresent() ? Reason.BATCH_MADE : Reason.UNKNOWN_BATCH;
        return Decision.refused(reason, batch);
    }

    /** Whether the end of the present step is what the life of a batch counts from. */
    private static boolean isDated(Batch batch, RecipeBook book) {
        return book.recipe(batch.makes())
                .filter(recipe -> recipe.datedFrom().equals(batch.step()))
                .isPresent();
    }

    /** Never later than what it is made of, of which the oldest that is there was taken. */
    private static LocalDate useBy(
            Larder larder, RecipeBook book, Batch batch, LocalDate prepared, Deciding with) {
        Ingredient made = book.ingredient(batch.makes());
        LocalDate own =
                UseBy.of(
                        prepared,
                        made.shelfLifeDays(),
                        made.cautions().contains(Caution.UNDER_OIL),
                        with.settings().safety().food().dating());
        List<String> inputs =
                book.recipe(batch.makes()).stream()
                        .flatMap(recipe -> recipe.inputs().stream())
                        .map(Recipe.Input::ingredient)
                        .toList();
        List<LocalDate> dates =
                larder.labels().stream()
                        .filter(label -> inputs.contains(label.makes()))
                        .map(Label::useBy)
                        .filter(date -> !date.isBefore(today(with)))
                        .toList();
        return UseBy.combined(own, dates);
    }

    private static LocalDate today(Deciding with) {
        return Instant.ofEpochMilli(with.nowMs()).atZone(with.settings().zone()).toLocalDate();
    }
}
