package sopwell.sim;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;
import sopwell.kitchen.Query;
import sopwell.kitchen.QueryEvent;
import sopwell.kitchen.QueryId;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent;

/** Queries as the raw events tell them. Belongs to one thread; fed after the other books. */
final class QueryBook {
    private final Complaints complaints;
    private final Map<QueryId, Query.State> all = new LinkedHashMap<>();
    private final Map<PartId, QueryId> open = new HashMap<>();
    private LocalDate date;

    QueryBook(Complaints complaints) {
        this.complaints = complaints;
    }

    void take(Recorded recorded, PartBook parts) {
        if (recorded.event() instanceof QueryEvent.QueryAsked asked) {
            PartId part = asked.query().part();
            complaints.that(parts.has(part), Invariant.QUERIES, "about no part:", asked);
            complaints.that(
                    open.put(part, asked.query()) == null && !all.containsKey(asked.query()),
                    Invariant.QUERIES,
                    "a second one is open:",
                    asked);
            all.put(asked.query(), Query.State.OPEN);
        } else if (recorded.event() instanceof QueryEvent.QueryAnswered answered) {
            complaints.that(
                    open.remove(answered.query().part(), answered.query()),
                    Invariant.QUERIES,
                    "an answer to no open query:",
                    answered);
            all.put(answered.query(), Query.State.ANSWERED);
        } else if (recorded.event() instanceof KitchenEvent.PartUp up) {
            lapse(up.part());
        } else if (recorded.event() instanceof OrderEvent.DayClosed) {
            Map.copyOf(open).keySet().forEach(this::lapse);
        } else if (recorded.event() instanceof OrderEvent.DayOpened opened) {
            if (!opened.date().equals(date)) {
                all.clear();
                open.clear();
            }
            date = opened.date();
        } else if (recorded.event() instanceof OrderEvent) {
            for (PartId part : Map.copyOf(open).keySet()) {
                if (!parts.has(part) || parts.isCancelled(part)) {
                    lapse(part);
                }
            }
        }
    }

    private void lapse(PartId part) {
        QueryId query = open.remove(part);
        if (query != null) {
            all.put(query, Query.State.LAPSED);
        }
    }

    void check(Stand stand) {
        Map<QueryId, Query.State> found = new LinkedHashMap<>();
        stand.kitchen().queries().all().forEach(query -> found.put(query.id(), query.state()));
        complaints.same(all, found, Invariant.QUERIES, "the list", "");
        long waiting = all.values().stream().filter(s -> s == Query.State.OPEN).count();
        complaints.same(
                waiting,
                (long) stand.kitchen().queries().open().size(),
                Invariant.QUERIES,
                "how many wait",
                "");
    }
}
