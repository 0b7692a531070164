package sopwell.prep.forecast;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import sopwell.Check;
import sopwell.prep.forecast.PastDay.Hours;

/** Forecasts past open days from an earlier one and judges them. Belongs to one thread. */
final class Judging {
    private static final String TOTAL = "total";
    private static final int WEEK = 7;

    private final History history;
    private final Accuracy.Asked asked;
    private final List<PastDay> open;
    private final TreeSet<String> items = new TreeSet<>();
    private final Map<String, Series> series = new TreeMap<>();
    private final Series total = new Series();

    Judging(History history, Accuracy.Asked asked) {
        Check.that(asked.weeks() >= 1, "weeks to judge are 1 or more");
        Check.that(
                asked.ahead() >= 1 && asked.ahead() <= Forecaster.HORIZON_MAX,
                "a forecast goes fourteen open days ahead");
        this.history = history;
        this.asked = asked;
        this.open = history.days().stream().filter(PastDay::open).toList();
    }

    /** What was sold of one thing, from the day on which it was first sold, and how it was met. */
    private static final class Series {
        private final List<LocalDate> dates = new ArrayList<>();
        private final List<Integer> counts = new ArrayList<>();
        private final Tally ours = new Tally();
        private final Tally lastWeek = new Tally();
        private final Tally meanOf4 = new Tally();
        private final Tally meanOf8 = new Tally();
        private double scale;
        private int sold;
        private int leftOut;

        void add(LocalDate date, int count) {
            if (count > 0 || !dates.isEmpty()) {
                dates.add(date);
                counts.add(count);
            }
        }

        /** Counts of one weekday up to a day, oldest first. */
        List<Integer> like(LocalDate date, LocalDate upTo) {
            List<Integer> like = new ArrayList<>();
            for (int i = 0; i < dates.size() && !dates.get(i).isAfter(upTo); i++) {
                if (dates.get(i).getDayOfWeek() == date.getDayOfWeek()) {
                    like.add(counts.get(i));
                }
            }
            return like;
        }

        /** The mean difference between a day and the one of its weekday before; 1 for none. */
        void setScale(LocalDate before) {
            double sum = 0;
            int pairs = 0;
            for (int weekday = 0; weekday < WEEK; weekday++) {
                List<Integer> like = like(before.minusDays(weekday + 1L), before.minusDays(1));
                for (int i = 1; i < like.size(); i++) {
                    sum += Math.abs(like.get(i) - like.get(i - 1));
                    pairs++;
                }
            }
            scale = sum > 0 ? sum / pairs : 1;
        }

        Accuracy.Line line(String name) {
            return new Accuracy.Line(
                    name,
                    sold,
                    ours.days,
                    leftOut,
                    ours.score(scale),
                    lastWeek.score(scale),
                    meanOf4.score(scale),
                    meanOf8.score(scale));
        }
    }

    /** Sums over the days of one way of forecasting. */
    private static final class Tally {
        private int days;
        private double absolute;
        private double pinball;
        private int covered;

        void add(CountMixture forecast, double middle, int came) {
            days++;
            absolute += Math.abs(middle - came);
            for (double q : Accuracy.QUANTILES) {
                double loss = Measures.pinball(q, forecast.quantile(q), came);
                pinball += loss / Accuracy.QUANTILES.size();
            }
            boolean low = came < forecast.quantile(Accuracy.LOW);
            covered += low || came > forecast.quantile(Accuracy.HIGH) ? 0 : 1;
        }

        Accuracy.Score score(double scale) {
            double n = Math.max(1, days);
            return new Accuracy.Score(absolute / n, pinball / n / scale, covered / n);
        }
    }

