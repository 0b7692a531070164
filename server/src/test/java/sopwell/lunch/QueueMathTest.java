package sopwell.lunch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.kitchen.Part;
import sopwell.orders.Order;

/**
 * Published values of queues, and that the simulated kitchen in the steady state is one of them.
 */
class QueueMathTest {
    /** Runs of one steady queue; each is independent of the others. */
    private static final int RUNS = 16;

    @Test
    void erlangsFormulaGivesThePublishedValues() {
        // M. Marzolla, queueing package: (2, 1) and (3, 2); the others computed from its recursion.
        assertEquals(1 / 3.0, QueueMath.erlangC(2, 1).getAsDouble(), 1e-12);
        assertEquals(4 / 9.0, QueueMath.erlangC(3, 2).getAsDouble(), 1e-12);
        assertEquals(0.173913, QueueMath.erlangC(4, 2).getAsDouble(), 5e-7);
        assertEquals(0.587516, QueueMath.erlangC(6, 5).getAsDouble(), 5e-7);
        assertEquals(0.409180, QueueMath.erlangC(10, 8).getAsDouble(), 5e-7);
        assertTrue(QueueMath.erlangC(3, 3).isEmpty(), "no steady state");
        assertTrue(QueueMath.erlangC(3, 4).isEmpty(), "no steady state");
    }

    @Test
    void aCallCentreOfFiftyFiveHasNoOverflow() {
        // 360 calls in 30 minutes of 4 minutes each; the outputs are computed, not published.
        double perMinute = 12;
        assertEquals(0.038374, QueueMath.erlangB(55, 48), 5e-7);
        assertEquals(0.238701, QueueMath.erlangC(55, 48).getAsDouble(), 5e-7);
        double waitSeconds = 60 * QueueMath.waitMmc(55, perMinute, 4).getAsDouble();
        assertEquals(8.184, waitSeconds, 5e-4);
        double answered = 1 - QueueMath.longerThan(55, perMinute, 4, 0.25).getAsDouble();
        assertEquals(0.8459, answered, 5e-5);
    }

    @Test
    void oneAndSeveralServersGiveTheTextbooksWaits() {
        // R. Bronson, Operations Research (Schaum 1982), 23.14: 30 an hour of 1.5 minutes each.
        assertEquals(4.5, QueueMath.waitMmc(1, 0.5, 1.5).getAsDouble(), 1e-12);
        // The same, 24.6: three servers, 300 a year of 1/182.5 years each.
        assertEquals(0.29075, QueueMath.erlangC(3, 300 / 182.5).getAsDouble(), 5e-6);
        double years = QueueMath.waitMmc(3, 300, 1 / 182.5).getAsDouble();
        assertEquals(0.0011748, years, 5e-8);
        assertEquals(0.3524, 300 * years, 5e-5, "Little's law: those who wait");
    }

    @Test
    void halfAsManyWaitWhereWorkAlwaysTakesTheSame() {
        // Saylor, Introduction to operations management: Lq = load squared / 2 (1 - load).
        assertEquals(0.25, QueueMath.queueMd1(0.5).getAsDouble(), 1e-12);
        assertEquals(1.125, QueueMath.queueMd1(0.75).getAsDouble(), 1e-12);
        assertEquals(1.6, QueueMath.queueMd1(0.8).getAsDouble(), 1e-12);
        assertEquals(4.05, QueueMath.queueMd1(0.9).getAsDouble(), 1e-9);
        assertTrue(QueueMath.queueMd1(1).isEmpty(), "no steady state");
    }

    @Test
    void aSteadyKitchenOfTwoHandsIsTheTextbooksQueue() {
        int perHour = 148;
        double service = 34;
        double theory = QueueMath.waitMmc(2, perHour / 3600.0, service).getAsDouble();
        assertAgrees(theory, waits(Truth.steady(2, perHour, Truth.Work.EXPONENTIAL, 4)));
    }

    @Test
    void aSteadyKitchenWhoseWorkAlwaysTakesTheSameIsTheTextbooksQueueToo() {
        int perHour = 70;
        double service = 34;
        double load = perHour * service / 3600;
        double theory = QueueMath.queueMd1(load).getAsDouble() / (perHour / 3600.0);
        assertAgrees(theory, waits(Truth.steady(1, perHour, Truth.Work.FIXED, 6)));
    }

    /**
     * The mean of independent runs is within four standard errors of theory; by chance it is not in
     * one of some sixteen thousand trials. The error itself must be small enough to mean something.
     */
    private static void assertAgrees(double theory, double[] runs) {
        double mean = 0;
        for (double run : runs) {
            mean += run / runs.length;
        }
        double variance = 0;
        for (double run : runs) {
            variance += (run - mean) * (run - mean) / (runs.length - 1);
        }
        double error = Math.sqrt(variance / runs.length);
        String said = "theory " + theory + ", simulated " + mean + " with an error of " + error;
        assertTrue(Math.abs(mean - theory) <= 4 * error, said);
        assertTrue(error < 0.12 * theory, said);
    }

    /** The mean wait before work begins in each run, in seconds, its first orders left out. */
    private static double[] waits(Truth truth) {
        double[] means = new double[RUNS];
        Season season = new Season(truth, false);
        for (int run = 0; run < RUNS; run++) {
            List<Double> waits = new ArrayList<>();
            season.next(
                    900 + run,
                    lunch ->
                            lunch.watch(
                                    new Lunch.Watcher() {
                                        @Override
                                        public void handed(Order order) {
                                            waits.add(waited(season, order));
                                        }
                                    }));
            means[run] =
                    waits.stream()
                            .skip(50)
                            .mapToDouble(Double::doubleValue)
                            .average()
                            .orElseThrow();
        }
        return means;
    }

    private static double waited(Season season, Order order) {
        Part part = season.script().stand().kitchen().parts(order.id()).iterator().next();
        return (part.startedAtMs() - order.placedAtMs()) / 1000.0;
    }
}
