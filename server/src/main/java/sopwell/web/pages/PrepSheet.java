package sopwell.web.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import sopwell.menu.Caution;
import sopwell.prep.plan.PrepPlan.StepTime;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.PrepStep;
import sopwell.stock.recipes.Recipe;
import sopwell.stock.recipes.Watch;
import sopwell.web.T;

/**
 * A day's tasks on paper, in one language or two side by side. Immutable.
 *
 * @param views the plan in each language that is printed
 * @param date what is started on it is printed
 */
public record PrepSheet(List<PrepView> views, LocalDate date) {
    public PrepSheet {
        views = List.copyOf(views);
    }

    /** The first language's texts, for what stands outside of the tasks. */
    public T t() {
        return views.get(0).t();
    }

    /** What stands before a line to write on, in every language that is printed. */
    public String label(String key) {
        return views.stream()
                .map(view -> view.t().get(key))
                .distinct()
                .collect(Collectors.joining(" / "));
    }

    /** What is started on the date, in the order of time. */
    public List<Task> tasks() {
        return views.get(0).starts().getOrDefault(date, List.of());
    }

    /** The steps of a task that begin on the date or later, all of them. */
    public List<StepTime> steps(Task task) {
        return task.steps();
    }

    /** A step with its times, in one language. */
    public String step(PrepView view, Task task, StepTime step) {
        return view.steps(task).get(task.steps().indexOf(step));
    }

    /** Whether a temperature is written down at a step. */
    public boolean isMeasured(Task task, StepTime step) {
        return watch(task, step) != Watch.NONE;
    }

    private Watch watch(Task task, StepTime step) {
        return recipe(task).step(step.step()).map(PrepStep::watch).orElse(Watch.NONE);
    }

    private Recipe recipe(Task task) {
        return views.get(0).plan().book().recipe(task.makes()).orElseThrow();
    }

    /** What can hurt in a task, and the limits of its steps with their sources; a line each. */
    public List<String> cautions(PrepView view, Task task) {
        List<String> said = new ArrayList<>();
        Set<Watch> watched = EnumSet.noneOf(Watch.class);
        for (PrepStep step : recipe(task).steps()) {
            watched.add(step.watch());
        }
        watched.remove(Watch.NONE);
        for (Watch watch : watched) {
            said.add(LimitWords.of(watch, view.words()));
        }
        boolean isHot = watched.contains(Watch.COOK_ROAST) || watched.contains(Watch.COOL);
        if (isHot) {
            said.add(view.t().get("prep-sheet.burns"));
        }
        Set<Caution> cautions =
                new LinkedHashSet<>(view.plan().book().ingredient(task.makes()).cautions());
        CautionView words = new CautionView(view.t(), view.words().safety(), List.copyOf(cautions));
        for (Caution caution : words.cautions()) {
            said.add(words.line(caution) + " " + words.more(caution));
        }
        if (cautions.contains(Caution.SLICER)) {
            said.add(view.t().get("prep-sheet.cuts"));
        }
        said.add(allergens(view, task));
        return said;
    }

    /** The allergens of what goes in, through recipes. */
    private String allergens(PrepView view, Task task) {
        Set<String> ids = new TreeSet<>();
        gather(view, task.makes(), ids);
        List<String> names = ids.stream().map(id -> view.t().under("allergen", id)).toList();
        return names.isEmpty()
                ? view.t().get("prep-sheet.allergens.none")
                : view.t().of("prep-sheet.allergens", view.t().list(names));
    }

    /** Recipes never go in a circle. */
    private static void gather(PrepView view, String ingredient, Set<String> ids) {
        ids.addAll(view.plan().book().ingredient(ingredient).allergens());
        view.plan()
                .book()
                .recipe(ingredient)
                .ifPresent(
                        recipe ->
                                recipe.inputs()
                                        .forEach(one -> gather(view, one.ingredient(), ids)));
    }
}
