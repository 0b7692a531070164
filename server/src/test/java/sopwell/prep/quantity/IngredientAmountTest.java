package sopwell.prep.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import sopwell.prep.quantity.PathCost.Lot;
import sopwell.prep.quantity.PathCost.Window;
import sopwell.prep.quantity.PieceUse.Way;

/** All values computed with an independent implementation. */
class IngredientAmountTest {
    private static final PieceUse BEEF = PieceUse.of(List.of(new Way(.62, 170), new Way(.13, 110)));

    @Test
    void beefOfADay() {
        assertEquals(119.7, BEEF.mean(), 1e-9);
        assertEquals(19_491, BEEF.square(), 1e-9);
        Demand day = BEEF.day(150, .03);
        assertEquals(17_955, day.mean(), 1e-6);
        assertEquals(12_595_110.75, day.variance(), 1e-6);
        double[] shares = {.5, .75, .9, .95};
        double[] grams = {17_721.7, 20_204.7, 22_626.8, 24_163.3};
        for (int i = 0; i < shares.length; i++) {
            assertEquals(grams[i], day.quantile(shares[i]), .05);
        }
    }

    @Test
    void roastsAreRoundedByCostAndNotUp() {
        Demand day = BEEF.day(150, .03);
        Stakes stakes = Stakes.oneDay(".021", ".0115");
        double roast = 5_500 * .95 * .72 * .97;
        double[] costs = {136.223, 71.141, 43.851, 58.944, 94.653};
        double[] enough = {.02114, .22074, .61761, .89208, .98128};
        for (int i = 0; i < costs.length; i++) {
            double have = 4_200 + (i + 2) * roast;
            assertEquals(costs[i], Newsvendor.cost(day, stakes, have), 5e-4);
            assertEquals(enough[i], day.atMost(have), 5e-6);
        }
        assertEquals(4, Newsvendor.inLots(day, stakes, 4_200, roast).lots());
    }

    @Test
    void weekOfRelish() {
        Protection week =
                Protection.ofCounts(List.of(48.0, 52.0, 55.0, 70.0, 85.0, 60.0, 50.0), .02, .01);
        assertEquals(420, week.mean(), 1e-9);
        assertEquals(2_709.16, week.variance(), 1e-6);
        assertEquals(.0129771, week.phi(), 5e-8);
        double[] shares = {.5, .9, .95, .97};
        double[] counts = {418, 488, 509, 523};
        for (int i = 0; i < shares.length; i++) {
            assertEquals(counts[i], week.count().quantile(shares[i]));
        }
        assertEquals(15_690, 30 * week.count().quantile(.97));
        Stakes stakes = Stakes.oneDay("97", "3");
        assertEquals(523 - 100, Protection.upTo(week.count(), stakes, 100));
        assertEquals(0, Protection.upTo(week.count(), stakes, 600));
    }

    /** Two days of 20 or 30, a life of two days, lots of 10: enumerable by hand. */
    @Test
    void twoDaysOldestFirst() {
        double[][] paths = {{20, 20}, {20, 30}, {30, 20}, {30, 30}};
        PathCost cost = new PathCost(paths, List.of(), new Window(0, 1, 1));
        Stakes stakes = new Stakes(new BigDecimal("5"), new BigDecimal("2"), new BigDecimal(".05"));
        double[] costs = {150, 100.25, 50.75, 18.75, 21.75, 42.25};
        for (int i = 0; i < costs.length; i++) {
            assertEquals(costs[i], cost.of(20 + 10.0 * i, stakes), 1e-6);
        }
        for (long guess = 0; guess < 12; guess++) {
            assertEquals(5, cost.choose(10, stakes, guess, 99).lots());
        }
        LotChoice choice = cost.choose(10, stakes, 0, 99);
        assertEquals(5, choice.lots());
        assertEquals(6, choice.otherLots());
        assertEquals(21.75, choice.otherCost(), 1e-6);
    }

    @Test
    void leftoverIsNoWasteBeforeItExpires() {
        double[][] paths = {{10, 10, 10}};
        Stakes stakes = Stakes.oneDay("5", "2");
        Window today = new Window(0, 0, 2);
        assertEquals(0, new PathCost(paths, List.of(), today).of(30, stakes), 1e-9);
        assertEquals(2 * 5, new PathCost(paths, List.of(), today).of(35, stakes), 1e-9);
        Window oneDay = new Window(0, 0, 0);
        assertEquals(2 * 20, new PathCost(paths, List.of(), oneDay).of(30, stakes), 1e-9);
        Window beyond = new Window(0, 0, 3);
        assertEquals(0, new PathCost(paths, List.of(), beyond).of(35, stakes), 1e-9);
    }

    @Test
    void whatExpiresFirstIsUsedFirst() {
        double[][] paths = {{10, 10}};
        Stakes stakes = Stakes.oneDay("5", "2");
        List<Lot> old = List.of(new Lot(10, 0, 0));
        assertEquals(0, new PathCost(paths, old, new Window(0, 1, 1)).of(10, stakes), 1e-9);
        assertEquals(50, new PathCost(paths, old, new Window(0, 1, 1)).of(0, stakes), 1e-9);
    }

    @Test
    void pathsHaveTheMomentsThatWereAskedFor() {
        DemandPaths draws = DemandPaths.ofDays(3);
        double[][] paths = draws.of(List.of(100.0, 200.0, 0.0), List.of(400.0, 1_600.0, 0.0), .01);
        double[] sums = Arrays.stream(paths).mapToDouble(p -> p[0] + p[1]).toArray();
        double mean = Arrays.stream(sums).average().orElseThrow();
        double square =
                Arrays.stream(sums).map(s -> (s - mean) * (s - mean)).average().orElseThrow();
        assertEquals(300, mean, 3);
        assertEquals(400 + 1_600 + .01 * 300 * 300, square, 300);
        assertEquals(0, paths[0][2]);
        assertTrue(Arrays.stream(paths).allMatch(p -> p[0] > 0));
        double[][] again =
                DemandPaths.ofDays(3)
                        .of(List.of(100.0, 200.0, 0.0), List.of(400.0, 1_600.0, 0.0), .01);
        assertTrue(Arrays.deepEquals(paths, again));
    }
}
