package sopwell.prep.forecast;

import java.util.BitSet;
import java.util.List;
import sopwell.prep.forecast.PastDay.OutSpan;

/** Finds out what could be sold when on a day, from what was said to be out. Not thread-safe. */
final class StockKeeper {
    /** From this share on guests take something else when it is out. */
    private static final double MAIN_SHARE = 0.2;

    private static final double[] WHOLE = new double[0];

    private final Names names;
    private final Clockwork clock;
    private final Parts parts;
    private final int bins;
    private final Needs needs = new Needs();

    StockKeeper(Names names, Clockwork clock, Parts parts, int bins) {
        this.names = names;
        this.clock = clock;
        this.parts = parts;
        this.bins = bins;
    }

    /**
     * What a day was expected to sell.
     *
     * @param level pieces of everything
     * @param shares each item's
     */
    record Due(int weekday, double level, List<Double> shares) {
        Due {
            shares = List.copyOf(shares);
        }
    }

    /** What could be sold when. */
    DayStock stock(PastDay day, DayCounts counts, Due due) {
        boolean usual = clock.isUsual(due.weekday(), day.hours());
        double[] open = usual ? WHOLE : clock.covered(day.hours().from(), day.hours().to());
        DayStock stock = new DayStock(bins, open);
        for (OutSpan span : day.outs()) {
            boolean untimed = span.from() == OutSpan.UNKNOWN;
            double[] covered = untimed ? new double[bins] : clock.covered(span.from(), span.to());
            BitSet items = items(span, counts, covered, due);
            double share = items.stream().mapToDouble(i -> due.shares().get(i)).sum();
            boolean main = !Needs.isEverything(span.what()) && share >= MAIN_SHARE;
            stock.out(span, covered, items, main);
        }
        return stock;
    }

    private BitSet items(OutSpan span, DayCounts counts, double[] covered, Due due) {
        String what = Needs.plain(span.what());
        BitSet items = new BitSet();
        for (int i = 0; i < names.size(); i++) {
            if (Needs.plain(names.name(i)).equals(what)) {
                items.set(i);
            }
        }
        if (!items.isEmpty() || parts.isPart(what)) {
            return items;
        }
        if (Needs.isEverything(what)) {
            items.set(0, names.size());
            return items;
        }
        double mass = clock.mass(due.weekday(), covered);
        double[] inside = new double[bins];
        for (int b = 0; b < bins; b++) {
            inside[b] = covered[b] >= 1 ? 1 : 0;
        }
        for (int i = 0; i < names.size(); i++) {
            double sold = DayCounts.in(counts.item(i), counts.item(i).length == 0 ? WHOLE : inside);
            needs.watch(what, i, sold, due.level() * due.shares().get(i) * mass);
        }
        return needs.items(what, names);
    }
}
