package sopwell.lunch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sopwell.orders.Order;

/**
 * What start-by times and quotes are worth, on seeded lunches through the stand's real rules. The
 * aims stand beside what is asserted; {@code LunchMain} has the same over many more days.
 */
class LunchTest {
    private static final int DAYS = 16;
    private static final long SEED = 1;

    private static Figures oldestFirst;
    private static Figures byStartTimes;

    @BeforeAll
    static void haveLunch() {
        oldestFirst = Figures.of(Season.all(Truth.lunch(), false, SEED, DAYS));
        byStartTimes = Figures.of(Season.all(Truth.lunch(), true, SEED, DAYS));
    }

    @Test
    void startTimesHalveTheAgeOfFriesAndDogsAndCostTheGuestsNothing() {
        assertEquals(oldestFirst.orders(), byStartTimes.orders(), "the same guests");
        String said = oldestFirst + "\n" + byStartTimes;
        assertTrue(byStartTimes.ageSeconds() <= 0.5 * oldestFirst.ageSeconds(), said);
        assertTrue(byStartTimes.medianSeconds() <= 1.02 * oldestFirst.medianSeconds(), said);
    }

    @Test
    void fourOfFiveOrdersAreHandedWithinTheirQuote() {
        for (Figures figures : List.of(oldestFirst, byStartTimes)) {
            assertTrue(figures.within() >= 0.75 && figures.within() <= 0.85, figures.toString());
            double either = Math.abs(figures.sooner() - (1 - figures.within()) / 2);
            assertTrue(either < 0.05, "about as many sooner as later: " + figures);
        }
    }

    @Test
    void aQuoteIsMuchNarrowerThanOneRangeForEverybody() {
        for (Figures figures : List.of(oldestFirst, byStartTimes)) {
            assertTrue(figures.widthSeconds() <= 0.6 * figures.fixedSeconds(), figures.toString());
        }
    }

    @Test
    void littlesLawHoldsOnEveryDay() {
        Season season = new Season(Truth.lunch(), true);
        for (int day = 0; day < 3; day++) {
            Counts counts = new Counts(season.nextBeginMs());
            List<Served> served = season.next(500 + day, lunch -> lunch.watch(counts));
            long waitsMs = served.stream().mapToLong(Served::waitMs).sum();
            assertEquals(waitsMs, counts.areaMs, "order-milliseconds, counted in two ways");
            assertEquals(0, counts.inside);
            double lengthMs = counts.lastMs - counts.beginMs;
            double rate = served.size() / lengthMs;
            double wait = waitsMs / (double) served.size();
            assertEquals(counts.areaMs / lengthMs, rate * wait, 1e-9, "L = lambda W");
        }
    }

    @Test
    void theSameSeedIsTheSameLunch() {
        assertEquals(
                Season.all(Truth.lunch(), true, 77, 1), Season.all(Truth.lunch(), true, 77, 1));
    }

    /** How many orders are open, summed over time. */
    private static final class Counts implements Lunch.Watcher {
        private final long beginMs;
        private long lastMs;
        private long areaMs;
        private int inside;

        Counts(long beginMs) {
            this.beginMs = beginMs;
            this.lastMs = beginMs;
        }

        @Override
        public void placed(Order order) {
            goOn(order.placedAtMs());
            inside++;
        }

        @Override
        public void handed(Order order) {
            goOn(order.handedAtMs());
            inside--;
        }

        private void goOn(long nowMs) {
            areaMs += inside * (nowMs - lastMs);
            lastMs = nowMs;
        }
    }
}
