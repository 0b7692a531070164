package sopwell.whatif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.kitchen.StationEvent;
import sopwell.log.Recorded;
import sopwell.lunch.BusyDay;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.MenuParts;
import sopwell.menu.Step;
import sopwell.orders.OrderEvent.DayClosed;
import sopwell.storage.MenuWriter;
import sopwell.whatif.Tried.Verdict;

/** Days again, with other hands, loads and guests. */
class TrialTest {
    private static final int TARGET = 360;
    private static final int RUNS = 20;

    static DayWork work(List<Recorded> events) {
        Stand stand = new Stand(Script.SETTINGS);
        List<Recorded> said = new ArrayList<>();
        for (Recorded one : events) {
            if (!(one.event() instanceof DayClosed)) {
                stand.apply(one);
            }
            if (one.event() instanceof StationEvent) {
                said.add(one);
            }
        }
        return DayWork.of(
                new DayWork.Sources(
                        stand.orders(),
                        stand.kitchen(),
                        stand.menu(),
                        stand::menuOf,
                        stand.settings().zone(),
                        said));
    }

    private static DayWork hard(double startTaps) {
        return work(BusyDay.events(List.of(60, 120, 60, 20), 2, startTaps, 4, 1));
    }

    private static Tried tried(DayWork day, Map<String, Integer> hands, int guests) {
        return Trial.of(day, new Changes(hands, guests), TARGET, RUNS, 1);
    }

    @Test
    void theUnchangedDayIsNearWhatWasMeasured() {
        DayWork day = hard(0.9);
        assertTrue(day.measured() > day.tasks() / 2, day.measured() + " of " + day.tasks());
        Tried.Row rush = tried(day, Map.of(), 0).rush();
        assertEquals(rush.before(), rush.after(), "nothing is changed");
        double measured = rush.measured().ninetiethSeconds();
        double again = rush.before().middle().ninetiethSeconds();
        assertTrue(
                Math.abs(again - measured) < 0.25 * measured,
                "nine of ten: measured " + measured + " s, again " + again + " s");
    }

    @Test
    void anotherPairOfHandsShortensARushAndOneFewerLengthensIt() {
        DayWork day = hard(0.9);
        Tried more = tried(day, Map.of("line", 1), 0);
        Tried fewer = tried(day, Map.of("line", -1), 0);
        assertEquals(Verdict.SHORTER, more.verdict(), more.rush().toString());
        assertEquals(Verdict.LONGER, fewer.verdict(), fewer.rush().toString());
        assertEquals(Verdict.HARDLY, tried(day, Map.of("drinks", 1), 0).verdict());
        assertTrue(
                fewer.overloads().stream().anyMatch(o -> o.station().en().equals("Line")),
                "one hand can't do it: " + fewer.overloads());
        assertTrue(
                more.rush().after().middle().withinShare()
                        > more.rush().before().middle().withinShare());
    }

    @Test
    void moreGuestsWaitLongerAndHalfOfThemLess() {
        DayWork day = hard(0.9);
        Tried more = tried(day, Map.of(), 20);
        double orders = more.rush().before().middle().orders();
        assertEquals(1.2, more.rush().after().middle().orders() / orders, 0.03);
        assertEquals(Verdict.LONGER, more.verdict());
        Tried half = tried(day, Map.of(), -50);
        assertEquals(0.5, half.rush().after().middle().orders() / orders, 0.03);
        assertEquals(Verdict.SHORTER, half.verdict());
        assertNotEquals(half.rush().after().low(), half.rush().after().high(), "chance shows");
    }

    @Test
    void theSameSeedGivesTheSameAnswerAndAnotherOneAnother() {
        DayWork day = hard(0.5);
        Changes changes = new Changes(Map.of("line", 1), 10);
        Tried one = Trial.of(day, changes, TARGET, 3, 7);
        assertEquals(one, Trial.of(day, changes, TARGET, 3, 7));
        assertNotEquals(one, Trial.of(day, changes, TARGET, 3, 8));
    }

    @Test
    void aDayInWhichNoStartWasTappedIsDrawnFromWhatIsKnown() {
        DayWork day = hard(0);
        assertEquals(0, day.measured());
        Tried again = tried(day, Map.of(), 0);
        Waits.Band band = again.rush().before();
        assertTrue(band.low().medianSeconds() < band.high().medianSeconds(), band.toString());
    }

    @Test
    void whatGoesIntoABasketTogetherIsMadeTogetherAndAnotherBasketTakesTheRest() {
        List<Guest> guests = new ArrayList<>();
        for (int n = 0; n < 3; n++) {
            Task fries = new Task(0, 2, List.of(), true, 180_000, 0);
            guests.add(new Guest(n, 1_000 + n, 1_000 + n, 0, 0, 0, List.of(fries)));
        }
        Bench one = fryer(1);
        long[] upMs = Shop.run(List.of(one), guests, new Draws(1));
        // The first alone, since the others are not there yet; then both of these together.
        assertEquals(List.of(181_000L, 361_000L, 361_000L), list(upMs));
        long[] two = Shop.run(List.of(one.with(1)), guests, new Draws(1));
        assertEquals(List.of(181_000L, 181_001L, 361_000L), list(two));
        assertEquals(1, one.with(-2).at(5_000), "never without any");
    }

