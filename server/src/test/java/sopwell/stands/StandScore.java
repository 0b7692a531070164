package sopwell.stands;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.prep.forecast.ComingDay;
import sopwell.prep.forecast.CountMixture;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.forecast.Forecaster;
import sopwell.prep.forecast.Guesses;
import sopwell.prep.forecast.Measures;
import sopwell.prep.forecast.NegBin;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.Simple;

/**
 * Forecasts a made stand day by day, one to five open days ahead, and scores what was forecast
 * against what was asked for. Belongs to one thread.
 */
final class StandScore {
    static final double[] QUANTILES = {0.5, 0.75, 0.9, 0.95};
    private static final int AHEAD = 5;
    private static final int SEASON = 6;
    private static final int NAIVE_DAYS = 60;

    /** Hears each of our forecasts beside what came. */
    interface Heard {
        void forecast(Ours ours);
    }

    /**
     * One of our forecasts.
     *
     * @param origin the last day that was known, from 0
     * @param scale the seasonal naive forecast's error before the first origin
     */
    record Ours(
            int origin, int horizon, String name, List<Integer> values, int came, double scale) {}

    /** Who forecasts. */
    enum Who {
        OURS,
        NAIVE,
        MEAN_4,
        MEAN_8,
        ORACLE
    }

    private final MadeStand stand;
    private final int origins;
    private final Heard heard;
    private final Map<String, List<Integer>> sales = new TreeMap<>();
    private final Map<Who, Double> losses = new TreeMap<>();
    private final int[] covered = new int[QUANTILES.length];
    private int count;

    StandScore(MadeStand stand, int origins) {
        this(stand, origins, ours -> {});
    }

    StandScore(MadeStand stand, int origins, Heard heard) {
        this.stand = stand;
        this.origins = origins;
        this.heard = heard;
        for (Who who : Who.values()) {
            losses.put(who, 0.0);
        }
        score();
    }

    /** The mean scaled pinball loss. */
    double loss(Who who) {
        return losses.get(who) / (count * QUANTILES.length);
    }

    /** How often what was asked for was at most the quantile. */
    double coverage(int quantile) {
        return covered[quantile] / (double) count;
    }

    /** What could be sold of a name on a day that was scored or came before. */
    int sold(String name, int day) {
        List<Integer> series = sales.get(name);
        return day < series.size() ? series.get(day) : 0;
    }

    private void score() {
        Forecaster forecaster = new Forecaster(MadeStand.BIN_MINUTES, Guesses.NONE);
        forecaster.hear(stand.history().outlooks());
        List<PastDay> days = stand.days();
        int first = days.size() - AHEAD - origins;
        Map<String, Double> scales = new TreeMap<>();
        for (int t = 0; t + AHEAD < days.size(); t++) {
            forecaster.learn(days.get(t));
            count(t);
            if (t >= first) {
                if (scales.isEmpty()) {
                    MadeStand.names().forEach(name -> scales.put(name, scale(name)));
                }
                List<ComingDay> next = new ArrayList<>();
                for (int h = 1; h <= AHEAD; h++) {
                    PastDay day = days.get(t + h);
                    next.add(new ComingDay(day.date(), day.hours(), day.occasions()));
                }
                for (DayForecast forecast : forecaster.forecast(next)) {
                    for (String name : MadeStand.names()) {
                        judge(forecast, t, name, scales.get(name));
                    }
                }
            }
        }
    }

    private void count(int day) {
        Map<String, Integer> counts = new TreeMap<>();
        for (PastDay.Sold sold : stand.days().get(day).sold()) {
            counts.merge(sold.item(), sold.pieces(), Integer::sum);
            sold.modifiers().forEach(name -> counts.merge(name, sold.pieces(), Integer::sum));
        }
        for (String name : MadeStand.names()) {
            sales.computeIfAbsent(name, n -> new ArrayList<>()).add(counts.getOrDefault(name, 0));
        }
    }

    private double scale(String name) {
        List<Double> series = sales.get(name).stream().map(Integer::doubleValue).toList();
        return Measures.seasonalScale(series, SEASON);
    }

    private void judge(DayForecast forecast, int origin, String name, double scale) {
        int target = origin + forecast.horizon();
        int came = stand.demand(target).getOrDefault(name, 0);
        CountMixture ours =
                forecast.item(name)
                        .map(DayForecast.Item::demand)
                        .orElseGet(() -> forecast.modifier(name).orElseThrow().demand());
        int[] values = ours.quantiles(QUANTILES);
        for (int q = 0; q < QUANTILES.length; q++) {
            covered[q] += came <= values[q] ? 1 : 0;
        }
        List<Integer> listed = Arrays.stream(values).boxed().toList();
        heard.forecast(new Ours(origin, forecast.horizon(), name, listed, came, scale));
        add(Who.OURS, values, came, scale);
        List<Integer> same = sameWeekday(name, target, origin);
        add(Who.NAIVE, naive(name, same.get(same.size() - 1)), came, scale);
        add(Who.MEAN_4, quantiles(Simple.weekdayMean(same, 4)), came, scale);
        add(Who.MEAN_8, quantiles(Simple.weekdayMean(same, 8)), came, scale);
        add(Who.ORACLE, quantiles(oracle(name, origin, target)), came, scale);
        count++;
    }

    private NegBin oracle(String name, int origin, int target) {
        LocalDate asOf = stand.days().get(origin).date();
        LocalDate date = stand.days().get(target).date();
        double rain =
                stand.history().outlooks().stream()
                        .filter(o -> o.date().equals(date) && !o.issued().isAfter(asOf))
                        .reduce((one, other) -> one.issued().isAfter(other.issued()) ? one : other)
                        .orElseThrow()
                        .probability();
        double wet = rain * (1 - rain) * 0.18 * 0.18;
        double mean = stand.oracleMean(name, origin, target, rain);
        return new NegBin(mean, stand.phi() + wet);
    }

    private List<Integer> sameWeekday(String name, int target, int origin) {
        List<Integer> same = new ArrayList<>();
        for (int t = 0; t <= origin; t++) {
            if (stand.days().get(t).date().getDayOfWeek()
                    == stand.days().get(target).date().getDayOfWeek()) {
                same.add(sales.get(name).get(t));
            }
        }
        return same;
    }

    private int[] naive(String name, int last) {
        List<Integer> series = sales.get(name);
        double squares = 0;
        for (int t = series.size() - NAIVE_DAYS; t < series.size(); t++) {
            double off = series.get(t) - series.get(t - SEASON);
            squares += off * off;
        }
        double mean = Math.max(last, 0.5);
        double phi = Math.max(0, (squares / NAIVE_DAYS - mean) / (mean * mean));
        return quantiles(new NegBin(mean, phi));
    }

    private static int[] quantiles(NegBin one) {
        return CountMixture.of(one).quantiles(QUANTILES);
    }

    private void add(Who who, int[] values, int came, double scale) {
        double sum = 0;
        for (int q = 0; q < QUANTILES.length; q++) {
            sum += Measures.pinball(QUANTILES[q], values[q], came) / scale;
        }
        losses.merge(who, sum, Double::sum);
    }
}
