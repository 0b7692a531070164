package sopwell.prep;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import sopwell.prep.PrepAsk.When;
import sopwell.prep.plan.PlanAsk.Busy;
import sopwell.prep.plan.PlanAsk.StockLot;
import sopwell.stock.larder.Batch;
import sopwell.stock.larder.BatchRow;
import sopwell.stock.larder.Held;
import sopwell.stock.larder.Label;
import sopwell.stock.larder.LarderLeft;
import sopwell.stock.larder.StockNow;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;

/**
 * What is there and in process, as the planner wants it. What the books have is laid on the labels
 * of what was made, the newest first, since the oldest is used first; the rest counts as from the
 * day on which it was counted, or from today when something came in since. Immutable.
 */
final class OnHand {
    private static final int DIGITS = 3;
    private static final int FAR_DAYS = 3_650;

    private final StockNow stock;
    private final When when;
    private final List<StockLot> lots = new ArrayList<>();
    private final List<Busy> busy = new ArrayList<>();
    private final Set<String> uncounted = new TreeSet<>();

    OnHand(StockNow stock, When when) {
        this.stock = stock;
        this.when = when;
        for (LarderLeft left : stock.left()) {
            Ingredient one = left.ingredient();
            boolean kept = one.supply().isPresent() || stock.book().recipe(one.id()).isPresent();
            if (left.held().isPresent()) {
                held(one, left.held().get());
            } else if (kept) {
                uncounted.add(one.id());
            }
        }
        stock.batches().forEach(this::batch);
    }

    List<StockLot> lots() {
        return lots;
    }

    List<Busy> busy() {
        return busy;
    }

    /** What nobody ever counted. */
    Set<String> uncounted() {
        return uncounted;
    }

    private void held(Ingredient one, Held held) {
        long left = Math.max(0, held.expected());
        List<Label> labels =
                stock.labels().stream()
                        .filter(label -> label.makes().equals(one.id()))
                        .sorted(Comparator.comparing(Label::useBy).reversed())
                        .toList();
        for (Label label : labels) {
            long of = Math.min(left, label.thousandths());
            add(one, of, when.now(), label.useBy());
            left -= of;
        }
        LocalDate fresh =
                held.in() > 0 && labels.isEmpty()
                        ? when.today()
                        : LocalDate.ofInstant(
                                Instant.ofEpochMilli(held.countedAtMs()), when.zone());
        add(one, left, when.now(), last(one, fresh));
    }

    private static LocalDate last(Ingredient one, LocalDate fresh) {
        int days = one.shelfLifeDays();
        return days == 0 ? fresh.plusDays(FAR_DAYS) : fresh.plusDays(days - 1L);
    }

    private void add(Ingredient one, long thousandths, Instant from, LocalDate lastDay) {
        if (thousandths > 0) {
            BigDecimal amount = BigDecimal.valueOf(thousandths, DIGITS);
            lots.add(new StockLot(one.id(), amount, from, lastDay));
        }
    }

    /** A batch goes on as its recipe says, from where it is. */
    private void batch(BatchRow row) {
        Batch batch = row.batch();
        Optional<Recipe> recipe = stock.book().recipe(batch.makes());
        if (recipe.isEmpty()) {
            return;
        }
        List<PrepStep> steps = recipe.get().steps();
        int at = row.step().map(steps::indexOf).orElse(steps.size());
        Instant time = Instant.ofEpochMilli(batch.stepAtMs());
        LocalDate dated =
                batch.preparedOn().isEmpty() ? when.today() : LocalDate.parse(batch.preparedOn());
        for (PrepStep step : steps.subList(Math.min(at, steps.size()), steps.size())) {
            Instant end = time.plusSeconds(60L * step.minutes());
            Instant until = end.isBefore(when.now()) ? when.now() : end;
            if (step.resource().isPresent() && until.isAfter(when.now())) {
                int slots = step.slotsPerLot() * batch.lots();
                busy.add(new Busy(step.resource().get(), slots, time, until));
            }
            if (batch.preparedOn().isEmpty() && step.id().equals(recipe.get().datedFrom())) {
                dated = LocalDate.ofInstant(until, when.zone());
            }
            time = until.plusSeconds(60L * step.minWaitMinutes());
        }
        Ingredient made = stock.book().ingredient(batch.makes());
        add(made, batch.planned(), time, last(made, dated));
    }
}
