package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sopwell.mix.ShareChart.Verdict;

class ShareChartTest {
    /**
     * Thirty wafers of 50 chips, from the NIST/SEMATECH e-Handbook, section 6.3.3.2: mean 0.2313,
     * limits 0.0524 and 0.4102, and the wafers 15 and 23 above. The counts are from memory; their
     * mean is the published one.
     */
    private static final int[] WAFERS = {
        12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22,
        8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6
    };

    @Test
    void hasThePublishedMeanAndNoNarrowerLimits() {
        List<Share> wafers = IntStream.of(WAFERS).mapToObj(k -> new Share(k, 50)).toList();
        ShareChart chart = ShareChart.of(wafers, new Share(24, 50));
        assertEquals(0.2313, chart.mean(), 5e-5);
        assertTrue(chart.high() >= 0.4102 - 5e-5, "at least three deviations: " + chart.high());
        assertTrue(chart.low() <= 0.0524 + 5e-5, "and as much below: " + chart.low());
    }

    /** Days that don't wander have the p-chart's own limits: the same mean, split evenly. */
    @Test
    void hasThePublishedLimitsWhereDaysAreAlike() {
        List<Share> alike = IntStream.range(0, 30).mapToObj(i -> new Share(347, 1500)).toList();
        ShareChart chart = ShareChart.of(alike, new Share(22, 50));
        assertEquals(0.0524, chart.low(), 1e-4);
        assertEquals(0.4102, chart.high(), 1e-4);
        assertEquals(Verdict.UP, chart.verdict(), "wafer 15");
        assertEquals(Verdict.STEADY, ShareChart.of(alike, new Share(20, 50)).verdict());
        assertEquals(Verdict.DOWN, ShareChart.of(alike, new Share(2, 50)).verdict());
    }

    @Test
    void daysThatDifferAreGivenTheirRoom() {
        List<Share> wandering =
                List.of(
                        new Share(60, 200),
                        new Share(100, 200),
                        new Share(62, 200),
                        new Share(98, 200));
        assertEquals(Verdict.STEADY, ShareChart.of(wandering, new Share(105, 200)).verdict());
        List<Share> alike =
                List.of(
                        new Share(80, 200),
                        new Share(81, 200),
                        new Share(79, 200),
                        new Share(80, 200));
        assertEquals(Verdict.UP, ShareChart.of(alike, new Share(105, 200)).verdict());
    }

    @Test
    void fewDaysOrFewPiecesTellNothing() {
        Share day = new Share(40, 100);
        assertEquals(Verdict.CANT_TELL, ShareChart.of(List.of(day, day, day), day).verdict());
        List<Share> rare = List.of(day, day, day, new Share(0, 0));
        assertEquals(Verdict.CANT_TELL, ShareChart.of(rare, day).verdict(), "no guests, no day");
        List<Share> four = List.of(day, day, day, day);
        assertEquals(Verdict.CANT_TELL, ShareChart.of(four, new Share(9, 9)).verdict());
        assertEquals(Verdict.STEADY, ShareChart.of(four, new Share(45, 100)).verdict());
        List<Share> never = List.of(new Share(0, 100), new Share(0, 100), day, day);
        assertEquals(Verdict.CANT_TELL, ShareChart.of(never, new Share(0, 0)).verdict());
    }

    /** Chance alone raises a false alarm on fewer than 3 in 100 days, with eight days before. */
    @Test
    void chanceAloneSeldomMovesAShare() {
        SplittableRandom random = new SplittableRandom(7);
        int alarms = 0;
        int days = 2_000;
        for (int day = 0; day < days; day++) {
            List<Share> before = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                before.add(drawn(random));
            }
            Verdict verdict = ShareChart.of(before, drawn(random)).verdict();
            alarms += verdict == Verdict.UP || verdict == Verdict.DOWN ? 1 : 0;
        }
        assertTrue(alarms <= days * 3 / 100, alarms + " false alarms in " + days);
    }

    private static Share drawn(SplittableRandom random) {
        int all = 150 + random.nextInt(150);
        return new Share(random.doubles(all).filter(u -> u < 0.4).count(), all);
    }

    /** A run is judged by the mean of all its days: the mean of the handbook's thirty wafers. */
    @Test
    void aRunIsSeenAgainstTheMeanOfAllItsDays() {
        List<Share> wafers = IntStream.of(WAFERS).mapToObj(k -> new Share(k, 50)).toList();
        List<ShareChart> run = ShareChart.run(wafers);
        assertEquals(30, run.size());
        for (ShareChart day : run) {
            assertEquals(0.2313, day.mean(), 5e-5);
            assertTrue(day.high() >= 0.4102 - 5e-5, "at least three deviations: " + day.high());
        }
        List<Share> alike = new ArrayList<>();
        IntStream.range(0, 29).forEach(i -> alike.add(new Share(100, 200)));
        alike.add(new Share(160, 200));
        List<ShareChart> jump = ShareChart.run(alike);
        assertEquals(Verdict.UP, jump.get(29).verdict());
        assertEquals(
                29, jump.stream().filter(day -> day.verdict() == Verdict.STEADY).count(), "others");
    }

    @Test
    void aRunOfFewDaysOrFewPiecesTellsNothing() {
        Share plenty = new Share(50, 100);
        assertTrue(
                ShareChart.run(List.of(plenty, plenty, plenty, plenty)).stream()
                        .allMatch(day -> day.verdict() == Verdict.CANT_TELL));
        List<Share> five = List.of(plenty, plenty, plenty, plenty, new Share(3, 4));
        assertEquals(Verdict.CANT_TELL, ShareChart.run(five).get(4).verdict());
        assertEquals(Verdict.STEADY, ShareChart.run(five).get(0).verdict());
        assertTrue(
                ShareChart.run(java.util.Collections.nCopies(9, new Share(10, 10))).stream()
                        .allMatch(day -> day.verdict() == Verdict.CANT_TELL),
                "a share that is always all has no limits");
    }
}
