package sopwell.prep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.menu.Size;
import sopwell.mix.DayTally;

/**
 * All ways in which pieces were made of late, with how often and for how much; of an item that was
 * never sold the way the house makes it. Immutable.
 */
final class Kinds {
    /** After so many open days a sale weighs half. */
    private static final double HALF_DAYS = 21;

    private final List<Kind> all;

    /**
     * One way of making one item.
     *
     * @param weight how often it was sold, later days more
     * @param priceCents what it was sold for on average
     */
    record Kind(Selection selection, double weight, long priceCents) {
        String item() {
            return selection.item();
        }
    }

    private Kinds(List<Kind> all) {
        this.all = List.copyOf(all);
    }

    /**
     * What is on the menu.
     *
     * @param tallies oldest first
     */
    static Kinds of(Menu menu, List<DayTally> tallies) {
        Map<Selection, double[]> sums = new LinkedHashMap<>();
        for (int d = 0; d < tallies.size(); d++) {
            double weight = Math.pow(0.5, (tallies.size() - 1 - d) / HALF_DAYS);
            for (DayTally.HalfHour half : tallies.get(d).halfHours()) {
                for (DayTally.Sold sold : half.sold()) {
                    if (!sold.staff() && isOn(menu, sold)) {
                        double[] sum = sums.computeIfAbsent(selection(sold), s -> new double[2]);
                        sum[0] += weight * sold.pieces();
                        sum[1] += weight * sold.cents();
                    }
                }
            }
        }
        List<Kind> all = new ArrayList<>();
        Map<String, Double> sold = new HashMap<>();
        sums.forEach(
                (selection, sum) -> {
                    if (sum[0] > 0) {
                        all.add(new Kind(selection, sum[0], Math.round(sum[1] / sum[0])));
                        sold.merge(selection.item(), sum[0], Double::sum);
                    }
                });
        menu.items().stream()
                .filter(item -> !sold.containsKey(item.id()))
                .forEach(item -> all.addAll(usual(menu, item)));
        return new Kinds(all);
    }

    List<Kind> all() {
        return all;
    }

    private static boolean isOn(Menu menu, DayTally.Sold sold) {
        return menu.hasItem(sold.item())
                && (sold.size().isEmpty() || menu.item(sold.item()).size(sold.size()).isPresent());
    }

    private static Selection selection(DayTally.Sold sold) {
        return new Selection(sold.item(), sold.size(), PrepDays.options(sold.ways()), List.of());
    }

    /** As the house makes it, in every size alike. */
    private static List<Kind> usual(Menu menu, Item item) {
        List<String> options = new ArrayList<>();
        long added = 0;
        for (Group group : menu.groupsOf(item)) {
            options.addAll(group.defaults());
            added +=
                    group.options().stream()
                            .filter(option -> group.defaults().contains(option.id()))
                            .mapToLong(Option::priceCents)
                            .sum();
        }
        List<Kind> kinds = new ArrayList<>();
        for (Size size : item.sizes()) {
            Selection selection = new Selection(item.id(), size.id(), options, List.of());
            kinds.add(new Kind(selection, 1, size.priceCents() + added));
        }
        if (kinds.isEmpty()) {
            Selection selection = new Selection(item.id(), "", options, List.of());
            kinds.add(new Kind(selection, 1, item.priceCents() + added));
        }
        return kinds;
    }
}
