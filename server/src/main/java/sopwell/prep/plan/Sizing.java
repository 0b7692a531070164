package sopwell.prep.plan;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.prep.plan.PlanAsk.DemandFor;
import sopwell.prep.plan.PlanAsk.OpenDay;
import sopwell.prep.plan.PlanAsk.StockLot;
import sopwell.prep.plan.PrepPlan.Why;
import sopwell.prep.quantity.DemandPaths;
import sopwell.prep.quantity.LotChoice;
import sopwell.prep.quantity.PathCost;
import sopwell.prep.quantity.PathCost.Lot;
import sopwell.prep.quantity.PathCost.Window;
import sopwell.prep.quantity.Stakes;

/** How much is needed of everything, and how many lots cost least. For one plan. */
final class Sizing {
    private static final double LOW = .05;
    private static final double HIGH = .95;

    /** For what only recipes take: what is missing is made, and no more than the lots ask for. */
    private static final Stakes SURE =
            new Stakes(BigDecimal.valueOf(1_000_000), BigDecimal.ONE, BigDecimal.ZERO);

    /** Where the owner has set nothing. */
    static final Stakes USUAL = Stakes.oneDay("9", "1");

    private final PlanAsk ask;
    private final LocalDate first;
    private final int dates;
    private final DemandPaths draws;
    private final Map<String, Need> needs = new HashMap<>();
    private final Map<String, DemandFor> sold = new HashMap<>();

    /** A chosen number of lots and its reasons. */
    record Decision(long lots, Window window, Optional<Why> why) {}

    Sizing(PlanAsk ask) {
        this.ask = ask;
        this.first = LocalDate.ofInstant(ask.now(), ask.zone());
        LocalDate last = ask.days().get(ask.days().size() - 1).date();
        this.dates = (int) ChronoUnit.DAYS.between(first, last) + 1;
        this.draws = DemandPaths.ofDays(ask.days().size());
    }

    /** Takes in what will be sold of an ingredient. */
    void sell(DemandFor demand) {
        sold.put(demand.ingredient(), demand);
        double[][] open = draws.of(demand.means(), demand.variances(), demand.levelPhi());
        double[][] paths = new double[open.length][dates];
        long[] by = new long[dates];
        Arrays.fill(by, Spans.FAR);
        for (int d = 0; d < ask.days().size(); d++) {
            OpenDay day = ask.days().get(d);
            int date = index(day.date());
            for (int i = 0; i < open.length; i++) {
                paths[i][date] = open[i][d];
            }
            by[date] = demand.means().get(d) > 0 ? Calendar.minute(day.readyBy()) : Spans.FAR;
        }
        needs.put(demand.ingredient(), new Need(paths, by));
    }

    /** What is needed of an ingredient as far as is known. */
    Need need(String ingredient) {
        return needs.computeIfAbsent(
                ingredient,
                id -> {
                    long[] by = new long[dates];
                    Arrays.fill(by, Spans.FAR);
                    return new Need(new double[1][dates], by);
                });
    }

    boolean isSold(String ingredient) {
        return sold.containsKey(ingredient);
    }

    int index(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(first, date);
    }

    LocalDate date(int index) {
        return first.plusDays(index);
    }

    int index(long minute) {
        return index(LocalDate.ofInstant(Calendar.instant(minute), ask.zone()));
    }

    int dates() {
        return dates;
    }

    /** What is there or in process, the first to expire first. */
    Shelf stock(String ingredient) {
        Need need = need(ingredient);
        List<Lot> lots = new ArrayList<>();
        for (StockLot lot : ask.stock()) {
            int last = index(lot.lastDay());
            if (!lot.ingredient().equals(ingredient) || last < 0 || lot.amount().signum() <= 0) {
                continue;
            }
            int from = Math.max(0, index(LocalDate.ofInstant(lot.from(), ask.zone())));
            boolean late = from < dates && Calendar.minute(lot.from()) > need.by(from);
            lots.add(new Lot(lot.amount().doubleValue(), late ? from + 1 : from, last));
        }
        return new Shelf(need, lots);
    }

    /** How many lots to have for a window of dates. */
    Decision decide(String ingredient, Shelf shelf, Window window, double lot) {
        Need need = need(ingredient);
        Stakes stakes =
                isSold(ingredient) ? ask.terms().stakes().getOrDefault(ingredient, USUAL) : SURE;
        double onHand = need.usable(shelf.lots(), window.from());
        double mean = need.mean(window.from(), window.last());
        long most = Limits.LOTS_MAX;
        long guess = Math.min(most, (long) Math.max(0, (mean - onHand) / lot));
        LotChoice choice = new PathCost(shelf.leftovers(), window).choose(lot, stakes, guess, most);
        if (choice.lots() == 0) {
            return new Decision(0, window, Optional.empty());
        }
        double[] sums = need.sums(window.from(), window.last());
        double fractile = stakes.fractile();
        Why why =
                new Why(
                        by(need, window),
                        date(window.from()),
                        date(window.last()),
                        mean,
                        Ranks.reaching(sums, LOW),
                        Ranks.reaching(sums, HIGH),
                        fractile,
                        Ranks.reaching(sums, fractile),
                        onHand,
                        choice.lots(),
                        choice.cost(),
                        choice.otherLots(),
                        choice.otherCost());
        return new Decision(choice.lots(), window, Optional.of(why));
    }

    private static Instant by(Need need, Window window) {
        int date = window.from();
        while (date < window.last() && !need.isOn(date)) {
            date++;
        }
        return Calendar.instant(need.by(date));
    }
}
