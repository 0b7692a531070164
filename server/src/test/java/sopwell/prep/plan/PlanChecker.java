package sopwell.prep.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.Ingredient;
import sopwell.stock.recipes.KitchenHours;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.Resource;

/** Looks at a finished plan with its own eyes: hours, slots, hands, waits, times, shelf life. */
final class PlanChecker {
    private final PlanAsk ask;
    private final List<String> faults = new ArrayList<>();

    private PlanChecker(PlanAsk ask) {
        this.ask = ask;
    }

    static List<String> faults(PlanAsk ask, PrepPlan plan) {
        PlanChecker checker = new PlanChecker(ask);
        plan.tasks().forEach(checker::task);
        ask.book().resources().forEach(one -> checker.resource(plan, one));
        checker.hands(plan);
        return checker.faults;
    }

    private void task(Task task) {
        Recipe recipe = ask.book().recipe(task.makes()).orElseThrow();
        check(!task.start().isBefore(ask.now()), task, "starts in the past");
        check(!task.ready().isAfter(task.why().by()), task, "is late");
        check(task.lots() <= recipe.lot().perRunMax(), task, "has too many lots");
        for (int k = 0; k < recipe.steps().size(); k++) {
            PrepStep step = recipe.steps().get(k);
            StepTime time = task.steps().get(k);
            check(minutes(time.from(), time.until()) == step.minutes(), task, "is cut short");
            check(!step.startAttended() || attended(time.from(), 0), task, "starts alone");
            check(!step.endAttended() || attended(time.until(), 0), task, "ends alone");
            int busy = Math.min(step.minutes(), step.handsMinutes() * task.lots());
            check(busy == 0 || attended(time.from(), busy), task, "has no hands");
            if (k > 0) {
                PrepStep before = recipe.steps().get(k - 1);
                long wait = minutes(task.steps().get(k - 1).until(), time.from());
                check(wait >= before.minWaitMinutes(), task, "does not wait long enough");
                int most = before.maxWaitMinutes();
                check(most == 0 || wait <= most, task, "waits too long");
            }
            if (step.id().equals(recipe.datedFrom())) {
                dated(task, time);
            }
        }
    }

    private void dated(Task task, StepTime time) {
        Ingredient made = ask.book().ingredient(task.makes());
        LocalDate made1 = LocalDate.ofInstant(time.until(), ask.zone());
        Optional<LocalDate> last =
                made.shelfLifeDays() == 0
                        ? Optional.empty()
                        : Optional.of(made1.plusDays(made.shelfLifeDays() - 1L));
        check(task.lastDay().equals(last), task, "has a wrong date");
        LocalDate need = LocalDate.ofInstant(task.why().by(), ask.zone());
        check(last.isEmpty() || !last.get().isBefore(need), task, "is too old when needed");
    }

    private boolean attended(Instant from, int minutes) {
        ZonedDateTime start = from.atZone(ask.zone());
        Optional<KitchenHours.Span> span = ask.book().hours().on(start.getDayOfWeek());
        if (span.isEmpty()) {
            return false;
        }
        LocalDate date = start.toLocalDate();
        Instant open = date.atTime(span.get().from()).atZone(ask.zone()).toInstant();
        Instant shut = date.atTime(span.get().to()).atZone(ask.zone()).toInstant();
        Instant end = from.plus(Duration.ofMinutes(minutes));
        return !from.isBefore(open) && !end.isAfter(shut);
    }

    private record Taken(Instant from, Instant until, int slots) {}

    private void resource(PrepPlan plan, Resource resource) {
        List<Taken> taken = new ArrayList<>();
        for (PlanAsk.Busy busy : ask.busy()) {
            if (busy.resource().equals(resource.id())) {
                taken.add(new Taken(busy.from(), busy.until(), busy.slots()));
            }
        }
        List<Taken> busy = List.copyOf(taken);
        Duration between = Duration.ofMinutes(resource.turnaroundMinutes());
        for (Task task : plan.tasks()) {
            Recipe recipe = ask.book().recipe(task.makes()).orElseThrow();
            for (int k = 0; k < task.steps().size(); k++) {
                StepTime time = task.steps().get(k);
                if (time.resource().equals(Optional.of(resource.id()))) {
                    int slots = recipe.steps().get(k).slotsPerLot() * task.lots();
                    taken.add(new Taken(time.from(), time.until().plus(between), slots));
                }
            }
        }
        for (Taken one : taken) {
            int used = used(taken, one.from());
            boolean own = busy.size() < taken.size() && used(busy, one.from()) < used;
            if (own && used > resource.slots()) {
                faults.add(resource.id() + " is too full at " + one.from());
            }
        }
    }

    private void hands(PrepPlan plan) {
        List<Taken> taken = new ArrayList<>();
        for (Task task : plan.tasks()) {
            Recipe recipe = ask.book().recipe(task.makes()).orElseThrow();
            for (int k = 0; k < task.steps().size(); k++) {
                PrepStep step = recipe.steps().get(k);
                int work = step.handsMinutes() * task.lots();
                if (work > 0) {
                    int busy = Math.min(work, step.minutes());
                    Instant from = task.steps().get(k).from();
                    int pairs = (int) Math.ceil((double) work / step.minutes());
                    taken.add(new Taken(from, from.plus(Duration.ofMinutes(busy)), pairs));
                }
            }
        }
        taken.stream()
                .filter(one -> used(taken, one.from()) > ask.terms().hands())
                .forEach(one -> faults.add("too few hands at " + one.from()));
    }

    private static int used(List<Taken> taken, Instant at) {
        return taken.stream()
                .filter(t -> !t.from().isAfter(at) && t.until().isAfter(at))
                .mapToInt(Taken::slots)
                .sum();
    }

    private static long minutes(Instant from, Instant until) {
        return Duration.between(from, until).toMinutes();
    }

    private void check(boolean holds, Task task, String fault) {
        if (!holds) {
            faults.add(task.makes() + " at " + task.start() + " " + fault);
        }
    }
}
