package sopwell.prep.forecast;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/** The modifiers, and the sizes of items that come in several. Not thread-safe. */
final class Parts {
    private final Names items;
    private final Map<String, PartLine> modifiers = new TreeMap<>();
    private final Map<String, PartLine> sizes = new TreeMap<>();
    private final Map<String, String> plain = new HashMap<>();

    Parts(Names items) {
        this.items = items;
    }

    /** What is asked of them: a day, and what is expected of everything on it. */
    record Asked(int horizon, int weekday, CountMixture total, List<Double> shares) {
        Asked {
            shares = List.copyOf(shares);
        }
    }

    boolean isModifier(String what) {
        return plain.containsKey(what);
    }

    /** Takes in a day. */
    void learn(int weekday, DayCounts counts, List<OutSpan> outs, Clockwork clock) {
        meet(counts);
        Map<String, double[]> windows = new HashMap<>();
        for (OutSpan span : outs) {
            String name = plain.get(Needs.plain(span.what()));
            if (name != null) {
                double[] covered = clock.covered(span.from(), span.to());
                double[] window = windows.computeIfAbsent(name, n -> new double[covered.length]);
                for (int b = 0; b < covered.length; b++) {
                    window[b] = Math.max(window[b], covered[b]);
                }
            }
        }
        Map<String, Integer> some = new HashMap<>();
        for (Sold sold : counts.sold()) {
            int bin = counts.bin(sold);
            for (String modifier : new TreeSet<>(sold.modifiers())) {
                if (!windows.containsKey(modifier) || windows.get(modifier)[bin] == 0) {
                    some.merge("m" + modifier, sold.pieces(), Integer::sum);
                }
            }
            if (!sold.size().isEmpty()) {
                some.merge("s" + sizeName(sold), sold.pieces(), Integer::sum);
            }
        }
        modifiers.forEach(
                (name, part) -> {
                    double all = all(part, counts, windows.getOrDefault(name, new double[0]));
                    part.learn(weekday, some.getOrDefault("m" + name, 0), all);
                });
        sizes.forEach(
                (name, part) ->
                        part.learn(
                                weekday,
                                some.getOrDefault("s" + name, 0),
                                all(part, counts, new double[0])));
    }

    /** Sets the mark that later days are forecast from; once for each open day. */
    void mark() {
        modifiers.values().forEach(part -> part.shares().mark());
        sizes.values().forEach(part -> part.shares().mark());
    }

    List<DayForecast.Part> modifiers(Asked asked) {
        return forecast(modifiers, asked);
    }

    /** Those of items with more than one size. */
    List<DayForecast.Part> sizes(Asked asked) {
        Map<String, PartLine> several = new TreeMap<>();
        sizes.forEach(
                (name, part) -> {
                    long alike =
                            sizes.values().stream()
                                    .filter(other -> other.items().equals(part.items()))
                                    .count();
                    if (alike > 1) {
                        several.put(name, part);
                    }
                });
        return forecast(several, asked);
    }

    private List<DayForecast.Part> forecast(Map<String, PartLine> parts, Asked asked) {
        List<DayForecast.Part> all = new ArrayList<>();
        parts.forEach(
                (name, part) -> {
                    double parent = 0;
                    List<String> of = new ArrayList<>();
                    BitSet on = part.items();
                    for (int i = on.nextSetBit(0); i >= 0; i = on.nextSetBit(i + 1)) {
                        parent += asked.shares().get(i);
                        of.add(items.name(i));
                    }
                    double share = part.shares().now(asked.weekday());
                    double rho = part.shares().rho(asked.horizon());
                    CountMixture demand =
                            asked.total().part(Math.min(1, parent), PARENT_RHO).part(share, rho);
                    all.add(new DayForecast.Part(name, of, share, demand, rho));
                });
        return all;
    }

    private static final double PARENT_RHO = 0.003;

    private double all(PartLine part, DayCounts counts, double[] without) {
        double sum = 0;
        BitSet on = part.items();
        for (int i = on.nextSetBit(0); i >= 0; i = on.nextSetBit(i + 1)) {
            int[] sold = counts.item(i);
            for (int b = 0; b < sold.length; b++) {
                sum += without.length == 0 || without[b] == 0 ? sold[b] : 0;
            }
        }
        return sum;
    }

    private void meet(DayCounts counts) {
        for (Sold sold : counts.sold()) {
            int item = items.number(sold.item());
            for (String modifier : sold.modifiers()) {
                plain.put(Needs.plain(modifier), modifier);
                modifiers.computeIfAbsent(modifier, m -> new PartLine()).items().set(item);
            }
            if (!sold.size().isEmpty()) {
                sizes.computeIfAbsent(sizeName(sold), s -> new PartLine()).items().set(item);
            }
        }
    }

    private static String sizeName(Sold sold) {
        return sold.item() + "/" + sold.size();
    }
}
