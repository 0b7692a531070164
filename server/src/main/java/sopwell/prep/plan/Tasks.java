package sopwell.prep.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.prep.plan.PrepPlan.Why;
import sopwell.prep.plan.Scheduler.Placed;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;

/** Tasks from placed loads. Stateless. */
final class Tasks {
    private Tasks() {}

    static Task of(Placed placed, Why why, Optional<LocalDate> lastDay, List<Bound> bounds) {
        Recipe recipe = placed.load().recipe();
        BigDecimal lots = BigDecimal.valueOf(placed.load().lots());
        Map<String, BigDecimal> takes = new LinkedHashMap<>();
        for (Recipe.Input input : recipe.inputs()) {
            takes.merge(input.ingredient(), input.amount().multiply(lots), BigDecimal::add);
        }
        List<StepTime> times = new ArrayList<>();
        for (int k = 0; k < recipe.steps().size(); k++) {
            PrepStep step = recipe.steps().get(k);
            long from = placed.starts().get(k);
            times.add(
                    new StepTime(
                            step.id(),
                            step.resource(),
                            Calendar.instant(from),
                            Calendar.instant(from + step.minutes())));
        }
        return new Task(
                recipe.makes(),
                placed.load().lots(),
                takes,
                recipe.out().multiply(lots),
                times,
                lastDay,
                why,
                bounds);
    }
}
