package sopwell.sim;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.orders.OrderEvent;
import sopwell.orders.OutEvent;
import sopwell.sim.OrderBook.TrueOrder;

/**
 * What is out: what was left when it was marked, less what the day's orders have more of it than
 * they had then. Belongs to one thread; fed after the order book.
 */
final class OutBook {
    private final OrderBook orders;
    private final Complaints complaints;
    private final Map<Out, Mark> marks = new LinkedHashMap<>();

    private record Mark(int left, long untilMs, int orderedThen) {}

    OutBook(OrderBook orders, Complaints complaints) {
        this.orders = orders;
        this.complaints = complaints;
    }

    void take(Recorded recorded) {
        if (recorded.event() instanceof OutEvent.OutMarked marked) {
            marks.put(
                    marked.out(), new Mark(marked.left(), marked.untilMs(), ordered(marked.out())));
        } else if (recorded.event() instanceof OutEvent.OutLifted lifted) {
            complaints.that(
                    marks.remove(lifted.out()) != null, Invariant.OUTS, "was not out:", lifted);
        } else if (recorded.event() instanceof OrderEvent.DayOpened
                || recorded.event() instanceof OrderEvent.DayClosed) {
            marks.clear();
        } else if (recorded.event() instanceof OrderEvent.OrderPlaced placed) {
            for (Map.Entry<Out, Mark> mark : marks.entrySet()) {
                boolean asks =
                        placed.lines().stream().anyMatch(l -> mark.getKey().isIn(l.selection()));
                long untilMs = mark.getValue().untilMs();
                boolean holds = untilMs == 0 || recorded.atMs() < untilMs;
                complaints.that(
                        !asks || !holds || left(mark.getKey()) >= 0,
                        Invariant.OUTS,
                        "sold although out:",
                        List.of(mark.getKey(), "on", placed.order()));
            }
        }
    }

    private int left(Out out) {
        Mark mark = marks.get(out);
        return mark.left() - (ordered(out) - mark.orderedThen());
    }

    private int ordered(Out out) {
        int pieces = 0;
        for (TrueOrder order : orders.all()) {
            if (!order.isVoid()) {
                pieces +=
                        order.lines.stream()
                                .filter(line -> out.isIn(line.selection()))
                                .mapToInt(line -> line.quantity())
                                .sum();
            }
        }
        return pieces;
    }

    void check(Stand stand) {
        List<Shortage> expected =
                marks.entrySet().stream()
                        .map(
                                mark ->
                                        new Shortage(
                                                mark.getKey(),
                                                left(mark.getKey()),
                                                mark.getValue().untilMs()))
                        .toList();
        complaints.same(expected, stand.outs().all(), Invariant.OUTS, "the list of outs", "");
    }
}
