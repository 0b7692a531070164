package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import sopwell.Check;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/**
 * Learns a stand's days one after another, and forecasts the next ones at any time. Deterministic:
 * the same days give the same numbers. Not thread-safe.
 */
public final class Forecaster {
    /** How many open days ahead are forecast at most. */
    public static final int HORIZON_MAX = 14;

    static final int[] AHEAD = {1, 2, 3, 4, 5, 7, 10, 14};
    private static final int SCORED_TO = 5;

    private static final double LEAST_SEEN = 0.25;
    private static final double UNTIMED_EXPOSURE = 0.5;
    private static final double[] WHOLE = new double[0];
    private static final int LONG_DAYS = 28;
    private static final double DOUBT = 0.3;
    private static final int EXPOSURES = 7;

    private final int bins;
    private final Names names = new Names();
    private final List<ItemLine> lines = new ArrayList<>();
    private final Priors totalPriors = new Priors();
    private final Priors itemPriors = new Priors();
    private final Features features = new Features(totalPriors);
    private final Bank bank;
    private final Clockwork clock;
    private final StockKeeper keeper;
    private final Parts parts;
    private final Guesses guesses;
    private final List<LocalDate> dates = new ArrayList<>();
    private final List<Double> exposures = new ArrayList<>();

    /** Someone who has seen nothing yet. */
    public Forecaster(int binMinutes, Guesses guesses) {
        this.bins = new History(binMinutes, List.of(), List.of()).bins();
        this.guesses = guesses;
        this.clock = new Clockwork(binMinutes, bins);
        this.parts = new Parts(names);
        this.keeper = new StockKeeper(names, clock, parts, bins);
        boolean guessed = guesses.total() > 0;
        this.bank =
                new Bank(
                        Bank.SPEEDS,
                        AHEAD,
                        SCORED_TO,
                        totalPriors,
                        new Member.Start(guesses.total(), guessed ? Guesses.DAYS : 0));
        meet(guesses.items().keySet());
        if (guessed) {
            bank.mark();
            lines.forEach(ItemLine::mark);
        }
    }

    /** Someone who has seen a whole history. */
    public static Forecaster of(History history, Guesses guesses) {
        Forecaster forecaster = new Forecaster(history.binMinutes(), guesses);
        forecaster.hear(history.outlooks());
        history.days().forEach(forecaster::learn);
        return forecaster;
    }

    /** Hears weather forecasts; they count from their day of issue on. */
    public void hear(List<Outlook> outlooks) {
        features.hear(outlooks);
    }

    /**
     * Takes in the next day; a closed one changes nothing.
     *
     * @param day later than all before
     */
    public void learn(PastDay day) {
        Check.that(
                dates.isEmpty() || day.date().isAfter(dates.get(dates.size() - 1)),
                "days are learned in their order");
        if (!day.open()) {
            return;
        }
        doubtAfterLong(day.date());
        meet(new TreeSet<>(day.sold().stream().map(Sold::item).toList()));
        int weekday = Clockwork.weekday(day.date().getDayOfWeek());
        DayCounts counts = new DayCounts(day, names, bins);
        double[] shares = shares(weekday);
        double level = bank.level() * bank.factor(weekday);
        DayStock stock =
                keeper.stock(
                        day,
                        counts,
                        new StockKeeper.Due(
                                weekday, level, Arrays.stream(shares).boxed().toList()));
        double[] window = stock.window(-1);
        double[] could = stock.isWhole() ? window : stock.ofAll(shares, window);
        double exposure = stock.isWhole() ? 1 : Math.min(1.5, clock.mass(weekday, could));
        Seen seen = seen(day, weekday, DayCounts.in(counts.all(), window), exposure);
        seen = stock.hasUntimed() ? half(seen) : seen;
        ItemLine.Whole foretold = foretold(seen);
        double whole = whole(seen);
        bank.learn(seen);
        learnFeatures(day, seen);
        for (int i = 0; i < lines.size(); i++) {
            learnItem(i, counts, stock, new OfDay(seen, whole, foretold));
        }
        parts.learn(weekday, counts, timedOuts(day), clock);
        clock.learn(weekday, day.hours(), counts.all(), could, whole);
        dates.add(day.date());
        exposures.add(Math.min(1, exposure));
        bank.mark();
        lines.forEach(ItemLine::mark);
        parts.mark();
    }

