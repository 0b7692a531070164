package sopwell.mix;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.LateEdits;
import sopwell.kitchen.Query;
import sopwell.kitchen.RemakeReason;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * What did not go straight on a business day, or on several. Immutable.
 *
 * @param asked queries from stations to the counter
 * @param lapsed queries whose part was up, or off its order, before anybody answered
 * @param waitsMs how long stations waited for the answers, in milliseconds, the shortest first;
 *     those that lapsed are not among them
 * @param changes edits of placed orders, answers that changed a line among them
 * @param changesAfterStart edits that altered, or took off, something begun
 * @param voidsAfterStart void orders of which something was begun
 * @param voids void orders by reason, most first
 * @param remakes pieces that were made again, by reason, most first
 */
public record DayExceptions(
        int asked,
        int lapsed,
        List<Long> waitsMs,
        int changes,
        int changesAfterStart,
        int voidsAfterStart,
        List<VoidCount> voids,
        List<RemakeCount> remakes) {
    /** All went straight. */
    public static final DayExceptions NONE =
            new DayExceptions(0, 0, List.of(), 0, 0, 0, List.of(), List.of());

    public DayExceptions {
        waitsMs = List.copyOf(waitsMs);
        voids = List.copyOf(voids);
        remakes = List.copyOf(remakes);
    }

    /** So many pieces made again, and wasted, for one reason. */
    public record RemakeCount(RemakeReason reason, int pieces) {}

    /** So many orders void for one reason, as it stands in the log. */
    public record VoidCount(String reason, int orders) {}

    /** What happened on the newest day. */
    public static DayExceptions of(Orders orders, Kitchen kitchen) {
        List<Long> waitsMs =
                kitchen.queries().all().stream()
                        .filter(query -> query.state() == Query.State.ANSWERED)
                        .map(Query::waitedMs)
                        .sorted()
                        .toList();
        LateEdits edits = kitchen.lateEdits();
        return new DayExceptions(
                kitchen.queries().all().size(),
                lapsed(kitchen),
                waitsMs,
                edits.changes(),
                edits.changesAfterStart(),
                edits.voidsAfterStart(),
                voids(orders),
                remakes(kitchen));
    }

    /** Both days, or all that was added up so far and another day. */
    public DayExceptions plus(DayExceptions more) {
        Map<String, Integer> voidOrders = new HashMap<>();
        Map<RemakeReason, Integer> pieces = new EnumMap<>(RemakeReason.class);
        for (DayExceptions one : List.of(this, more)) {
            one.voids.forEach(v -> voidOrders.merge(v.reason(), v.orders(), Integer::sum));
            one.remakes.forEach(r -> pieces.merge(r.reason(), r.pieces(), Integer::sum));
        }
        return new DayExceptions(
                asked + more.asked,
                lapsed + more.lapsed,
                Stream.concat(waitsMs.stream(), more.waitsMs.stream()).sorted().toList(),
                changes + more.changes,
                changesAfterStart + more.changesAfterStart,
                voidsAfterStart + more.voidsAfterStart,
                voids(voidOrders),
                remakes(pieces));
    }

    /** How long stations waited for the answers. */
    public WaitSummary waits() {
        return WaitSummary.ofMillis(waitsMs);
    }

    /** Whether there is anything to say. */
    public boolean isQuiet() {
        return asked == 0 && changes == 0 && voids.isEmpty() && remakes.isEmpty();
    }

    /** Pieces that were made again, and wasted. */
    public int wastedPieces() {
        return remakes.stream().mapToInt(RemakeCount::pieces).sum();
    }

    private static int lapsed(Kitchen kitchen) {
        return (int)
                kitchen.queries().all().stream()
                        .filter(query -> query.state() == Query.State.LAPSED)
                        .count();
    }

    private static List<RemakeCount> remakes(Kitchen kitchen) {
        Map<RemakeReason, Integer> byReason = new EnumMap<>(RemakeReason.class);
        kitchen.remakes()
                .all()
                .forEach(one -> byReason.merge(one.reason(), one.pieces(), Integer::sum));
        return remakes(byReason);
    }

    private static List<RemakeCount> remakes(Map<RemakeReason, Integer> byReason) {
        return byReason.entrySet().stream()
                .map(entry -> new RemakeCount(entry.getKey(), entry.getValue()))
                .sorted(
                        Comparator.comparingInt(RemakeCount::pieces)
                                .reversed()
                                .thenComparing(RemakeCount::reason))
                .toList();
    }

    private static List<VoidCount> voids(Orders orders) {
        Map<String, Integer> byReason = new HashMap<>();
        orders.all().stream()
                .filter(Order::isVoid)
                .forEach(order -> byReason.merge(order.voidReason(), 1, Integer::sum));
        return voids(byReason);
    }

    private static List<VoidCount> voids(Map<String, Integer> byReason) {
        return byReason.entrySet().stream()
                .map(entry -> new VoidCount(entry.getKey(), entry.getValue()))
                .sorted(
                        Comparator.comparingInt(VoidCount::orders)
                                .reversed()
                                .thenComparing(VoidCount::reason))
                .toList();
    }
}
