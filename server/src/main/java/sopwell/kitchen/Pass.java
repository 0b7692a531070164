package sopwell.kitchen;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import sopwell.orders.OrderEvent;

/**
 * What was done at the pass with the orders of the newest day. Not thread-safe: its owner is one
 * thread.
 */
public final class Pass {
    private static final Standing NOTHING = new Standing(0, 0, 0);

    private final Map<String, Standing> standings = new HashMap<>();
    private LocalDate date;

    /**
     * What was done with one order. Immutable.
     *
     * @param calls how often its number was called at the last count, or 0
     * @param calledAtMs when it was called last, milliseconds since 1970-01-01 UTC, or 0
     * @param bags in how many bags it is, or 0 when nobody has counted
     */
    public record Standing(int calls, long calledAtMs, int bags) {
        /** How often it was called since it is whole; what was called before says nothing. */
        public int callsSince(long wholeAtMs) {
            return calledAtMs >= wholeAtMs ? calls : 0;
        }
    }

    /** Takes in what happened at the pass; never refuses. */
    public void apply(PassEvent event, long atMs) {
        Standing before = of(event.order());
        Standing now =
                switch (event.kind()) {
                    case CALLED ->
                            new Standing(
                                    ((PassEvent.NumberCalled) event).calls(), atMs, before.bags());
                    case BAGGED ->
                            new Standing(
                                    before.calls(),
                                    before.calledAtMs(),
                                    ((PassEvent.BagsCounted) event).bags());
                };
        standings.put(event.order(), now);
    }

    /** Takes in what happened to an order or the day: what is changed is packed anew. */
    public void apply(OrderEvent event) {
        switch (event.kind()) {
            case DAY_OPENED -> begin(((OrderEvent.DayOpened) event).date());
            case CHANGED -> standings.remove(((OrderEvent.OrderChanged) event).order());
            case DAY_CLOSED,
                    DAY_REOPENED,
                    PLACED,
                    TOLD,
                    DISCOUNTED,
                    VOIDED,
                    HANDED,
                    BROUGHT_BACK -> {}
        }
    }

    /** What was done with an order. */
    public Standing of(String order) {
        return standings.getOrDefault(order, NOTHING);
    }

    private void begin(LocalDate opened) {
        if (!opened.equals(date)) {
            standings.clear();
        }
        date = opened;
    }
}
