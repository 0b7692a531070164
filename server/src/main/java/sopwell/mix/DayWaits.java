package sopwell.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * How long the day's guests waited. Immutable.
 *
 * @param toUp from the call to the last part up, of orders that are whole
 * @param toHanded from the call to handed, of orders that were handed
 * @param withinTarget orders that came up within the target
 * @param targetSeconds the stand's target, from the call to up
 */
public record DayWaits(
        WaitSummary toUp, WaitSummary toHanded, int withinTarget, int targetSeconds) {

    /** The waits of the newest day's orders; void orders and changed minds don't count. */
    public static DayWaits of(Orders orders, Kitchen kitchen, int targetSeconds) {
        List<Long> toUp = new ArrayList<>();
        List<Long> toHanded = new ArrayList<>();
        for (Order order : orders.all()) {
            if (order.isVoid()) {
                continue;
            }
            wholeAtMs(order, kitchen)
                    .ifPresent(whole -> toUp.add(Math.max(0, whole - order.takenAtMs())));
            if (order.isHanded()) {
                toHanded.add(order.handedAtMs() - order.takenAtMs());
            }
        }
        int within = (int) toUp.stream().filter(ms -> ms <= targetSeconds * 1000L).count();
        return new DayWaits(
                WaitSummary.ofMillis(toUp), WaitSummary.ofMillis(toHanded), within, targetSeconds);
    }

    private static OptionalLong wholeAtMs(Order order, Kitchen kitchen) {
        Optional<Part> undone =
                kitchen.parts(order.id()).stream().filter(part -> !part.isDone()).findAny();
        return undone.isPresent()
                ? OptionalLong.empty()
                : kitchen.parts(order.id()).stream().mapToLong(Part::upAtMs).max();
    }
}
