package sopwell.web.pages;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.prep.plan.Bound;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.recipes.Recipe;

/** Why a task starts when it does, in sentences. Stateless. */
record PrepBounds(PrepView view) {
    /** From when it must be ready back to its start. */
    List<String> of(Task task) {
        List<String> said = new ArrayList<>();
        said.add(ready(task));
        for (Bound bound : task.bounds()) {
            said.add(bound(task, bound));
        }
        said.add(view.t().of("prep.why.latest", view.when(task.start())));
        return said;
    }

    /** For another task that takes it, or for the stand's opening. */
    private String ready(Task task) {
        Instant by = task.why().by();
        Optional<Task> parent =
                view.plan().plan().tasks().stream()
                        .filter(one -> one.start().equals(by))
                        .filter(one -> one.takes().containsKey(task.makes()))
                        .findFirst();
        return parent.isPresent()
                ? view.t()
                        .of(
                                "prep.why.parent",
                                view.when(by),
                                view.name(parent.get().makes()),
                                view.name(task.makes()))
                : view.t().of("prep.why.opening", view.when(by));
    }

    private String bound(Task task, Bound bound) {
        return view.t()
                .under(
                        "prep.bound",
                        bound.kind().name(),
                        step(task, bound),
                        view.when(bound.from()),
                        view.when(bound.until()),
                        bound.resource().isEmpty() ? "" : view.resource(bound.resource()),
                        view.when(bound.otherwise()),
                        view.words()
                                .lasting(
                                        bound.until().toEpochMilli()
                                                - bound.from().toEpochMilli()));
    }

    private String step(Task task, Bound bound) {
        Recipe recipe = view.plan().book().recipe(task.makes()).orElseThrow();
        return recipe.step(bound.step())
                .map(step -> view.t().local(step.name()))
                .orElse(bound.step());
    }
}