    @Test
    void aBuildWaitsForItsSausageAndManyAlikeAreShared() {
        Task grill = new Task(1, 1, List.of(), true, 60_000, 0);
        Task build = new Task(0, 1, List.of(1), true, 20_000, 0);
        Task eight = new Task(0, 8, List.of(), true, 10_000, 0);
        List<Guest> guests =
                List.of(
                        new Guest(0, 1_000, 0, 0, 0, 0, List.of(build, grill)),
                        new Guest(1, 2_000, 0, 0, 0, 0, List.of(eight)));
        List<Bench> benches = List.of(SteadyShopTest.benches(2).get(0), fryer(1));
        // Two hands take four each, 40 s; the build begins when its sausage is up.
        assertEquals(List.of(81_000L, 42_000L), list(Shop.run(benches, guests, new Draws(1))));
    }

    @Test
    void handsThatComeLaterWorkFromThenOn() {
        Bench line =
                new Bench(
                        "line",
                        new LocalText("Line", "Línea"),
                        1,
                        List.of(new Bench.Shift(Long.MIN_VALUE, 1), new Bench.Shift(30_000, 2)));
        List<Guest> guests = new ArrayList<>();
        for (int n = 0; n < 2; n++) {
            Task task = new Task(0, 1, List.of(), true, 100_000, 0);
            guests.add(new Guest(n, 1_000, 1_000, 0, 0, 0, List.of(task)));
        }
        long[] upMs = Shop.run(List.of(line), guests, new Draws(1));
        assertEquals(List.of(101_000L, 130_000L), list(upMs));
    }

    @ParameterizedTest
    @ValueSource(ints = {-50, -1, 1, 20, 100})
    void guestsStayInTheirHalfHour(int percent) {
        DayWork day = hard(0.9);
        List<Guest> now = Arrivals.of(day.guests(), percent, new Draws(3));
        long before = Long.MIN_VALUE;
        for (Guest guest : now) {
            assertTrue(guest.atMs() >= before, "in the order in which they come");
            before = guest.atMs();
            long since = guest.atMs() - guest.windowMs();
            assertTrue(since >= 0 && since < Arrivals.HALF_HOUR_MS, guest.toString());
        }
        double share = (double) now.size() / day.guests().size();
        assertEquals(1 + percent / 100.0, share, 0.03);
        assertEquals(now.size(), now.stream().mapToInt(Guest::id).distinct().count());
    }

    /** An hour that the clock has twice: guests of both are tried in the one that they came in. */
    @Test
    void aStandOfOneStationAndADayOfTwentyFiveHoursAreTriedLikeAnyOther() {
        Script script = new Script(Script.SETTINGS, lineAlone());
        long firstMs = Instant.parse("2026-11-01T06:05:00Z").toEpochMilli();
        for (int n = 0; n < 8; n++) {
            script.atMs(firstMs + n * 900_000L);
            script.allUp(script.place("2 beef dipped hot"));
        }
        DayWork day = work(script.log());
        assertEquals(1, day.benches().size());
        Map<Long, Integer> windows = new TreeMap<>();
        day.guests().forEach(guest -> windows.merge(guest.windowMs(), 1, Integer::sum));
        assertEquals(List.of(2, 2, 2, 2), List.copyOf(windows.values()), "four half hours");
        Tried tried = tried(day, Map.of("line", 1), 0);
        assertEquals(2, tried.rows().size(), "half past one is one half hour by the clock");
        assertEquals(4, tried.rows().get(0).measured().orders());
    }

    @Test
    void aDayOfFiveHundredIsTriedInTwoSeconds() {
        DayWork day = work(BusyDay.ofFiveHundred(7));
        assertTrue(day.guests().size() > 400, "orders: " + day.guests().size());
        long begin = System.nanoTime();
        tried(day, Map.of("line", 1), 20);
        long millis = (System.nanoTime() - begin) / 1_000_000;
        assertTrue(millis < 2_000, millis + " ms");
    }

    /** The demo's menu, as far as it is made on the line. */
    private static Menu lineAlone() {
        MenuParts demo = Script.demoMenu().parts();
        List<Step> steps = demo.steps().stream().filter(s -> s.station().equals("line")).toList();
        List<String> ids = steps.stream().map(Step::id).toList();
        return MenuWriter.menu(
                new MenuParts(
                        demo.speech(),
                        demo.stations().subList(0, 1),
                        steps,
                        demo.groups(),
                        demo.items().stream().filter(i -> ids.containsAll(i.steps())).toList()));
    }

    private static Bench fryer(int hands) {
        return new Bench(
                "fryer",
                new LocalText("Fryer", "Freidora"),
                4,
                List.of(new Bench.Shift(Long.MIN_VALUE, hands)));
    }

    private static List<Long> list(long[] all) {
        List<Long> list = new ArrayList<>();
        for (long one : all) {
            list.add(one);
        }
        return list;
    }
}
