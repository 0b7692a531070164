package sopwell.stands;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import sopwell.stands.StandScore.Who;

/** The floor that the forecast may not fall below, on a few made stands. */
class StandsTest {
    private static final int ORIGINS = 80;

    @Test
    void everyGroupOfStandsIsForecastBetterThanByWeekdayMeans() {
        for (MadeStand.Group group : MadeStand.Group.values()) {
            StandScore score = new StandScore(new MadeStand(group, 1), ORIGINS);
            double simple = Math.min(score.loss(Who.MEAN_4), score.loss(Who.MEAN_8));
            String said = group + ": " + score.loss(Who.OURS) + " against " + simple;
            assertTrue(score.loss(Who.OURS) < simple, said);
            assertTrue(score.loss(Who.OURS) < 0.8 * score.loss(Who.NAIVE), said);
            assertTrue(score.loss(Who.OURS) >= 0.9 * score.loss(Who.ORACLE), said);
            covers(group, score);
        }
    }

    /** Counts of a few pieces can't be covered exactly: a quantile covers its share or more. */
    private static void covers(MadeStand.Group group, StandScore score) {
        double more = group == MadeStand.Group.SPARSE ? 0.03 : 0;
        String said = group + " covers " + score.coverage(2) + " and " + score.coverage(3);
        assertTrue(score.coverage(2) >= 0.86 && score.coverage(2) <= 0.95 + more, said);
        assertTrue(score.coverage(3) >= 0.92 && score.coverage(3) <= 0.98 + more, said);
    }
}