    /** What a day was as a whole. */
    private record OfDay(Seen seen, double whole, ItemLine.Whole foretold) {}

    /**
     * The next open days, the first of them the first after the last day that was learned.
     *
     * @param days in their order, {@link #HORIZON_MAX} at most
     */
    public List<DayForecast> forecast(List<ComingDay> days) {
        Check.that(days.size() <= HORIZON_MAX, "a forecast goes fourteen open days ahead");
        if (dates.isEmpty() && guesses.total() <= 0) {
            return List.of();
        }
        List<DayForecast> all = new ArrayList<>();
        for (ComingDay day : days) {
            all.add(forecast(day, all.size() + 1));
        }
        return all;
    }

    /** Open days that were learned from. */
    public int days() {
        return dates.size();
    }

    private DayForecast forecast(ComingDay day, int horizon) {
        int weekday = Clockwork.weekday(day.date().getDayOfWeek());
        LocalDate asOf = dates.isEmpty() ? day.date().minusDays(1) : dates.get(dates.size() - 1);
        double hours = clock.hours(weekday, day.hours());
        Known known = features.expected(day.date(), day.occasions(), asOf, hours);
        CountMixture total = bank.ahead(horizon, weekday, known);
        if (isLongAgo(day.date())) {
            total = total.wider(0.05);
        }
        double phiDay = Math.min(total.phi(), bank.phi(0, total.mean()));
        double[] shares = shares(weekday);
        List<DayForecast.Item> items = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            ItemLine line = lines.get(i);
            double rho = line.shares().rho(horizon);
            CountMixture planned = total.part(shares[i], rho);
            items.add(
                    new DayForecast.Item(
                            names.name(i),
                            shares[i],
                            line.ahead(horizon, weekday, known, planned),
                            planned,
                            line.ownWeight(),
                            rho));
        }
        Parts.Asked asked =
                new Parts.Asked(horizon, weekday, total, Arrays.stream(shares).boxed().toList());
        return new DayForecast(
                horizon,
                day.date(),
                total,
                phiDay,
                total.phi() - phiDay,
                items,
                parts.sizes(asked),
                parts.modifiers(asked),
                why(day.date(), weekday, known));
    }

    private Why why(LocalDate date, int weekday, Known known) {
        List<Why.Effect> effects = new ArrayList<>();
        for (int i = 0; i < known.count(); i++) {
            int feature = known.feature(i);
            effects.add(
                    new Why.Effect(features.name(feature), bank.effect(feature), known.holds(i)));
        }
        List<Double> last =
                exposures.subList(Math.max(0, exposures.size() - EXPOSURES), exposures.size());
        double exposure = last.stream().mapToDouble(Double::doubleValue).average().orElse(1);
        return new Why(
                basis(date),
                dates.size(),
                bank.level(),
                bank.factor(weekday),
                effects,
                known.hours(),
                exposure,
                bank.voices(2));
    }

    private Why.Basis basis(LocalDate date) {
        if (dates.isEmpty()) {
            return Why.Basis.GUESSES;
        }
        if (isLongAgo(date)) {
            return Why.Basis.LONG_AGO;
        }
        return dates.size() < HORIZON_MAX ? Why.Basis.FEW_DAYS : Why.Basis.DAYS;
    }

    private boolean isLongAgo(LocalDate date) {
        return !dates.isEmpty() && dates.get(dates.size() - 1).plusDays(LONG_DAYS).isBefore(date);
    }

    private void doubtAfterLong(LocalDate date) {
        if (isLongAgo(date)) {
            bank.doubt(DOUBT);
            lines.forEach(line -> line.doubt(DOUBT));
        }
    }

    private void meet(java.util.Collection<String> items) {
        names.add(items);
        while (lines.size() < names.size()) {
            double guess = guesses.items().getOrDefault(names.name(lines.size()), 0.0);
            double others = guess > 0 ? guesses.total() - guess : 0;
            Shares shares = new Shares(guess * Guesses.DAYS, others * Guesses.DAYS);
            lines.add(new ItemLine(shares, bins, itemPriors));
        }
    }

    /** Every item's share on a weekday, together 1, or all 0. */
    private double[] shares(int weekday) {
        double[] shares = new double[lines.size()];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = lines.get(i).share(weekday);
        }
        double sum = Arrays.stream(shares).sum();
        for (int i = 0; i < shares.length && sum > 0; i++) {
            shares[i] /= sum;
        }
        return shares;
    }

    private Seen seen(PastDay day, int weekday, int count, double exposure) {
        Known known = features.observed(day, 1);
        List<Known> ahead = new ArrayList<>();
        for (int h = 1; h <= HORIZON_MAX; h++) {
            int from = dates.size() - h;
            ahead.add(
                    from < 0
                            ? known
                            : features.expected(day.date(), day.occasions(), dates.get(from), 1));
        }
        return new Seen(weekday, count, exposure, known, ahead, false);
    }

    /** Something ran out at an unknown time: the whole day says less. */
    private static Seen half(Seen seen) {
        return new Seen(
                seen.weekday(),
                seen.count() * UNTIMED_EXPOSURE,
                seen.exposure() * UNTIMED_EXPOSURE,
                seen.known(),
                seen.ahead(),
                true);
    }

    private ItemLine.Whole foretold(Seen seen) {
        double[] means = new double[Shares.AHEAD.length];
        double[] phis = new double[Shares.AHEAD.length];
        for (int h = 0; h < means.length; h++) {
            int at = Arrays.binarySearch(AHEAD, Shares.AHEAD[h]);
            if (bank.hasExpected(at)) {
                Known known = seen.ahead().get(Shares.AHEAD[h] - 1);
                means[h] = bank.expected(at, seen.weekday(), known);
                phis[h] = bank.phi(at, means[h]);
            }
        }
        return new ItemLine.Whole(means, phis);
    }

    /** What the day would have sold as a whole; of a day of which little was seen, as foretold. */
    private double whole(Seen seen) {
        if (seen.exposure() >= LEAST_SEEN || !bank.hasExpected(0)) {
            return seen.count() / Math.max(seen.exposure(), 0.01);
        }
        return bank.expected(0, seen.weekday(), seen.ahead().get(0));
    }

    private void learnFeatures(PastDay day, Seen seen) {
        double level = bank.level() * bank.factor(seen.weekday()) * seen.exposure();
        features.learn(day, seen.count(), bank.level(), level);
        for (int w = 0; w < Priors.WEEK; w++) {
            itemPriors.setWeekday(w, bank.factor(w));
        }
        for (int i = 0; i < seen.known().count(); i++) {
            int feature = seen.known().feature(i);
            itemPriors.setEffect(feature, bank.effect(feature));
        }
    }

    private void learnItem(int item, DayCounts counts, DayStock stock, OfDay day) {
        ItemLine line = lines.get(item);
        double[] window = stock.window(item);
        double[] could = stock.isWhole() ? WHOLE : stock.of(item, window);
        int[] sold = counts.item(item).length == 0 ? new int[bins] : counts.item(item);
        int weekday = day.seen().weekday();
        double exposure =
                stock.isWhole() ? 1 : Math.min(1.5, clock.mass(weekday, could, line.curve()));
        double whole = day.whole();
        double share = line.shares().now(weekday);
        Seen seen =
                new Seen(
                        weekday,
                        DayCounts.in(sold, window),
                        exposure,
                        day.seen().known(),
                        day.seen().ahead(),
                        false);
        if (stock.isUntimed(item)) {
            seen = censored(seen, share * whole);
        }
        if (seen.exposure() > 0.1) {
            line.learn(seen, whole * seen.exposure(), day.foretold());
        }
        line.curve().learn(sold, could, line.shares().now(weekday) * whole);
    }

    /** Sold out at an unknown time: what such a day asks for on average, for half a day. */
    private static Seen censored(Seen seen, double mean) {
        int least = (int) Math.round(seen.count());
        double would = new NegBin(Math.max(mean, 0.1), 0.02).meanFrom(least);
        return half(
                new Seen(seen.weekday(), would, seen.exposure(), seen.known(), seen.ahead(), true));
    }

    private static List<OutSpan> timedOuts(PastDay day) {
        return day.outs().stream().filter(s -> s.from() != OutSpan.UNKNOWN).toList();
    }
}