    Optional<Accuracy> judge(Guesses guesses) {
        if (open.size() <= asked.ahead()) {
            return Optional.empty();
        }
        open.forEach(day -> day.sold().forEach(sold -> items.add(sold.item())));
        items.forEach(item -> series.put(item, new Series()));
        open.forEach(this::count);
        LocalDate last = open.get(open.size() - 1).date();
        LocalDate first = last.minusDays((long) WEEK * asked.weeks() - 1);
        total.setScale(first);
        series.values().forEach(one -> one.setScale(first));
        walk(guesses, first);
        Comparator<Accuracy.Line> most = Comparator.comparingInt(Accuracy.Line::sold);
        List<Accuracy.Line> lines =
                series.entrySet().stream()
                        .map(one -> one.getValue().line(one.getKey()))
                        .filter(line -> line.days() > 0)
                        .sorted(most.reversed().thenComparing(Accuracy.Line::name))
                        .toList();
        Accuracy.Line all = total.line(TOTAL);
        return all.days() == 0 && lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Accuracy(all, lines));
    }

    private void count(PastDay day) {
        Map<String, Integer> counts = counts(day);
        total.add(day.date(), counts.values().stream().mapToInt(Integer::intValue).sum());
        series.forEach((item, one) -> one.add(day.date(), counts.getOrDefault(item, 0)));
    }

    private static Map<String, Integer> counts(PastDay day) {
        Map<String, Integer> counts = new HashMap<>();
        day.sold().forEach(sold -> counts.merge(sold.item(), sold.pieces(), Integer::sum));
        return counts;
    }

    /** Learns day after day; each is judged by what was forecast so many open days before. */
    private void walk(Guesses guesses, LocalDate first) {
        Forecaster forecaster = new Forecaster(history.binMinutes(), guesses);
        forecaster.hear(history.outlooks());
        for (int at = 0; at + asked.ahead() < open.size(); at++) {
            forecaster.learn(open.get(at));
            PastDay target = open.get(at + asked.ahead());
            if (!target.date().isBefore(first)) {
                List<ComingDay> next = new ArrayList<>();
                for (PastDay day : open.subList(at + 1, at + asked.ahead() + 1)) {
                    boolean named = !day.occasions().isEmpty();
                    Hours hours = named ? day.hours() : Hours.UNKNOWN;
                    next.add(new ComingDay(day.date(), hours, day.occasions()));
                }
                Deque<DayForecast> forecasts = new ArrayDeque<>(forecaster.forecast(next));
                judge(open.get(at).date(), target, forecasts.getLast());
            }
        }
    }

    private void judge(LocalDate origin, PastDay target, DayForecast forecast) {
        Map<String, Integer> came = counts(target);
        int all = came.values().stream().mapToInt(Integer::intValue).sum();
        if (target.outs().isEmpty()) {
            judge(total, new Met(origin, target.date(), all), Optional.of(forecast.total()));
        } else {
            total.leftOut++;
        }
        series.forEach(
                (item, one) -> {
                    if (mayHaveRunOut(item, target)) {
                        one.leftOut++;
                    } else {
                        Met met = new Met(origin, target.date(), came.getOrDefault(item, 0));
                        judge(one, met, forecast.item(item).map(DayForecast.Item::demand));
                    }
                });
    }

    /** The day forecast from, the day, and what came. */
    private record Met(LocalDate origin, LocalDate date, int came) {}

    private static void judge(Series one, Met met, Optional<CountMixture> ours) {
        List<Integer> like = one.like(met.date(), met.origin());
        if (like.isEmpty() || ours.isEmpty()) {
            one.leftOut++;
            return;
        }
        one.sold += met.came();
        one.ours.add(ours.get(), ours.get().quantile(0.5), met.came());
        simple(one.lastWeek, Simple.lastWeek(like), met.came());
        simple(one.meanOf4, Simple.weekdayMean(like, 4), met.came());
        simple(one.meanOf8, Simple.weekdayMean(like, 8), met.came());
    }

    private static void simple(Tally tally, NegBin rule, int came) {
        tally.add(CountMixture.of(rule), rule.mean(), came);
    }

    /** What is no other item's name may be something that this one needs. */
    private boolean mayHaveRunOut(String item, PastDay day) {
        return day.outs().stream()
                .map(PastDay.OutSpan::what)
                .anyMatch(what -> !isOther(item, what));
    }

    private boolean isOther(String item, String what) {
        return items.stream()
                .anyMatch(
                        other ->
                                !other.equals(item)
                                        && (what.equals(other) || what.startsWith(other + " ")));
    }
}
