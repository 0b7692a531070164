package sopwell.mix;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.mix.WaitTally.PartWait;
import sopwell.mix.WaitTally.Quoted;

/**
 * How long guests waited in a period, and for what. Meals of the stand's own people are not in it.
 * Immutable.
 *
 * @param days days of the period on which a guest ordered
 * @param staffOrders meals of the stand's own people, left out
 * @param targetSeconds the stand's target, from the call to up
 * @param halfHours by the half hour of the call, those in which anybody ordered, in their order
 * @param stations in the menu's order
 * @param items in the menu's order
 */
public record Waits(
        Period period,
        int days,
        int staffOrders,
        int targetSeconds,
        GuestWaits guests,
        Quotes quotes,
        List<HalfHour> halfHours,
        List<PartWaits> stations,
        List<PartWaits> items) {
    public Waits {
        halfHours = List.copyOf(halfHours);
        stations = List.copyOf(stations);
        items = List.copyOf(items);
    }

    /**
     * The orders taken in one half hour.
     *
     * @param index see {@link HalfHours}
     */
    public record HalfHour(int index, GuestWaits guests) {}

    /** How many guests came by their order sooner than told, as told, and later. */
    public record Quotes(int sooner, int within, int later) {
        /** Orders that were handed as they were placed, so that their ranges say something. */
        public int judged() {
            return sooner + within + later;
        }
    }

    /**
     * Counts days.
     *
     * @param tallies of each date at most one; those outside the period don't count
     */
    public static Waits of(
            Period period, Iterable<WaitTally> tallies, int targetSeconds, Names names) {
        Counting counting = new Counting(period);
        tallies.forEach(counting::add);
        return counting.counted(targetSeconds, names);
    }

    /**
     * Counts one day after the other, so that many of them need not be at hand at once. Not
     * thread-safe: made and read in one go.
     */
    public static final class Counting {
        private final Period period;
        private final GuestWaits.Counting guests = new GuestWaits.Counting();
        private final Map<Quoted, Integer> quotes = new EnumMap<>(Quoted.class);
        private final Map<Integer, GuestWaits.Counting> halfHours = new TreeMap<>();
        private final Map<String, PartWaits.Counting> stations = new HashMap<>();
        private final Map<String, PartWaits.Counting> items = new HashMap<>();
        private int days;
        private int staffOrders;

        /** Nothing counted yet. */
        public Counting(Period period) {
            this.period = period;
        }

        /** Counts what a day adds; a date must not be counted twice. */
        public void add(WaitTally tally) {
            boolean open = false;
            for (OrderWait order : tally.orders()) {
                if (!period.holds(tally.date(), order.halfHour())) {
                    continue;
                }
                if (order.staff()) {
                    staffOrders++;
                } else {
                    open = true;
                    add(order);
                }
            }
            days += open ? 1 : 0;
        }

        private void add(OrderWait order) {
            guests.add(order);
            quotes.merge(order.quoted(), 1, Integer::sum);
            halfHours.computeIfAbsent(order.halfHour(), i -> new GuestWaits.Counting()).add(order);
            for (PartWait part : order.parts()) {
                counting(stations, part.station()).add(part);
                counting(items, part.item()).add(part);
            }
        }

        private static PartWaits.Counting counting(Map<String, PartWaits.Counting> by, String id) {
            return by.computeIfAbsent(id, i -> new PartWaits.Counting());
        }

        /** What was counted. */
        public Waits counted(int targetSeconds, Names names) {
            List<HalfHour> halves = new ArrayList<>();
            halfHours.forEach(
                    (index, some) -> halves.add(new HalfHour(index, some.counted(targetSeconds))));
            return new Waits(
                    period,
                    days,
                    staffOrders,
                    targetSeconds,
                    guests.counted(targetSeconds),
                    new Quotes(
                            quotes.getOrDefault(Quoted.SOONER, 0),
                            quotes.getOrDefault(Quoted.WITHIN, 0),
                            quotes.getOrDefault(Quoted.LATER, 0)),
                    halves,
                    stations.keySet().stream()
                            .sorted(names.stationOrder())
                            .map(
                                    id ->
                                            stations.get(id)
                                                    .counted(id, names.station(id), targetSeconds))
                            .toList(),
                    items.keySet().stream()
                            .sorted(names.itemOrder())
                            .map(id -> items.get(id).counted(id, names.item(id), targetSeconds))
                            .toList());
        }
    }
}
