package sopwell.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sopwell.lunch.QueueMath;
import sopwell.menu.LocalText;

/** A shop of one station with guests at a steady rate is the textbooks' queue. */
class SteadyShopTest {
    private static final int RUNS = 24;
    private static final int GUESTS = 20_000;
    private static final int WARM_UP = 2_000;
    private static final long DAY = 1_700_000_000_000L;

    static List<Bench> benches(int hands) {
        return List.of(
                new Bench(
                        "line",
                        new LocalText("Line", "Línea"),
                        1,
                        List.of(new Bench.Shift(Long.MIN_VALUE, hands))));
    }

    private static double exponential(SplittableRandom random, double mean) {
        return -mean * Math.log(1 - random.nextDouble());
    }

    /** Guests who come by chance, each with one piece of work. */
    static List<Guest> guests(
            long seed, int many, double gapMs, ToDoubleFunction<SplittableRandom> work) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Guest> guests = new ArrayList<>();
        double atMs = DAY;
        for (int n = 0; n < many; n++) {
            atMs += exponential(random, gapMs);
            long at = Math.round(atMs);
            Task task = new Task(0, 1, List.of(), true, work.applyAsDouble(random), 0);
            guests.add(new Guest(n, at, at, 0, DAY, 0, List.of(task)));
        }
        return guests;
    }

    /** The wait before the work is begun, in milliseconds, of one guest. */
    static double waitMs(Guest guest, long upMs) {
        return upMs - guest.atMs() - Math.max(1, Math.round(guest.tasks().get(0).pieceMs()));
    }

    private static double mean(List<Guest> guests, int hands, int from) {
        long[] upMs = Shop.run(benches(hands), guests, new Draws(0));
        double sum = 0;
        for (int n = from; n < upMs.length; n++) {
            sum += waitMs(guests.get(n), upMs[n]);
        }
        return sum / (upMs.length - from);
    }

    /**
     * The mean of independent runs is within four standard errors of theory, and the error is small
     * enough to mean something.
     */
    private static void assertAgrees(double theoryMs, double[] runs) {
        double mean = 0;
        for (double run : runs) {
            mean += run / runs.length;
        }
        double variance = 0;
        for (double run : runs) {
            variance += (run - mean) * (run - mean) / (runs.length - 1);
        }
        double error = Math.sqrt(variance / runs.length);
        String said = "theory " + theoryMs + ", simulated " + mean + ", error " + error;
        assertTrue(Math.abs(mean - theoryMs) <= 4 * error, said);
        assertTrue(error < 0.05 * theoryMs, said);
    }

    private static double[] runs(int hands, double gapMs, ToDoubleFunction<SplittableRandom> work) {
        double[] means = new double[RUNS];
        for (int run = 0; run < RUNS; run++) {
            means[run] = mean(guests(100 + run, GUESTS, gapMs, work), hands, WARM_UP);
        }
        return means;
    }

    /**
     * R. Bronson, Operations Research (Schaum 1982): 23.14, one server, 30 an hour of 1.5 minutes
     * each wait 4.5 minutes; 24.6, three servers, 300 a year of 1/182.5 years each wait 0.0011748
     * years, here with a minute for a year's thousandth. F. Render and R. Stair by
     * freebooksummary.com: two servers, 20 an hour of 2 minutes each, 0.0833 wait on average, which
     * is a quarter of a minute each by Little's law.
     */
    @ParameterizedTest
    @CsvSource({"1, 120000, 90000, 270000", "2, 180000, 120000, 15000", "3, 200, 328.767, 70.49"})
    void randomWorkWaitsAsLongAsThePublishedQueues(
            int hands, double gapMs, double serviceMs, double publishedMs) {
        double theory = QueueMath.waitMmc(hands, 1 / gapMs, serviceMs).orElseThrow();
        assertEquals(publishedMs, theory, 0.001 * publishedMs, "as published");
        assertAgrees(theory, runs(hands, gapMs, random -> exponential(random, serviceMs)));
    }

    /** Saylor, Introduction to operations management: 1.6 wait in M/D/1 at a load of 0.8. */
    @Test
    void workThatAlwaysTakesTheSameWaitsHalfAsLong() {
        double theory = QueueMath.queueMd1(0.8).orElseThrow() * 100_000;
        assertEquals(160_000, theory, 1);
        assertAgrees(theory, runs(1, 100_000, random -> 80_000));
    }

    @Test
    void whatIsAskedForMoreThanItCanDoHasNoSteadyWaitAndKeepsGrowing() {
        assertTrue(QueueMath.waitMmc(2, 1 / 50_000.0, 120_000).isEmpty(), "no steady state");
        List<Guest> guests = guests(5, 8_000, 50_000, random -> exponential(random, 120_000));
        long[] upMs = Shop.run(benches(2), guests, new Draws(0));
        double before = -1;
        for (int quarter = 0; quarter < 4; quarter++) {
            double sum = 0;
            for (int n = quarter * 2_000; n < (quarter + 1) * 2_000; n++) {
                sum += waitMs(guests.get(n), upMs[n]) / 2_000;
            }
            assertTrue(sum > before + 3_600_000, "an hour more each quarter: " + sum);
            before = sum;
        }
    }

    /** For first come, first served (from memory: J. Kiefer and J. Wolfowitz 1955). */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 1", "3, 2", "4, 3", "5, 2", "6, 5"})
    void oneHandMoreLetsNobodyWaitLonger(long seed, int hands) {
        List<Guest> guests = guests(seed, 3_000, 40_000, r -> exponential(r, 45_000 * hands));
        long[] upMs = Shop.run(benches(hands), guests, new Draws(seed));
        long[] withMore = Shop.run(benches(hands + 1), guests, new Draws(seed));
        double gained = 0;
        for (int n = 0; n < upMs.length; n++) {
            assertTrue(withMore[n] <= upMs[n], "guest " + n);
            gained += upMs[n] - withMore[n];
        }
        assertTrue(gained > 0);
    }
}
