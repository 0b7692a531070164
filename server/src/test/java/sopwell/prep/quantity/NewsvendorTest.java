package sopwell.prep.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.prep.quantity.PathCost.Window;
import sopwell.prep.quantity.SeenDemand.Seen;

/** Against textbooks and against values computed with an independent implementation. */
class NewsvendorTest {
    private static final double EXACT = 1e-6;

    /** Snyder and Shen, Fundamentals of Supply Chain Theory, example 4.3. */
    @Test
    void normalDemandAsInSnyderAndShen() {
        Demand demand = new NormalDemand(50, 8);
        Stakes stakes = Stakes.oneDay(".70", ".18");
        assertEquals(.795455, stakes.fractile(), EXACT);
        assertEquals(56.603956, Newsvendor.best(demand, stakes), EXACT);
        assertEquals(1.997605, Newsvendor.cost(demand, stakes, 56.603956), EXACT);
        assertEquals(7.356132, Newsvendor.cost(demand, stakes, 40), EXACT);
        assertEquals(2.156132, Newsvendor.cost(demand, stakes, 60), EXACT);
    }

    /** Snyder and Shen, problem 4.1. */
    @Test
    void widerNormalDemandAsInSnyderAndShen() {
        Demand demand = new NormalDemand(900, 60);
        Stakes stakes = Stakes.oneDay("79", "43");
        assertEquals(.647541, stakes.fractile(), EXACT);
        assertEquals(922.721404, Newsvendor.best(demand, stakes), EXACT);
        double best = Newsvendor.best(demand, stakes);
        assertEquals(2718.196782, Newsvendor.cost(demand, stakes, best), EXACT);
    }

    /** Snyder and Shen, example 4.7. */
    @Test
    void poissonDemandAsInSnyderAndShen() {
        Demand demand = CountDemand.poisson(6);
        Stakes stakes = Stakes.oneDay("4", "1");
        assertEquals(.743980, demand.atMost(7), EXACT);
        assertEquals(.847237, demand.atMost(8), EXACT);
        assertEquals(8, Newsvendor.best(demand, stakes));
        assertEquals(3.570107, Newsvendor.cost(demand, stakes, 8), EXACT);
        assertEquals(6.590296, Newsvendor.cost(demand, stakes, 5), EXACT);
        assertEquals(3.850208, Newsvendor.cost(demand, stakes, 7), EXACT);
        assertEquals(3.806294, Newsvendor.cost(demand, stakes, 9), EXACT);
    }

    /** Snyder and Shen, problem 4.8a. */
    @Test
    void dearPoissonDemandAsInSnyderAndShen() {
        Demand demand = CountDemand.poisson(18);
        Stakes stakes = Stakes.oneDay("270", "200");
        assertEquals(19, Newsvendor.best(demand, stakes));
        assertEquals(786.088441, Newsvendor.cost(demand, stakes, 19), EXACT);
        assertEquals(1445.751, Newsvendor.cost(demand, stakes, 13), 1e-3);
    }

    /** A discrete example of an industrial engineering course: price 10, cost 4, salvage 1. */
    @Test
    void tieGoesToTheSmallerQuantity() {
        Demand demand =
                new SeenDemand(
                        List.of(
                                new Seen(10, 1),
                                new Seen(12, 1),
                                new Seen(14, 2),
                                new Seen(16, 1),
                                new Seen(20, 1)));
        Stakes stakes = Stakes.oneDay("6", "3");
        assertEquals(14, Newsvendor.best(demand, stakes));
        double most = 6 * demand.mean();
        double[] amounts = {10, 12, 14, 16, 18, 20};
        double[] profits = {60, 69, 75, 75, 72, 69};
        for (int i = 0; i < amounts.length; i++) {
            assertEquals(profits[i], most - Newsvendor.cost(demand, stakes, amounts[i]), EXACT);
        }
    }

    /** The same example, and Snyder and Shen's 4.3, as the plan decides: by playing paths. */
    @Test
    void whatThePlanPlaysThroughComesToTheSame() {
        double[][] course = {{10}, {12}, {14}, {14}, {16}, {20}};
        Window oneDay = new Window(0, 0, 0);
        PathCost played = new PathCost(course, List.of(), oneDay);
        Stakes six = Stakes.oneDay("6", "3");
        double most = 6 * 86 / 6.0;
        assertEquals(75, most - played.of(14, six), EXACT);
        assertEquals(72, most - played.of(18, six), EXACT);
        for (long guess : new long[] {0, 14, 30}) {
            assertEquals(14, played.choose(1, six, guess, 99).lots());
        }
        double[][] gamma = DemandPaths.ofDays(1).of(List.of(50.0), List.of(64.0), 0);
        Stakes snyder = Stakes.oneDay(".70", ".18");
        LotChoice choice = new PathCost(gamma, List.of(), oneDay).choose(1, snyder, 0, 999);
        assertEquals(56.6, (double) choice.lots(), 1);
        assertEquals(1.9976, choice.cost(), .1);
    }

