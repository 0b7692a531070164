package sopwell.prep.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/** What must hold of every forecast. */
class ForecastLawsTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final Hours HOURS = new Hours(600, 1_200);

    @Test
    void withoutWidthACountIsPoissons() {
        for (int k = 0; k < 30; k++) {
            double poisson = k * Math.log(7.5) - 7.5 - Gammas.logFactorial(k);
            assertEquals(poisson, new NegBin(7.5, 1e-10).logPmf(k), 1e-9);
            assertEquals(poisson, new NegBin(7.5, 1e-7).logPmf(k), 1e-4);
        }
    }

    @Test
    void whatWasExpectedLeavesTheLevelAsItWas() {
        for (double exposure : new double[] {0.11, 0.4, 0.83, 1}) {
            Level level = new Level(10, 300, 7);
            double before = level.now();
            level.see(before * exposure, exposure);
            assertEquals(before, level.now(), 1e-12);
        }
    }

    @Test
    void closedDaysChangeNothing() {
        List<PastDay> days = days(40, 1);
        List<PastDay> with = new ArrayList<>(days.subList(0, 30));
        List<PastDay> without = new ArrayList<>(with);
        with.add(PastDay.closed(FIRST.plusDays(30)));
        without.addAll(days.subList(31, 40));
        with.addAll(days.subList(31, 40));
        assertEquals(written(without), written(with));
    }

    @Test
    void theSameDaysGiveTheSameNumbers() {
        assertEquals(written(days(60, 2)), written(days(60, 2)));
    }

    @Test
    void theOrderOfTheLinesOfADayIsIrrelevant() {
        List<PastDay> shuffled = new ArrayList<>();
        for (PastDay day : days(60, 3)) {
            List<Sold> sold = new ArrayList<>(day.sold());
            Collections.shuffle(sold, new Random(7));
            shuffled.add(
                    new PastDay(
                            day.date(), true, day.hours(), sold, day.outs(), List.of(), List.of()));
        }
        assertEquals(written(days(60, 3)), written(shuffled));
    }

    @Test
    void itemsAddUpToTheTotal() {
        for (DayForecast day : forecast(days(80, 4))) {
            double sum = day.items().stream().mapToDouble(i -> i.planned().mean()).sum();
            assertEquals(day.total().mean(), sum, 1e-9 * sum);
        }
    }

    @Test
    void quantilesRiseWithTheirShare() {
        for (DayForecast day : forecast(days(50, 5))) {
            for (DayForecast.Item item : day.items()) {
                int before = 0;
                for (double q = 0.01; q < 1; q += 0.01) {
                    int now = item.demand().quantile(q);
                    assertTrue(now >= before, item.item() + " at " + q);
                    before = now;
                }
            }
        }
    }

    @Test
    void aSellOutNeverLowersWhatIsForecast() {
        for (int seed = 10; seed < 20; seed++) {
            List<PastDay> plain = days(60, seed);
            List<PastDay> told = new ArrayList<>(plain);
            PastDay last = plain.get(59);
            List<Sold> early =
                    last.sold().stream()
                            .filter(s -> !s.item().equals("beef") || s.bin() < 60)
                            .toList();
            plain = new ArrayList<>(plain.subList(0, 59));
            plain.add(withOuts(last, early, List.of()));
            told.set(59, withOuts(last, early, List.of(new OutSpan("beef", 900, 1_200))));
            double without = mean(plain, "beef");
            double with = mean(told, "beef");
            assertTrue(with >= without, seed + ": " + with + " < " + without);
        }
    }

    /** Half of the beef is large, but from three on it is out on every other day. */
    @Test
    void aSizeThatWasOutIsNoLessLikedAndItsItemWasNotOut() {
        List<PastDay> days = new ArrayList<>();
        for (int d = 0; d < 40; d++) {
            boolean isOut = d % 2 == 1;
            List<Sold> sold = new ArrayList<>();
            for (int bin = 20; bin < 40; bin++) {
                if (!isOut || bin < 30) {
                    sold.add(new Sold(bin, "beef", "large", List.of(), 5));
                }
                sold.add(new Sold(bin, "beef", "small", List.of(), 5));
            }
            List<OutSpan> outs = isOut ? List.of(new OutSpan("beef large", 900, 1_200)) : List.of();
            days.add(new PastDay(FIRST.plusDays(d), true, HOURS, sold, outs, List.of(), List.of()));
        }
        Forecaster forecaster = Forecaster.of(new History(30, days, List.of()), Guesses.NONE);
        DayForecast next = forecaster.forecast(List.of(ComingDay.usual(FIRST.plusDays(40)))).get(0);
        DayForecast.Part large =
                next.sizes().stream()
                        .filter(size -> size.name().equals("beef/large"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(0.5, large.share(), 0.02);
        assertTrue(next.total().mean() < 205, "small ones were sold all day");
    }

    @Test
    void withoutHistoryTheOwnersGuessesAreForecast() {
        Guesses guesses = new Guesses(Map.of("beef", 120.0, "dog", 30.0));
        Forecaster fresh = Forecaster.of(History.none(15), guesses);
        DayForecast day = fresh.forecast(List.of(ComingDay.usual(FIRST))).get(0);
        assertEquals(150, day.total().mean(), 1e-9);
        assertEquals(120, day.item("beef").orElseThrow().planned().mean(), 1e-9);
        assertEquals(Why.Basis.GUESSES, day.why().basis());
        Forecaster nobody = Forecaster.of(History.none(15), Guesses.NONE);
        assertEquals(List.of(), nobody.forecast(List.of(ComingDay.usual(FIRST))));
    }

    @Test
    void aWeekIsFewDaysAndAYearOffIsLongAgo() {
        Forecaster week = Forecaster.of(history(days(6, 6)), Guesses.NONE);
        DayForecast next = week.forecast(List.of(ComingDay.usual(FIRST.plusDays(6)))).get(0);
        assertEquals(Why.Basis.FEW_DAYS, next.why().basis());
        assertTrue(next.total().mean() > 50 && next.total().mean() < 150);
        Forecaster years = Forecaster.of(history(days(100, 6)), Guesses.NONE);
        DayForecast soon = years.forecast(List.of(ComingDay.usual(FIRST.plusDays(100)))).get(0);
        DayForecast late = years.forecast(List.of(ComingDay.usual(FIRST.plusDays(464)))).get(0);
        assertEquals(Why.Basis.LONG_AGO, late.why().basis());
        assertTrue(late.total().phi() > soon.total().phi());
    }

    @Test
    void whatIsDrawnFromACountFallsEvenlyOverItsDistribution() {
        SplittableRandom dice = new SplittableRandom(11);
        NegBin count = new NegBin(40, 0.05);
        double[] places = new double[2_000];
        for (int i = 0; i < places.length; i++) {
            int drawn = count.quantile(Math.min(0.999999, Math.max(1e-6, dice.nextDouble())));
            double below = drawn == 0 ? 0 : count.cdf(drawn - 1);
            places[i] = below + dice.nextDouble() * (count.cdf(drawn) - below);
        }
        java.util.Arrays.sort(places);
        double farthest = 0;
        for (int i = 0; i < places.length; i++) {
            farthest = Math.max(farthest, Math.abs(places[i] - (i + 0.5) / places.length));
        }
        assertTrue(farthest < 1.628 / Math.sqrt(places.length), "KS " + farthest);
    }

    private static double mean(List<PastDay> days, String item) {
        return forecast(days).get(5).item(item).orElseThrow().demand().mean();
    }

    private static PastDay withOuts(PastDay day, List<Sold> sold, List<OutSpan> outs) {
        return new PastDay(day.date(), true, day.hours(), sold, outs, List.of(), List.of());
    }

    private static List<PastDay> days(int count, long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        List<PastDay> days = new ArrayList<>();
        for (int d = 0; d < count; d++) {
            List<Sold> sold = new ArrayList<>();
            for (int bin = 40; bin < 80; bin++) {
                sold.add(new Sold(bin, "beef", "large", List.of("hot"), 1 + dice.nextInt(2)));
                sold.add(new Sold(bin, "dog", "", List.of(), 1));
            }
            days.add(
                    new PastDay(
                            FIRST.plusDays(d), true, HOURS, sold, List.of(), List.of(), List.of()));
        }
        return days;
    }

    private static History history(List<PastDay> days) {
        return new History(15, days, List.of());
    }

    private static List<DayForecast> forecast(List<PastDay> days) {
        LocalDate last = days.get(days.size() - 1).date();
        List<ComingDay> next = new ArrayList<>();
        for (int h = 1; h <= Forecaster.HORIZON_MAX; h++) {
            next.add(ComingDay.usual(last.plusDays(h)));
        }
        return Forecaster.of(history(days), Guesses.NONE).forecast(next);
    }

    /** Every figure, to the last bit. */
    private static String written(List<PastDay> days) {
        StringBuilder all = new StringBuilder();
        for (DayForecast day : forecast(days)) {
            all.append(day.total().mean()).append(' ').append(day.total().variance());
            for (DayForecast.Item item : day.items()) {
                all.append(item.item()).append(item.demand().mean()).append(' ');
                all.append(item.demand().variance()).append('\n');
            }
            for (DayForecast.Part part : day.modifiers()) {
                all.append(part.name()).append(part.demand().variance()).append('\n');
            }
        }
        return all.toString();
    }
}
