package sopwell.sim;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent;
import sopwell.prep.past.PlanEvent.PlanKept;

/** The plans that were kept: one of a day at most, and only while it is open. For one thread. */
final class PlanBook {
    private final Complaints complaints;
    private final Map<LocalDate, PlanKept> kept = new HashMap<>();
    private Optional<LocalDate> day = Optional.empty();
    private boolean open;

    PlanBook(Complaints complaints) {
        this.complaints = complaints;
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof OrderEvent.DayOpened opened) {
            day = Optional.of(opened.date());
            open = true;
        } else if (recorded.event() instanceof OrderEvent.DayReopened) {
            open = true;
        } else if (recorded.event() instanceof OrderEvent.DayClosed) {
            open = false;
        } else if (recorded.event() instanceof PlanKept plan) {
            complaints.that(open, Invariant.PLANS, "kept of no open day:", plan);
            complaints.same(day, Optional.of(plan.date()), Invariant.PLANS, "the plan's day", "");
            complaints.that(
                    kept.put(plan.date(), plan) == null, Invariant.PLANS, "kept twice:", plan);
        }
    }

    void check(Stand stand) {
        complaints.same(
                day.map(kept::get), stand.keptPlan(), Invariant.PLANS, "the open day's plan", day);
    }
}
