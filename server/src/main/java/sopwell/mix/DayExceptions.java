package sopwell.mix;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.LateEdits;
import sopwell.kitchen.Query;
import sopwell.kitchen.RemakeReason;
import sopwell.orders.Order;
import sopwell.orders.Orders;

/**
 * What did not go straight on a business day. Immutable.
 *
 * @param asked queries from stations to the counter
 * @param lapsed queries whose part was up, or off its order, before anybody answered
 * @param waits how long stations waited for the answers; those that lapsed are not among them
 * @param changes edits of placed orders, answers that changed a line among them
 * @param changesAfterStart edits that altered, or took off, something begun
 * @param voidsAfterStart void orders of which something was begun
 * @param voids void orders by reason, most first
 * @param remakes pieces that were made again, by reason, most first
 */
public record DayExceptions(
        int asked,
        int lapsed,
        WaitSummary waits,
        int changes,
        int changesAfterStart,
        int voidsAfterStart,
        List<VoidCount> voids,
        List<RemakeCount> remakes) {
    public DayExceptions {
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
                        .toList();
        LateEdits edits = kitchen.lateEdits();
        return new DayExceptions(
                kitchen.queries().all().size(),
                lapsed(kitchen),
                WaitSummary.ofMillis(waitsMs),
                edits.changes(),
                edits.changesAfterStart(),
                edits.voidsAfterStart(),
                voids(orders),
                remakes(kitchen));
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
        return byReason.entrySet().stream()
                .map(entry -> new RemakeCount(entry.getKey(), entry.getValue()))
                .sorted(
                        Comparator.comparingInt(RemakeCount::pieces)
                                .reversed()
                                .thenComparing(RemakeCount::reason))
                .toList();
    }

    private static List<VoidCount> voids(Orders orders) {
        Map<String, Long> byReason =
                orders.all().stream()
                        .filter(Order::isVoid)
                        .collect(Collectors.groupingBy(Order::voidReason, Collectors.counting()));
        return byReason.entrySet().stream()
                .map(entry -> new VoidCount(entry.getKey(), Math.toIntExact(entry.getValue())))
                .sorted(
                        Comparator.comparingInt(VoidCount::orders)
                                .reversed()
                                .thenComparing(VoidCount::reason))
                .toList();
    }
}
