package sopwell.sim;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;
import sopwell.log.Recorded;
import sopwell.menu.Pan;
import sopwell.orders.OrderEvent;
import sopwell.stock.PanEvent;

/** What is left hot: what was put in less what was made. Belongs to one thread. */
final class PanBook {
    private final OrderBook orders;
    private final Complaints complaints;
    private final Map<String, Long> filled = new HashMap<>();
    private final Map<String, Long> taken = new HashMap<>();
    private final Map<String, Long> filledAtMs = new HashMap<>();
    private LocalDate date;

    PanBook(OrderBook orders, Complaints complaints) {
        this.orders = orders;
        this.complaints = complaints;
    }

    void take(Recorded recorded, PartBook parts) {
        if (recorded.event() instanceof OrderEvent.DayOpened opened) {
            if (!opened.date().equals(date)) {
                filled.clear();
                taken.clear();
                filledAtMs.clear();
            }
            date = opened.date();
        } else if (recorded.event() instanceof PanEvent.PanRefilled refilled) {
            filled.put(refilled.pan(), (long) refilled.amount());
            taken.put(refilled.pan(), 0L);
            filledAtMs.put(refilled.pan(), recorded.atMs());
        } else if (recorded.event() instanceof KitchenEvent.PartUp up) {
            made(up.part(), parts, 1);
        } else if (recorded.event() instanceof KitchenEvent.PartBroughtBack back) {
            made(back.part(), parts, -1);
        }
    }

    private void made(PartId part, PartBook parts, int sign) {
        if (!parts.has(part)) {
            return;
        }
        Make make = parts.make(part);
        for (Pan pan : orders.menuOf(make.revision()).pans()) {
            if (filled.containsKey(pan.id()) && pan.station().equals(part.station())) {
                long more = (long) pan.amount(make.selection()) * parts.quantity(part) * sign;
                taken.merge(pan.id(), more, (before, now) -> Math.max(0, before + now));
            }
        }
    }

    void check(Stand stand) {
        for (Pan pan : orders.menu().pans()) {
            Optional<Long> left =
                    Optional.ofNullable(filled.get(pan.id()))
                            .map(full -> Math.max(0, full - taken.get(pan.id())));
            complaints.same(
                    Optional.ofNullable(filledAtMs.get(pan.id())),
                    stand.pans().refilledAtMs(pan.id()),
                    Invariant.PANS,
                    "when it was filled:",
                    pan.id());
            complaints.same(left, stand.pans().left(pan.id()), Invariant.PANS, "left in", pan.id());
        }
    }
}
