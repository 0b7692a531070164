package sopwell.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sopwell.desk.DayBook;
import sopwell.desk.MemoryShelf;
import sopwell.desk.Replay;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Recorded;
import sopwell.mix.DayTally;
import sopwell.mix.DayTally.Sold;
import sopwell.mix.ExceptionTally;
import sopwell.mix.GuestWaits;
import sopwell.mix.Names;
import sopwell.mix.Period;
import sopwell.mix.TallyShelf.Shelved;
import sopwell.mix.TallyShelves;
import sopwell.mix.WaitTally;
import sopwell.mix.Waits;
import sopwell.orders.OutEvent;
import sopwell.storage.MemoryLog;

/** The invented weeks are as they are said to be, and what is counted of them is right. */
class HistoryTest {
    /** The clock is put forward in the night to Sunday, 8 March 2026, in the stand's zone. */
    private static final LocalDate LAST = LocalDate.of(2026, 3, 12);

    private static final Set<String> SANDWICHES =
            Set.of("beef", "combo", "sausage", "pepper-egg", "hot-dog", "jus-bread");

    private final MemoryLog log = new MemoryLog("millrace");
    private final TallyShelves shelves = MemoryShelf.shelves();

    @Test
    void theEightWeeksAreThoseOfALivelyStand() {
        History.play(
                log,
                shelves,
                History.eightWeeks(Script.SETTINGS, Script.demoMenu(), LAST),
                (days, orders) -> {});
        TreeMap<LocalDate, DayTally> days = new TreeMap<>();
        shelves.mixes().all().forEach(kept -> days.put(kept.date(), kept.tally().orElseThrow()));
        assertEquals(47, days.size(), "six days a week, of which the newest may still grow");
        assertEquals(LAST.minusWeeks(8).plusDays(1), days.firstKey());
        assertEquals(LAST.minusDays(1), days.lastKey());
        assertTrue(days.keySet().stream().noneMatch(d -> d.getDayOfWeek() == DayOfWeek.MONDAY));
        LocalDate festival = LocalDate.of(2026, 1, 31);
        for (LocalDate date : days.keySet()) {
            int sold = pieces(days.get(date));
            boolean saturday = date.getDayOfWeek() == DayOfWeek.SATURDAY;
            boolean rainy =
                    date.isAfter(LocalDate.of(2026, 2, 16))
                            && date.isBefore(LocalDate.of(2026, 2, 23));
            int usual = saturday ? 520 : 320;
            double like = date.equals(festival) ? 1.55 : rainy ? 0.72 : 1;
            assertEquals(usual * like, sold, usual * like * 0.2, () -> date + ": " + sold);
            assertTrue(days.get(date).halfHours().get(0).index() >= 21, "opens at half past ten");
        }
        assertTrue(dipped(days, 0, 12) + 0.04 < dipped(days, 35, 47), "ever more dipped");
        assertEquals(2, outs(), "two sell-outs");
        Stand festivalDay = Replay.day(log, Script.SETTINGS, festival).orElseThrow();
        WaitTally tally =
                WaitTally.of(
                        festival,
                        festivalDay.orders(),
                        festivalDay.kitchen(),
                        Script.SETTINGS.zone());
        Names names = new Names(List.of(festivalDay.menu()));
        GuestWaits waits = Waits.of(Period.day(festival), List.of(tally), 360, names).guests();
        assertTrue(waits.toUp().medianSeconds() > 60 && waits.toUp().medianSeconds() < 600);
        assertTrue(festivalDay.orders().open().isEmpty() && !festivalDay.orders().isDayOpen());
    }

    @Test
    void whatWasCountedAsItGrewIsWhatTheLogSaysAnew() {
        play(3);
        DayBook book = new DayBook(log, Script.SETTINGS, shelves);
        assertEquals(List.of(), book.wrong());
        List<Shelved<DayTally>> mixes = shelves.mixes().all();
        List<Shelved<WaitTally>> waits = shelves.waits().all();
        List<Shelved<ExceptionTally>> exceptions = shelves.exceptions().all();
        assertEquals(9, mixes.size());
        assertEquals(9, exceptions.size());
        book.rebuild((done, all) -> {});
        assertEquals(mixes, shelves.mixes().all());
        assertEquals(waits, shelves.waits().all());
        assertEquals(exceptions, shelves.exceptions().all());
    }

    @Test
    void theSameSeedMakesTheSameHistory() {
        play(4);
        List<Recorded> once = events(log);
        MemoryLog again = new MemoryLog("millrace");
        History.play(again, shelves, days(4), (days, orders) -> {});
        assertTrue(once.equals(events(again)));
        MemoryLog other = new MemoryLog("millrace");
        History.play(other, shelves, days(5), (days, orders) -> {});
        assertFalse(once.equals(events(other)));
        assertTrue(once.size() > 1_000);
    }

    private void play(long seed) {
        History.play(log, shelves, days(seed), (days, orders) -> {});
    }

    /** Twelve days of forty guests about the night when the clock is put forward. */
    private static History.Days days(long seed) {
        List<HistoryDay> days = new ArrayList<>();
        for (HistoryDay day : HistoryCalendar.years(LAST, 1, 12_000, seed)) {
            if (day.date().isAfter(LAST.minusDays(12))) {
                days.add(day);
            }
        }
        return new History.Days(Script.SETTINGS, Script.demoMenu(), days, seed);
    }

    /** All that happened after the menu was adopted, which is no record. */
    private static List<Recorded> events(MemoryLog log) {
        List<Recorded> events = new ArrayList<>();
        log.read(2, log.lastSeq(), events::add);
        return events;
    }

    private long outs() {
        return events(log).stream().filter(e -> e.event() instanceof OutEvent.OutMarked).count();
    }

    private static int pieces(DayTally day) {
        return sandwiches(day).stream().mapToInt(Sold::pieces).sum();
    }

    private static List<Sold> sandwiches(DayTally day) {
        return day.halfHours().stream()
                .flatMap(half -> half.sold().stream())
                .filter(sold -> SANDWICHES.contains(sold.item()))
                .collect(Collectors.toList());
    }

    private static double dipped(Map<LocalDate, DayTally> days, int from, int to) {
        List<Sold> beef =
                days.values().stream().toList().subList(from, to).stream()
                        .flatMap(day -> sandwiches(day).stream())
                        .filter(sold -> sold.item().equals("beef"))
                        .toList();
        int dipped =
                beef.stream()
                        .filter(sold -> sold.ways().contains("dip=dipped"))
                        .mapToInt(Sold::pieces)
                        .sum();
        return dipped / (double) beef.stream().mapToInt(Sold::pieces).sum();
    }
}
