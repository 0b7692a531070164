package sopwell.prep.forecast;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The method by hand: figures computed with an independent implementation. */
class WorkedNumbersTest {
    private static final double NEAR = 1e-6;
    private static final double[] QUANTILES = {0.5, 0.75, 0.9, 0.95};

    @Test
    void countsHaveTheirQuantiles() {
        assertArrayEquals(new int[] {39, 47, 54, 59}, quantiles(new NegBin(40, 0.05)));
        assertArrayEquals(new int[] {6, 8, 11, 12}, quantiles(new NegBin(6.5, 0.1)));
        assertArrayEquals(new int[] {1, 2, 3, 4}, quantiles(new NegBin(1.2, 0.3)));
        assertEquals(0.8342916098911658, new NegBin(40, 0.05).cdf(50), 1e-12);
        assertEquals(0.0362416909837596, Math.exp(new NegBin(40, 0.05).logPmf(40)), 1e-12);
        assertEquals(-1.0249489991598686, new NegBin(1.2, 0.3).logPmf(0), 1e-12);
    }

    @Test
    void theLevelFollowsFourDays() {
        Level level = new Level(10, 200, 5);
        double[][] days = {
            {38, 1, 40, 224.606598, 5.665165, 39.646965},
            {61, 1.4, 55.505751, 270.565366, 6.685786, 40.468746},
            {30, 1.4 * 0.62, 35.126871, 282.446413, 7.106059, 39.747267},
            {25, 0.8 * 0.86, 27.34612, 288.531822, 7.318187, 39.426679}
        };
        for (double[] day : days) {
            assertEquals(day[2], level.now() * day[1], NEAR);
            level.see(day[0], day[1]);
            assertEquals(day[3], level.pieces(), NEAR);
            assertEquals(day[4], level.days(), NEAR);
            assertEquals(day[5], level.now(), NEAR);
        }
    }

    @Test
    void theShareFollowsThreeDays() {
        Share share = new Share(25, 30, 70);
        double[][] days = {
            {14, 40, 43.179648, 94.085846, 0.31457},
            {21, 50, 62.998899, 120.513064, 0.343296},
            {9, 18, 70.27619, 126.217628, 0.357651}
        };
        for (double[] day : days) {
            share.see(day[0], day[1]);
            assertEquals(day[2], share.alpha(), NEAR);
            assertEquals(day[3], share.beta(), NEAR);
            assertEquals(day[4], share.now(), NEAR);
        }
    }

    @Test
    void aPartOfACountHasItsOwnWidth() {
        CountMixture child = CountMixture.of(new NegBin(150, 0.03)).part(0.3, 0.004);
        assertEquals(45, child.mean(), NEAR);
        assertEquals(0.039613333333333334, child.phi(), 1e-12);
        assertEquals(125.217, child.variance(), NEAR);
        assertArrayEquals(new int[] {44, 52, 60, 65}, child.quantiles(QUANTILES));
    }

    @Test
    void whatWasForetoldDecidesWhoIsBelieved() {
        Scores scores = new Scores(3, 0.99);
        scores.start(-3.1, -2.95, -3.4);
        scores.see(new double[] {-3.6, -2.7, -3.0});
        double[] sums = {-6.669, -5.6205, -6.366};
        double[] weights = {0.192039, 0.547957, 0.260004};
        for (int i = 0; i < 3; i++) {
            assertEquals(sums[i], scores.sum(i), 1e-12);
            assertEquals(weights[i], scores.weight(i), NEAR);
        }
    }

    @Test
    void aMixtureHasItsQuantiles() {
        CountMixture mixture =
                CountMixture.of(
                        new double[] {36, 40, 50},
                        new double[] {0.03, 0.05, 0.04},
                        new double[] {0.2, 0.5, 0.3});
        assertArrayEquals(new int[] {41, 50, 58, 64}, mixture.quantiles(QUANTILES));
    }

    @Test
    void gramsOfAnIngredientHaveTheirQuantiles() {
        Usage beef =
                Usage.of(
                        CountMixture.of(new NegBin(150, 0.03)),
                        new double[] {0.62, 0.13},
                        new double[] {170, 110});
        assertEquals(119.7, beef.each(), NEAR);
        assertEquals(17_955, beef.mean(), NEAR);
        assertEquals(12_595_110.75, beef.variance(), NEAR);
        double[] grams = {17_721.7, 20_204.7, 22_626.8, 24_163.3};
        for (int q = 0; q < QUANTILES.length; q++) {
            assertEquals(grams[q], beef.quantile(QUANTILES[q]), 0.05);
        }
    }

    @Test
    void aSellOutIsAPartOfADay() {
        Level level = new Level(10, 200, 5);
        double keep = Math.pow(2, -0.1);
        level.see(52, 1.1 * 0.8);
        assertEquals(keep * 200 + 52, level.pieces(), NEAR);
        assertEquals(keep * 5 + 0.88, level.days(), NEAR);
        assertEquals(64.4596, new NegBin(60, 0.02).meanFrom(52), 5e-5);
    }

    private static int[] quantiles(NegBin one) {
        return CountMixture.of(one).quantiles(QUANTILES);
    }
}
