package sopwell.prep.past;

import java.time.LocalDate;
import java.util.List;

/** A day's plan is to be kept, so that it can be held against what became of it. */
public record KeepPlan(LocalDate date, List<KeptTask> tasks) {
    public KeepPlan {
        tasks = List.copyOf(tasks);
    }
}
