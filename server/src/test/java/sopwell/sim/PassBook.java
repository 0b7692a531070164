package sopwell.sim;

import java.util.HashMap;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.kitchen.PassEvent;
import sopwell.log.Recorded;
import sopwell.orders.OrderEvent;
import sopwell.sim.OrderBook.TrueOrder;

/** What was done at the pass. Belongs to one thread; fed after the other books. */
final class PassBook {
    private final OrderBook orders;
    private final PartBook parts;
    private final Complaints complaints;
    private final Map<String, Integer> bags = new HashMap<>();
    private final Map<String, Integer> calls = new HashMap<>();

    PassBook(OrderBook orders, PartBook parts, Complaints complaints) {
        this.orders = orders;
        this.parts = parts;
        this.complaints = complaints;
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof PassEvent.BagsCounted counted) {
            bags.put(counted.order(), counted.bags());
        } else if (recorded.event() instanceof PassEvent.NumberCalled called) {
            boolean open = orders.find(called.order()).filter(TrueOrder::isOpen).isPresent();
            complaints.that(
                    open && parts.isWhole(called.order()), Invariant.PASS, "called:", called);
            int before = calls.getOrDefault(called.order(), 0);
            complaints.that(
                    called.calls() == 1 || called.calls() == before + 1,
                    Invariant.PASS,
                    "not the next call:",
                    called);
            calls.put(called.order(), called.calls());
        } else if (recorded.event() instanceof OrderEvent.OrderChanged changed) {
            bags.remove(changed.order());
            calls.remove(changed.order());
        }
    }

    void check(Stand stand) {
        for (TrueOrder order : orders.all()) {
            complaints.same(
                    bags.getOrDefault(order.id, 0),
                    stand.pass().of(order.id).bags(),
                    Invariant.PASS,
                    "bags of",
                    order.id);
        }
    }
}
