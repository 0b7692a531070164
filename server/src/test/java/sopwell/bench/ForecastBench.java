package sopwell.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import sopwell.prep.forecast.ComingDay;
import sopwell.prep.forecast.DayForecast;
import sopwell.prep.forecast.Forecaster;
import sopwell.prep.forecast.Guesses;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.Sold;

/** How long it takes to forecast sixty items fourteen days ahead from two years of days. */
public final class ForecastBench {
    private static final int ITEMS = 60;
    private static final int DAYS = 730;
    private static final int RUNS = 12;

    private ForecastBench() {}

    /** Prints the median of the runs after the first, and the time to read the same days alone. */
    public static void main(String[] args) {
        History history = history();
        List<Double> millis = new ArrayList<>();
        List<Double> floor = new ArrayList<>();
        double kept = 0;
        for (int run = 0; run < RUNS; run++) {
            long from = System.nanoTime();
            kept += read(history);
            long between = System.nanoTime();
            kept += forecast(history);
            long to = System.nanoTime();
            if (run >= RUNS / 2) {
                floor.add((between - from) / 1e6);
                millis.add((to - between) / 1e6);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%d items, %d days, 14 ahead: %.0f ms; reading the lines alone %.1f ms (%.0f)%n",
                ITEMS,
                DAYS,
                median(millis),
                median(floor),
                kept);
    }

    private static double median(List<Double> some) {
        return some.stream().sorted().skip(some.size() / 2).findFirst().orElseThrow();
    }

    private static double read(History history) {
        double sum = 0;
        for (PastDay day : history.days()) {
            for (Sold sold : day.sold()) {
                sum += sold.pieces();
            }
        }
        return sum;
    }

    private static double forecast(History history) {
        List<ComingDay> next = new ArrayList<>();
        LocalDate last = history.days().get(DAYS - 1).date();
        for (int h = 1; h <= Forecaster.HORIZON_MAX; h++) {
            next.add(ComingDay.usual(last.plusDays(h)));
        }
        double sum = 0;
        for (DayForecast day : Forecaster.of(history, Guesses.NONE).forecast(next)) {
            for (DayForecast.Item item : day.items()) {
                sum += item.demand().quantiles(0.5, 0.75, 0.9, 0.95)[3];
            }
        }
        return sum;
    }

    private static History history() {
        SplittableRandom dice = new SplittableRandom(1);
        List<PastDay> days = new ArrayList<>();
        LocalDate date = LocalDate.of(2024, 1, 1);
        for (int d = 0; d < DAYS; d++) {
            List<Sold> sold = new ArrayList<>();
            for (int n = 0; n < 360; n++) {
                int item = Math.min(dice.nextInt(ITEMS), dice.nextInt(ITEMS));
                List<String> ways = item < 10 && dice.nextBoolean() ? List.of("hot") : List.of();
                sold.add(new Sold(42 + dice.nextInt(38), "item " + item, "", ways, 1));
            }
            Hours hours = new Hours(630, 1_200);
            days.add(
                    new PastDay(
                            date.plusDays(d), true, hours, sold, List.of(), List.of(), List.of()));
        }
        return new History(15, days, List.of());
    }
}
