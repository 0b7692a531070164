package sopwell.mix;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sopwell.desk.Script;
import sopwell.mix.WaitTally.OrderWait;
import sopwell.mix.WaitTally.PartWait;
import sopwell.mix.WaitTally.Quoted;

/** The waits of a period, from golden small days and against a plain sort of many. */
class WaitsTest {
    private static final LocalDate DATE = LocalDate.of(2026, 1, 14);
    private static final int UNKNOWN = WaitTally.UNKNOWN;
    private static final Names NAMES = new Names(List.of(Script.demoMenu()));

    @Test
    void countsGuestsByHalfHourAndPartsByStationAndItem() {
        WaitTally day =
                new WaitTally(
                        DATE,
                        List.of(
                                order(24, Quoted.WITHIN, 60, 200, 230),
                                order(24, Quoted.LATER, 30, 400, 430),
                                order(26, Quoted.SOONER, UNKNOWN, 100, UNKNOWN),
                                new OrderWait(26, true, Quoted.UNJUDGED, 1, 2, 3, List.of())));
        Waits waits = of(Period.day(DATE), day);

        assertEquals(1, waits.days());
        assertEquals(1, waits.staffOrders());
        assertEquals(3, waits.guests().orders());
        assertEquals(new WaitSummary(3, 200, 400), waits.guests().toUp());
        assertEquals(new WaitSummary(2, 45, 60), waits.guests().toStarted());
        assertEquals(new WaitSummary(2, 30, 30), waits.guests().onPass());
        assertEquals(new Share(2, 3), waits.guests().within());
        assertEquals(new Waits.Quotes(1, 1, 1), waits.quotes());
        assertEquals(List.of(24, 26), waits.halfHours().stream().map(h -> h.index()).toList());
        assertEquals(new WaitSummary(2, 300, 400), waits.halfHours().get(0).guests().toUp());

        PartWaits line = waits.stations().get(0);
        assertEquals("line", line.id());
        assertEquals(3, line.parts());
        assertEquals(6, line.pieces());
        assertEquals(new WaitSummary(2, 255, 370), line.beingMade());
        assertEquals(new PartWaits.Spent(90, 510, 0, 60), line.spent());
        assertEquals("beef", waits.items().get(0).id());

        Waits noon = of(new Period(DATE, DATE, 24, 25), day);
        assertEquals(2, noon.guests().orders());
        assertEquals(0, noon.staffOrders());
    }

    @Test
    void whatNobodyTappedIsTimeOfNoKnownKind() {
        PartWait fries = new PartWait("fryer", "fries", 1, UNKNOWN, 150, 230);
        WaitTally day =
                new WaitTally(
                        DATE,
                        List.of(
                                new OrderWait(
                                        24,
                                        false,
                                        Quoted.WITHIN,
                                        UNKNOWN,
                                        150,
                                        230,
                                        List.of(fries))));
        PartWaits fryer = of(Period.day(DATE), day).stations().get(0);
        assertEquals(new PartWaits.Spent(0, 0, 150, 80), fryer.spent());
        assertEquals(230, fryer.spent().all());
        assertEquals(WaitSummary.NONE, fryer.forHands());
        assertEquals(WaitSummary.NONE, fryer.beingMade());
    }

    @Test
    void noDaysComeToNothing() {
        Waits waits = of(Period.day(DATE));
        assertEquals(0, waits.days());
        assertEquals(WaitSummary.NONE, waits.guests().toHanded());
        assertEquals(List.of(), waits.stations());
        assertEquals(0, waits.quotes().judged());
    }

    @Test
    void countedWaitsHaveThePercentilesOfTheSortedOnes() {
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SecondsCount count = new SecondsCount();
            List<Integer> plain = new ArrayList<>();
            for (int i = 1 + random.nextInt(60); i > 0; i--) {
                int wait = random.nextInt(random.nextBoolean() ? 20 : 30_000);
                count.add(wait);
                count.add(UNKNOWN);
                plain.add(wait);
            }
            Collections.sort(plain);
            double[] sorted = plain.stream().mapToDouble(Integer::doubleValue).toArray();
            int target = random.nextInt(600);
            String at = "seed " + seed + " " + Arrays.toString(sorted);
            assertEquals(
                    new WaitSummary(
                            sorted.length, Percentile.of(sorted, 0.5), Percentile.of(sorted, 0.9)),
                    count.summary(),
                    at);
            assertEquals(
                    plain.stream().filter(wait -> wait <= target).count(),
                    count.within(target).some(),
                    at);
        }
    }

    @Test
    void daysCountedOneByOneAreTheSameAsTogether() {
        WaitTally first = new WaitTally(DATE, List.of(order(24, Quoted.WITHIN, 60, 200, 230)));
        WaitTally second =
                new WaitTally(DATE.plusDays(1), List.of(order(30, Quoted.LATER, 10, 500, 600)));
        Period both = new Period(DATE, DATE.plusDays(1), 0, HalfHours.END_MAX);
        Waits.Counting counting = new Waits.Counting(both);
        counting.add(first);
        counting.add(second);
        assertEquals(of(both, first, second), counting.counted(360, NAMES));
        assertEquals(2, of(both, first, second).days());
        assertEquals(1, of(Period.day(DATE), first, second).guests().orders());
    }

    private static OrderWait order(
            int halfHour, Quoted quoted, int toStarted, int toUp, int toHanded) {
        PartWait beef = new PartWait("line", "beef", 2, toStarted, toUp, toHanded);
        return new OrderWait(halfHour, false, quoted, toStarted, toUp, toHanded, List.of(beef));
    }

    private static Waits of(Period period, WaitTally... days) {
        return Waits.of(period, List.of(days), 360, NAMES);
    }
}
