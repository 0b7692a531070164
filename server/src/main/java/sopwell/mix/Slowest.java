package sopwell.mix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sopwell.kitchen.Kitchen;
import sopwell.log.Recorded;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * The orders of a day that guests waited for longest, with their stories. Gathers what happens to
 * orders while a day is read. Not thread-safe: made and read in one go.
 */
public final class Slowest {
    private final Map<String, List<Recorded>> events = new HashMap<>();

    /** Takes in what happened next on the day. */
    public void add(Recorded recorded) {
        OrderStory.about(recorded.event())
                .ifPresent(
                        order ->
                                events.computeIfAbsent(order, o -> new ArrayList<>())
                                        .add(recorded));
    }

    /**
     * The slowest, the longest wait first; void orders, staff meals and those that are not whole
     * are not among them.
     *
     * @param most how many at most
     */
    public List<OrderStory> of(Orders orders, Kitchen kitchen, int most) {
        Map<String, Integer> waits = new HashMap<>();
        for (Order order : orders.all()) {
            if (!order.isVoid()) {
                OrderWait wait = WaitTally.wait(order, 0, List.copyOf(kitchen.parts(order.id())));
                if (!wait.staff() && wait.toUp() != WaitTally.UNKNOWN) {
                    waits.put(order.id(), wait.toUp());
                }
            }
        }
        return orders.all().stream()
                .filter(order -> waits.containsKey(order.id()))
                .sorted(Comparator.comparing((Order order) -> -waits.get(order.id())))
                .limit(most)
                .map(order -> story(order, waits.get(order.id())))
                .toList();
    }

    private OrderStory story(Order order, int waitedSeconds) {
        return OrderStory.of(order, waitedSeconds, events.getOrDefault(order.id(), List.of()));
    }
}