    /** Cachon and Terwiesch, Matching Supply with Demand, problem 12.1. */
    @Test
    void normalDemandAsInCachonAndTerwiesch() {
        Demand demand = new NormalDemand(200, 80);
        assertEquals(.1056, demand.atMost(100), 5e-5);
        assertEquals(.3829, demand.atMost(240) - demand.atMost(160), 5e-5);
        assertEquals(234.46, Newsvendor.best(demand, Stakes.oneDay("8", "4")), .005);
        assertEquals(.5714, Stakes.oneDay("4", "3").fractile(), 5e-5);
    }

    /** Computed with an independent implementation. */
    @Test
    void negativeBinomialRoll() {
        Demand demand = CountDemand.negativeBinomial(40, .05);
        assertEquals(120, demand.variance(), EXACT);
        assertEquals(.8342916098911658, demand.atMost(50), EXACT);
        assertEquals(39, demand.quantile(.5));
        assertEquals(47, demand.quantile(.75));
        assertEquals(54, demand.quantile(.9));
        assertEquals(59, demand.quantile(.95));
        Stakes cheap = Stakes.oneDay("5.40", ".55");
        assertEquals(.907563, cheap.fractile(), EXACT);
        assertEquals(55, Newsvendor.best(demand, cheap));
        assertEquals(11.8236, Newsvendor.cost(demand, cheap, 55), 5e-5);
        assertEquals(11.8657, Newsvendor.cost(demand, cheap, 54), 5e-5);
        assertEquals(11.8571, Newsvendor.cost(demand, cheap, 56), 5e-5);
        assertEquals(.98498, Newsvendor.fillRate(demand, 55), 5e-6);
        Stakes dear = Stakes.oneDay("5.40", "2.70");
        assertEquals(44, Newsvendor.best(demand, dear));
        assertEquals(33.0758, Newsvendor.cost(demand, dear, 44), 5e-5);
        assertEquals(33.2034, Newsvendor.cost(demand, dear, 43), 5e-5);
        assertEquals(33.2026, Newsvendor.cost(demand, dear, 45), 5e-5);
        assertEquals(.93125, Newsvendor.fillRate(demand, 44), 5e-6);
    }

    /** Computed with an independent implementation. */
    @Test
    void lotsOfTwelveAreChosenByCost() {
        Demand demand = CountDemand.negativeBinomial(40, .05);
        Stakes stakes = Stakes.oneDay("5.40", ".55");
        double[] costs = {87.5027, 36.6084, 14.2242, 12.5928, 17.7772, 24.2145};
        for (int i = 0; i < costs.length; i++) {
            assertEquals(costs[i], Newsvendor.cost(demand, stakes, 12.0 * (i + 2)), 5e-5);
        }
        LotChoice choice = Newsvendor.inLots(demand, stakes, 0, 12);
        assertEquals(5, choice.lots());
        assertEquals(4, choice.otherLots());
        assertEquals(14.2242, choice.otherCost(), 5e-5);
    }

    @Test
    void quantityRisesWithTheCostOfShortageAndFallsWithThatOfWaste() {
        SplittableRandom dice = new SplittableRandom(11);
        for (int n = 0; n < 300; n++) {
            Demand demand =
                    CountDemand.negativeBinomial(dice.nextDouble(.1, 200), dice.nextDouble(.2));
            long cu = dice.nextLong(1, 500);
            long co = dice.nextLong(1, 500);
            double q = Newsvendor.best(demand, stakes(cu, co));
            assertTrue(Newsvendor.best(demand, stakes(cu + 50, co)) >= q, "case " + n);
            assertTrue(Newsvendor.best(demand, stakes(cu, co + 50)) <= q, "case " + n);
            double cost = Newsvendor.cost(demand, stakes(cu, co), q);
            assertTrue(cost <= Newsvendor.cost(demand, stakes(cu, co), q + 1) + 1e-9);
            assertTrue(cost <= Newsvendor.cost(demand, stakes(cu, co), q - 1) + 1e-9);
        }
    }

    @Test
    void lotsByCostAreNeverBeatenByAnyOtherNumber() {
        SplittableRandom dice = new SplittableRandom(12);
        for (int n = 0; n < 200; n++) {
            Demand demand = GammaDemand.of(dice.nextDouble(1, 500), dice.nextDouble(1, 9_000));
            Stakes stakes = stakes(dice.nextLong(1, 99), dice.nextLong(1, 99));
            double lot = dice.nextDouble(1, 120);
            double onHand = dice.nextDouble(0, 100);
            LotChoice choice = Newsvendor.inLots(demand, stakes, onHand, lot);
            for (int lots = 0; lots < 60; lots++) {
                double other = Newsvendor.cost(demand, stakes, onHand + lots * lot);
                assertTrue(choice.cost() <= other + 1e-7, "case " + n + ", lots " + lots);
            }
        }
    }

    private static Stakes stakes(long cu, long co) {
        return Stakes.oneDay(Long.toString(cu), Long.toString(co));
    }
}
