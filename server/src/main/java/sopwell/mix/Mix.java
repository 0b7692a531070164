package sopwell.mix;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.mix.DayTally.Counts;
import sopwell.mix.DayTally.Sold;

/**
 * What was sold in a period and how it was made. Immutable.
 *
 * @param days days of the period on which the stand took an order
 * @param pieces sold to guests; meals of the stand's own people are not among them
 * @param staffPieces eaten by the stand's own people
 * @param items pieces by item and size, in the menu's order
 * @param tables one for each item with at least two modifier groups that sold
 */
public record Mix(
        Period period,
        int days,
        Counts counts,
        int pieces,
        int staffPieces,
        List<ItemCount> items,
        List<MixTable> tables) {
    public Mix {
        items = List.copyOf(items);
        tables = List.copyOf(tables);
    }

    /**
     * Adds days up.
     *
     * @param tallies of each date at most one; those outside the period don't count
     */
    public static Mix of(Period period, Collection<DayTally> tallies, Names names) {
        Counts counts = Counts.NONE;
        int days = 0;
        int staffPieces = 0;
        Map<Made, Total> made = new LinkedHashMap<>();
        for (DayTally tally : tallies) {
            boolean open = false;
            for (DayTally.HalfHour half : tally.halfHours()) {
                if (period.holds(tally.date(), half.index())) {
                    open = true;
                    counts = counts.plus(half.counts());
                    staffPieces += add(half.sold(), made);
                }
            }
            days += open ? 1 : 0;
        }
        List<ItemCount> items = items(made, names);
        return new Mix(
                period,
                days,
                counts,
                items.stream().mapToInt(ItemCount::pieces).sum(),
                staffPieces,
                items,
                tables(items, made, names));
    }

    /** The table of an item, if it sold and has one. */
    public java.util.Optional<MixTable> table(String item) {
        return tables.stream().filter(table -> table.item().equals(item)).findFirst();
    }

    /** Pieces made alike. By hand and no record, as a year looks up half a million of them. */
    private static final class Made {
        private final String item;
        private final String size;
        private final List<String> ways;
        private final int hash;

        Made(String item, String size, List<String> ways) {
            this.item = item;
            this.size = size;
            this.ways = ways;
            this.hash = (item.hashCode() * 31 + size.hashCode()) * 31 + ways.hashCode();
        }

        String item() {
            return item;
        }

        String size() {
            return size;
        }

        List<String> ways() {
            return ways;
        }

        @Override
        public int hashCode() {
            return hash;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Made made
                    && hash == made.hash
                    && item.equals(made.item)
                    && size.equals(made.size)
                    && ways.equals(made.ways);
        }
    }

    private static final class Total {
        private int pieces;
        private long cents;

        void add(int morePieces, long moreCents) {
            pieces += morePieces;
            cents = Math.addExact(cents, moreCents);
        }
    }

    /** Adds what guests bought, and answers how many pieces were staff meals. */
    private static int add(List<Sold> sold, Map<Made, Total> made) {
        int staff = 0;
        for (Sold some : sold) {
            if (some.staff()) {
                staff += some.pieces();
                continue;
            }
            Made kind = new Made(some.item(), some.size(), some.ways());
            made.computeIfAbsent(kind, k -> new Total()).add(some.pieces(), some.cents());
        }
        return staff;
    }

    private static List<ItemCount> items(Map<Made, Total> made, Names names) {
        Map<Made, Total> sums = new LinkedHashMap<>();
        made.forEach(
                (kind, total) ->
                        sums.computeIfAbsent(
                                        new Made(kind.item(), kind.size(), List.of()),
                                        k -> new Total())
                                .add(total.pieces, total.cents));
        List<ItemCount> counts = new ArrayList<>();
        sums.forEach(
                (kind, total) ->
                        counts.add(
                                new ItemCount(
                                        kind.item(),
                                        names.item(kind.item()),
                                        kind.size(),
                                        names.size(kind.item(), kind.size()),
                                        total.pieces,
                                        total.cents)));
        return counts.stream().sorted(names.inMenuOrder()).toList();
    }

    private static List<MixTable> tables(
            List<ItemCount> items, Map<Made, Total> made, Names names) {
        Map<String, MixTableBuilder> builders = new TreeMap<>();
        made.forEach(
                (kind, total) -> {
                    if (kind.ways().size() >= 2) {
                        builders.computeIfAbsent(
                                        kind.item(),
                                        item -> new MixTableBuilder(names, item, kind.ways()))
                                .add(kind.ways(), total.pieces);
                    }
                });
        List<MixTable> tables = new ArrayList<>();
        items.stream()
                .map(ItemCount::item)
                .distinct()
                .filter(builders::containsKey)
                .forEach(item -> tables.add(builders.get(item).build()));
        return tables;
    }
}
