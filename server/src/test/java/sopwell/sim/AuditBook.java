package sopwell.sim;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.audit.AuditEvent;
import sopwell.audit.AuditEvent.DoneBy;
import sopwell.audit.Who;
import sopwell.log.Event;
import sopwell.log.Recorded;
import sopwell.menu.MenuEvent;
import sopwell.orders.OrderEvent;
import sopwell.prep.calendar.CalendarEvent;
import sopwell.stock.recipes.RecipeEvent;
import sopwell.till.TillEvent;

/** Who did what must be answered for. Belongs to one thread. */
final class AuditBook {
    private final Complaints complaints;
    private final Map<String, Who> noted = new HashMap<>();
    private final Map<String, Event> answerable = new HashMap<>();

    AuditBook(Complaints complaints) {
        this.complaints = complaints;
    }

    void take(Recorded recorded) {
        complaints.that(
                !noted.containsKey(recorded.key()),
                Invariant.AUDIT,
                "more was done after it was said by whom:",
                recorded);
        if (recorded.event() instanceof DoneBy done) {
            noted.put(recorded.key(), done.who());
            complaints.that(
                    answerable.containsKey(recorded.key()),
                    Invariant.AUDIT,
                    "nobody must answer for",
                    recorded);
        } else if (mustBeAnsweredFor(recorded.event())) {
            answerable.put(recorded.key(), recorded.event());
        }
    }

    /** Compares with who asked for it. */
    void answered(String key, Optional<Who> asked) {
        if (answerable.containsKey(key)) {
            complaints.same(
                    asked,
                    Optional.ofNullable(noted.get(key)),
                    Invariant.AUDIT,
                    "who did",
                    answerable.get(key));
        }
    }

    private static boolean mustBeAnsweredFor(Event event) {
        if (event instanceof OrderEvent order) {
            return switch (order.kind()) {
                case DAY_CLOSED, DAY_REOPENED, DISCOUNTED, VOIDED -> true;
                case DAY_OPENED, PLACED, TOLD, CHANGED, HANDED, BROUGHT_BACK -> false;
            };
        }
        if (event instanceof TillEvent till) {
            return switch (till.kind()) {
                case REFUNDED, PAID_OUT -> true;
                case PAID, OPENED, PAID_IN, CLOSED -> false;
            };
        }
        return event instanceof MenuEvent
                || event instanceof RecipeEvent
                || event instanceof CalendarEvent
                || event instanceof AuditEvent;
    }
}
