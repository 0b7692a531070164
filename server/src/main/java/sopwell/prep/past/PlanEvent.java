package sopwell.prep.past;

import java.time.LocalDate;
import java.util.List;
import sopwell.log.Event;

/** What happens to plans of prep. */
public sealed interface PlanEvent extends Event {
    /**
     * The plan for a day as it stood when the day was opened: what was to be started on it.
     *
     * @param tasks in the order of their start; none when nothing had to be started
     */
    record PlanKept(LocalDate date, List<KeptTask> tasks) implements PlanEvent {
        public PlanKept {
            tasks = List.copyOf(tasks);
        }
    }
}
