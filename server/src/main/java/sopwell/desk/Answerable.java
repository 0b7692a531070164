package sopwell.desk;

import java.util.ArrayList;
import java.util.List;
import sopwell.audit.AuditEvent;
import sopwell.audit.Who;
import sopwell.log.Event;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.orders.Decision;
import sopwell.orders.OrderEvent;
import sopwell.prep.calendar.CalendarEvent.CalendarSet;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;
import sopwell.till.TillEvent;

/**
 * What somebody must answer for: money that leaves, orders that go, days that end or go on, and
 * what the stand is run by. Stateless and pure.
 */
public final class Answerable {
    private Answerable() {}

    /** The decision, and after its events who it was, if one of them must be answered for. */
    static Decision noted(Decision decision, Who who) {
        if (decision.events().stream().noneMatch(Answerable::is)) {
            return decision;
        }
        List<Event> events = new ArrayList<>(decision.events());
        events.add(new AuditEvent.DoneBy(who));
        return new Decision(events, decision.refusal());
    }

    /** Whether somebody must answer for what happened. */
    public static boolean is(Event event) {
        return event instanceof OrderEvent.OrderVoided
                || event instanceof OrderEvent.OrderDiscounted
                || event instanceof OrderEvent.DayClosed
                || event instanceof OrderEvent.DayReopened
                || event instanceof TillEvent.OrderRefunded
                || event instanceof TillEvent.PaidOut
                || event instanceof MenuAdopted
                || event instanceof RecipesAdopted
                || event instanceof CalendarSet
                || event instanceof AuditEvent.AccessChanged
                || event instanceof AuditEvent.NamesErased;
    }
}
