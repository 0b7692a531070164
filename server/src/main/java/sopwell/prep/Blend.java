package sopwell.prep;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import sopwell.prep.Kinds.Kind;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.forecast.DayForecast.Part;

/**
 * How a forecast day's pieces are made: the combinations of late, brought to the forecast's shares
 * of items, sizes and modifiers one after another until they agree (iterative proportional fitting,
 * Deming and Stephan 1940). Built once, then only read.
 */
final class Blend {
    private static final int ROUNDS = 12;

    private final List<Kind> kinds;
    private final double[] chances;
    private final Map<String, Double> items = new HashMap<>();
    private final Map<String, int[]> ofItem = new HashMap<>();
    private final DayForecast forecast;
    private final List<Margin> sizes;
    private final List<Margin> modifiers;
    private final double pieces;

    /**
     * A day's blend.
     *
     * @param isSold whether an item is sold on that day
     */
    Blend(Kinds kinds, DayForecast forecast, java.util.function.Predicate<String> isSold) {
        this.kinds = kinds.all();
        this.forecast = forecast;
        this.chances = this.kinds.stream().mapToDouble(Kind::weight).toArray();
        double sum = 0;
        for (DayForecast.Item item : forecast.items()) {
            if (isSold.test(item.item()) && this.kinds.stream().anyMatch(k -> isOf(k, item))) {
                items.put(item.item(), item.demand().mean());
                sum += item.demand().mean();
            }
        }
        this.pieces = sum;
        double all = sum;
        items.replaceAll((item, mean) -> all > 0 ? mean / all : 0);
        Map<String, IntStream.Builder> alike = new HashMap<>();
        for (int k = 0; k < chances.length; k++) {
            alike.computeIfAbsent(this.kinds.get(k).item(), item -> IntStream.builder()).add(k);
        }
        alike.forEach((item, some) -> ofItem.put(item, some.build().toArray()));
        this.sizes = forecast.sizes().stream().map(size -> margin(size, true)).toList();
        this.modifiers = forecast.modifiers().stream().map(part -> margin(part, false)).toList();
        rake();
        sizes.forEach(size -> weigh(size, true));
        modifiers.forEach(modifier -> weigh(modifier, false));
    }

    private static boolean isOf(Kind kind, DayForecast.Item item) {
        return kind.item().equals(item.item());
    }

    /** Pieces of the day on average. */
    double pieces() {
        return pieces;
    }

    /** The chance that a piece is made in the way of a number. */
    double chance(int kind) {
        return chances[kind];
    }

    private void rake() {
        toItems();
        for (int round = 0; round < ROUNDS; round++) {
            sizes.forEach(this::bring);
            modifiers.forEach(this::bring);
            toItems();
        }
    }

    private void toItems() {
        ofItem.forEach(
                (item, some) -> {
                    double have = sum(some);
                    double want = items.getOrDefault(item, 0.0);
                    scale(some, have > 0 ? want / have : 0);
                });
    }

    /** Ways that have something and ways that don't, of the same items. */
    private static final class Margin {
        private final int[] with;
        private final int[] without;
        private final Part part;

        /** How much a difference between the two counts, once all shares agree. */
        private double factor;

        Margin(IntStream with, IntStream without, Part part) {
            this.with = with.toArray();
            this.without = without.toArray();
            this.part = part;
        }
    }

    private Margin margin(Part part, boolean isSize) {
        Set<String> of = new HashSet<>(part.of());
        IntStream.Builder with = IntStream.builder();
        IntStream.Builder without = IntStream.builder();
        for (int k = 0; k < kinds.size(); k++) {
            Kind kind = kinds.get(k);
            if (of.contains(kind.item())) {
                boolean has =
                        isSize
                                ? part.name().equals(kind.item() + "/" + kind.selection().size())
                                : kind.selection().has(part.name());
                (has ? with : without).add(k);
            }
        }
        return new Margin(with.build(), without.build(), part);
    }

    private void bring(Margin margin) {
        double with = sum(margin.with);
        double without = sum(margin.without);
        if (with > 0 && without > 0) {
            double both = with + without;
            double share = Math.max(0, Math.min(1, margin.part.share()));
            scale(margin.with, share * both / with);
            scale(margin.without, (1 - share) * both / without);
        }
    }

    private double sum(int[] some) {
        double sum = 0;
        for (int k : some) {
            sum += chances[k];
        }
        return sum;
    }

    private void scale(int[] some, double factor) {
        for (int k : some) {
            chances[k] *= factor;
        }
    }

    /**
     * How much the average that a piece takes varies from day to day because shares do.
     *
     * @param each what a piece takes on average
     * @param takes what a piece of each way takes
     */
    double variance(double each, double[] takes) {
        double sum = 0;
        for (DayForecast.Item item : forecast.items()) {
            double share = items.getOrDefault(item.item(), 0.0);
            if (share > 0) {
                double off = average(ofItem.get(item.item()), takes) - each;
                sum += item.rho() * share * off * off;
            }
        }
        for (Margin size : sizes) {
            sum += spread(size, takes);
        }
        for (Margin modifier : modifiers) {
            sum += spread(modifier, takes);
        }
        return sum;
    }

    private double spread(Margin margin, double[] takes) {
        double off = average(margin.with, takes) - average(margin.without, takes);
        return margin.factor * off * off;
    }

    /** A size against its item; a modifier against going without, which counts as a second one. */
    private void weigh(Margin margin, boolean isSize) {
        double with = sum(margin.with);
        double parent = with + sum(margin.without);
        if (with > 0) {
            double share = with / parent;
            double part = margin.part.rho() * parent * parent * share * (1 - share);
            margin.factor = isSize ? part * (1 - share) : part;
        }
    }

    private double average(int[] some, double[] takes) {
        double have = 0;
        double taken = 0;
        for (int k : some) {
            have += chances[k];
            taken += chances[k] * takes[k];
        }
        return have <= 0 ? 0 : taken / have;
    }
}
