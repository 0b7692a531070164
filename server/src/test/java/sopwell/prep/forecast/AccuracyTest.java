package sopwell.prep.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sopwell.prep.forecast.PastDay.Hours;
import sopwell.prep.forecast.PastDay.OutSpan;
import sopwell.prep.forecast.PastDay.Sold;

/** How past weeks were forecast, against figures worked by hand. */
class AccuracyTest {
    private static final LocalDate TUESDAY = LocalDate.of(2026, 1, 6);
    private static final int[] BEEF = {10, 12, 14, 16, 18, 20, 22, 24, 26, 27};

    /**
     * Ten Tuesdays, the last two judged. By hand: a Tuesday differed by 2 from the one before; last
     * week misses 26 by 2 and 27 by 1; the mean of four (18, 20, 22, 24) is 21 and misses by 5,
     * that of (20, 22, 24, 26) is 23 and misses by 4; of eight (10 to 24) 17, by 9, and (12 to 26)
     * 19, by 8.
     */
    @Test
    void theSimpleRulesMissByWhatIsWorkedByHand() {
        Accuracy.Line beef = tuesdays(List.of(), 2).item("beef").orElseThrow();
        assertEquals(2, beef.days());
        assertEquals(0, beef.leftOut());
        assertEquals(53, beef.sold());
        assertEquals(1.5, beef.lastWeek().absolute(), 1e-12);
        assertEquals(4.5, beef.meanOf4().absolute(), 1e-12);
        assertEquals(8.5, beef.meanOf8().absolute(), 1e-12);
    }

    /** Pinball by its definition from the rule's quantiles, over the mean difference of 2. */
    @Test
    void thePinballLossIsScaledByTheDifferenceToTheWeekBefore() {
        Accuracy.Line beef = tuesdays(List.of(), 1).item("beef").orElseThrow();
        NegBin rule = Simple.weekdayMean(List.of(12, 14, 16, 18, 20, 22, 24, 26), 4);
        double sum = 0;
        for (double q : new double[] {0.5, 0.75, 0.9, 0.95}) {
            int value = rule.quantile(q);
            sum += 27 >= value ? q * (27 - value) : (1 - q) * (value - 27);
        }
        assertEquals(sum / 4 / 2, beef.meanOf4().pinball(), 1e-12);
        boolean within = 27 >= rule.quantile(0.05) && 27 <= rule.quantile(0.95);
        assertEquals(within ? 1 : 0, beef.meanOf4().covered(), 0);
    }

    /** Nothing of the judged day or later is known: the same as a forecaster of the days before. */
    @Test
    void oursIsWhatWasForecastFromTheDaysBefore() {
        Accuracy judged = tuesdays(List.of(), 1);
        Forecaster forecaster = new Forecaster(15, Guesses.NONE);
        List<PastDay> days = days(List.of());
        days.subList(0, 9).forEach(forecaster::learn);
        DayForecast last = forecaster.forecast(List.of(ComingDay.usual(days.get(9).date()))).get(0);
        int middle = last.item("beef").orElseThrow().demand().quantile(0.5);
        assertEquals(Math.abs(middle - 27), judged.items().get(0).ours().absolute(), 0);
        assertEquals(judged, tuesdays(List.of(), 1));
    }

    @Test
    void daysOnWhichItRanOutAreNotJudged() {
        Accuracy rolls = tuesdays(List.of(new OutSpan("roll", 800, 1_200)), 2);
        assertEquals(1, rolls.total().days());
        assertEquals(1, rolls.total().leftOut());
        assertEquals(1, rolls.item("beef").orElseThrow().days());
        Accuracy other = tuesdays(List.of(new OutSpan("dog", 800, 1_200)), 2);
        assertEquals(1, other.total().days());
        assertEquals(2, other.item("beef").orElseThrow().days());
        assertEquals(1, other.item("dog").orElseThrow().days());
    }

    @Test
    void fartherAheadIsForecastFromEarlierDays() {
        History history = new History(15, days(List.of()), List.of());
        Accuracy two = Accuracy.of(history, Guesses.NONE, new Accuracy.Asked(1, 2)).orElseThrow();
        assertEquals(3, two.item("beef").orElseThrow().lastWeek().absolute(), 1e-12);
    }

    @Test
    void withoutDaysNothingIsJudged() {
        Accuracy.Asked asked = new Accuracy.Asked(4, 1);
        assertEquals(Optional.empty(), Accuracy.of(History.none(15), Guesses.NONE, asked));
        History one = new History(15, days(List.of()).subList(0, 1), List.of());
        assertTrue(Accuracy.of(one, Guesses.NONE, asked).isEmpty());
    }

    /**
     * @param outs of the day before the last
     */
    private static Accuracy tuesdays(List<OutSpan> outs, int weeks) {
        History history = new History(15, days(outs), List.of());
        Accuracy.Asked asked = new Accuracy.Asked(weeks, 1);
        return Accuracy.of(history, Guesses.NONE, asked).orElseThrow();
    }

    private static List<PastDay> days(List<OutSpan> outs) {
        List<PastDay> days = new ArrayList<>();
        for (int week = 0; week < BEEF.length; week++) {
            days.add(
                    new PastDay(
                            TUESDAY.plusWeeks(week),
                            true,
                            new Hours(660, 1_200),
                            List.of(
                                    new Sold(48, "beef", "", List.of(), BEEF[week]),
                                    new Sold(50, "dog", "", List.of(), 3)),
                            week == BEEF.length - 2 ? outs : List.of(),
                            List.of(),
                            List.of()));
        }
        return days;
    }
}
