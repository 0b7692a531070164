package sopwell.prep.past;

import java.util.Optional;
import sopwell.Limits;
import sopwell.orders.Decision;
import sopwell.orders.Orders;
import sopwell.prep.past.PlanEvent.PlanKept;

/** Which plan is kept: the first one of a day that is open. Stateless and pure. */
public final class PlanRules {
    private PlanRules() {}

    /**
     * The event that a plan comes to; none when the day is not open or its plan is kept already.
     *
     * @param kept the newest plan that is kept
     */
    public static Decision decide(Orders orders, Optional<PlanKept> kept, KeepPlan keep) {
        boolean isOpen =
                orders.isDayOpen() && orders.date().filter(keep.date()::equals).isPresent();
        boolean isKept = kept.map(PlanKept::date).filter(keep.date()::equals).isPresent();
        int tasks = Math.min(keep.tasks().size(), Limits.PLAN_TASKS_KEPT_MAX);
        return isOpen && !isKept
                ? Decision.accepted(new PlanKept(keep.date(), keep.tasks().subList(0, tasks)))
                : Decision.accepted();
    }
}
