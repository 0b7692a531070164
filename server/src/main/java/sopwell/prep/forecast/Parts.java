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
    private static final double PARENT_RHO = 0.003;
    private static final double[] NEVER = new double[0];

    private final Names items;
    private final Map<String, PartLine> modifiers = new TreeMap<>();
    private final Map<String, PartLine> sizes = new TreeMap<>();

    /** Keys of modifiers and sizes by what people write when one is out. */
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

    /** Whether this is how a modifier, or a size of an item, is written. */
    boolean isPart(String what) {
        return plain.containsKey(what);
    }

    /** Takes in a day. */
    void learn(int weekday, DayCounts counts, List<OutSpan> outs, Clockwork clock) {
        meet(counts);
        OfDay day = new OfDay(weekday, counts, windows(outs, clock));
        for (Sold sold : counts.sold()) {
            for (String modifier : new TreeSet<>(sold.modifiers())) {
                day.count(modifierKey(modifier), sold);
            }
            if (!sold.size().isEmpty()) {
                day.count(sizeKey(sizeName(sold)), sold);
            }
        }
        modifiers.forEach((name, part) -> learn(part, modifierKey(name), day));
        sizes.forEach((name, part) -> learn(part, sizeKey(name), day));
    }

    /** When which parts were out, by their keys. */
    private Map<String, double[]> windows(List<OutSpan> outs, Clockwork clock) {
        Map<String, double[]> windows = new HashMap<>();
        for (OutSpan span : outs) {
            String key = plain.get(Needs.plain(span.what()));
            if (key != null) {
                double[] covered = clock.covered(span.from(), span.to());
                double[] window = windows.computeIfAbsent(key, k -> new double[covered.length]);
                for (int b = 0; b < covered.length; b++) {
                    window[b] = Math.max(window[b], covered[b]);
                }
            }
        }
        return windows;
    }

    /** What was counted of each part on a day while it could be had. */
    private static final class OfDay {
        private final int weekday;
        private final DayCounts counts;
        private final Map<String, double[]> windows;
        private final Map<String, Integer> some = new HashMap<>();

        OfDay(int weekday, DayCounts counts, Map<String, double[]> windows) {
            this.weekday = weekday;
            this.counts = counts;
            this.windows = windows;
        }

        double[] out(String key) {
            return windows.getOrDefault(key, NEVER);
        }

        void count(String key, Sold sold) {
            double[] out = out(key);
            if (out.length == 0 || out[counts.bin(sold)] == 0) {
                some.merge(key, sold.pieces(), Integer::sum);
            }
        }
    }

    private static void learn(PartLine part, String key, OfDay day) {
        double all = all(part, day.counts, day.out(key));
        part.learn(day.weekday, day.some.getOrDefault(key, 0), all);
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

    private static double all(PartLine part, DayCounts counts, double[] without) {
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
                plain.put(Needs.plain(modifier), modifierKey(modifier));
                modifiers.computeIfAbsent(modifier, m -> new PartLine()).items().set(item);
            }
            if (!sold.size().isEmpty()) {
                String written = Needs.plain(sold.item() + " " + sold.size());
                plain.put(written, sizeKey(sizeName(sold)));
                sizes.computeIfAbsent(sizeName(sold), s -> new PartLine()).items().set(item);
            }
        }
    }

    private static String sizeName(Sold sold) {
        return sold.item() + "/" + sold.size();
    }

    private static String modifierKey(String name) {
        return "m" + name;
    }

    private static String sizeKey(String name) {
        return "s" + name;
    }
}
