package sopwell.sim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.stock.larder.LarderEvent;
import sopwell.stock.larder.LarderEvent.ClockMeasured;
import sopwell.stock.larder.LarderEvent.ClockStarted;
import sopwell.stock.larder.LarderEvent.ClockStopped;
import sopwell.stock.larder.LarderEvent.StockCarried;
import sopwell.stock.larder.TimeClock;

/** The validator's own books of clocks that run: how often each was measured. */
final class ClockBook {
    private final Complaints complaints;
    private final Map<String, Integer> running = new TreeMap<>();
    private int started;

    ClockBook(Complaints complaints) {
        this.complaints = complaints;
    }

    void take(LarderEvent event) {
        if (event instanceof ClockStarted begun) {
            complaints.same("t" + ++started, begun.clock(), Invariant.STOCK, "the id of", "");
            running.put(begun.clock(), 1);
        } else if (event instanceof ClockMeasured measured) {
            Integer times = running.computeIfPresent(measured.clock(), (id, n) -> n + 1);
            complaints.that(times != null, Invariant.STOCK, "does not run:", measured);
        } else if (event instanceof ClockStopped stopped) {
            Integer times = running.remove(stopped.clock());
            complaints.that(times != null, Invariant.STOCK, "did not run:", stopped);
        }
    }

    void carried(StockCarried carried) {
        same(carried.clocks(), "clocks that were carried");
        complaints.same(started, carried.clocksStarted(), Invariant.STOCK, "clocks", "");
    }

    /** That the stand has the same clocks. */
    void same(List<TimeClock> clocks, String what) {
        Map<String, Integer> found = new TreeMap<>();
        new ArrayList<>(clocks).forEach(one -> found.put(one.id(), one.readings().size()));
        complaints.same(running, found, Invariant.STOCK, what, "");
    }
}
