package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayTally;
import sopwell.mix.ExceptionTally;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelf.Shelved;
import sopwell.mix.TallyShelves;
import sopwell.mix.WaitTally;
import sopwell.storage.DataFolder;
import sopwell.storage.MemoryLog;
import sopwell.storage.TallyFile;

/** Past days are counted once, and what is kept always equals what the log says. */
class DayBookTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);
    private static final int DAYS = 4;

    private final MemoryLog log = new MemoryLog("millrace");

    @Test
    void aRebuiltShelfEqualsTheOneThatGrew() {
        TallyShelves grown = MemoryShelf.shelves();
        DayBook book = new DayBook(log, Script.SETTINGS, grown);
        play();
        List<DayTally> days = book.days(FIRST, FIRST.plusDays(DAYS));
        assertEquals(DAYS - 1, days.size(), "the newest day may still grow");
        assertEquals(DAYS - 1, grown.waits().all().size(), "a day is read once for all kinds");
        assertEquals(DAYS - 1, grown.exceptions().all().size());
        List<WaitTally> waits = book.waits(FIRST, FIRST.plusDays(DAYS), date -> true);
        List<Shelved<DayTally>> before = grown.mixes().all();
        List<Shelved<WaitTally>> waitsBefore = grown.waits().all();
        assertEquals(DAYS - 1, waits.size());
        assertEquals(2, waits.get(1).orders().size());
        List<String> progress = new ArrayList<>();
        assertEquals(3, book.rebuild((done, all) -> progress.add(done + "/" + all)));
        assertEquals(before, grown.mixes().all());
        assertEquals(waitsBefore, grown.waits().all());
        assertEquals(List.of("1/3", "2/3", "3/3"), progress);
        assertEquals(List.of(), book.wrong());
        LocalDate never = FIRST.minusDays(3);
        assertEquals(
                List.of(days.get(0), days.get(2)),
                book.days(List.of(FIRST.plusDays(2), never, FIRST)),
                "single dates, oldest first");
        assertEquals(List.of(), book.days(List.of()));
    }

    @Test
    void pastDaysAreKeptOneByOneBeforeAnybodyAsks() {
        TallyShelves shelves = MemoryShelf.shelves();
        DayBook book = new DayBook(log, Script.SETTINGS, shelves);
        assertFalse(book.keepNext(), "no day is over");
        play();
        assertTrue(book.keepNext());
        assertEquals(
                List.of(FIRST.plusDays(2)),
                shelves.mixes().all().stream().map(Shelved::date).toList(),
                "the newest first");
        assertTrue(book.keepNext());
        assertTrue(book.keepNext());
        assertFalse(book.keepNext(), "the newest day may still grow");
        assertEquals(DAYS - 1, shelves.mixes().all().size());
        assertEquals(DAYS - 1, shelves.waits().all().size());
        assertEquals(DAYS - 1, shelves.exceptions().all().size());
        assertEquals(List.of(), book.wrong());
    }

    @Test
    void aTamperedTallyIsFound() {
        TallyShelves shelves = MemoryShelf.shelves();
        DayBook book = new DayBook(log, Script.SETTINGS, shelves);
        play();
        book.days(FIRST, FIRST.plusDays(DAYS));
        TallyShelf<DayTally> shelf = shelves.mixes();
        Shelved<DayTally> second = shelf.of(List.of(FIRST.plusDays(1))).get(0);
        shelf.put(
                List.of(
                        Shelved.of(
                                second.date(),
                                second.lastSeq(),
                                new DayTally(second.date(), List.of()))));
        assertEquals(List.of(FIRST.plusDays(1)), book.wrong());
        assertFalse(
                book.days(List.of(FIRST.plusDays(1))).get(0).halfHours().isEmpty(),
                "what was read is at hand");
        book = new DayBook(log, Script.SETTINGS, shelves);
        assertTrue(book.days(List.of(FIRST.plusDays(1))).get(0).halfHours().isEmpty());
        book.rebuild((done, all) -> {});
        assertEquals(List.of(), book.wrong());
        assertFalse(book.days(List.of(FIRST.plusDays(1))).get(0).halfHours().isEmpty());
    }

    @Test
    void allOfADayIsWhatItsStandSays() {
        play();
        DayBook book = new DayBook(log, Script.SETTINGS, MemoryShelf.shelves());
        DayBook.Day day = book.day(FIRST).orElseThrow();
        Stand stand = Replay.day(log, Script.SETTINGS, FIRST).orElseThrow();
        assertEquals(DayBook.Day.of(stand), day);
        assertSame(day.mix(), book.day(FIRST).orElseThrow().mix(), "it is at hand from then on");
        assertEquals(Optional.empty(), book.day(FIRST.plusDays(DAYS - 1)), "it may still grow");
        assertEquals(Optional.empty(), book.day(FIRST.minusDays(1)));
        assertEquals(Optional.empty(), book.day(FIRST.plusYears(100)));
    }

    @Test
    void exceptionsThatAreNotWhatTheLogSaysAreFound() {
        TallyShelves shelves = MemoryShelf.shelves();
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            desk.closed(FIRST);
            desk.day(FIRST.plusDays(1), 1);
        }
        DayBook book = new DayBook(log, Script.SETTINGS, shelves);
        DayBook.Day day = book.day(FIRST).orElseThrow();
        assertEquals(
                List.of(new DayExceptions.VoidCount("guest left", 1)),
                day.exceptions().exceptions().voids());
        assertEquals(List.of(), book.wrong());
        Shelved<ExceptionTally> kept = shelves.exceptions().all().get(0);
        ExceptionTally quiet =
                new ExceptionTally(FIRST, DayExceptions.NONE, List.of(), List.of(), List.of());
        shelves.exceptions().put(List.of(Shelved.of(FIRST, kept.lastSeq(), quiet)));
        assertEquals(List.of(FIRST), book.wrong());
        book.rebuild((done, all) -> {});
        assertEquals(List.of(kept), shelves.exceptions().all());
        assertEquals(List.of(), book.wrong());
    }

    @Test
    void whatIsKeptInAFileComesBackAsItWas(@TempDir Path folder) throws Exception {
        play();
        try (DataFolder data = DataFolder.open(folder)) {
            List<DayTally> counted;
            try (TallyFile file = data.openTallies("millrace")) {
                counted = book(file).days(FIRST, FIRST.plusDays(9));
            }
            try (TallyFile file = data.openTallies("millrace")) {
                List<Shelved<DayTally>> kept = file.shelves().mixes().all();
                assertEquals(counted, kept.stream().map(k -> k.tally().orElseThrow()).toList());
                assertEquals(List.of(), book(file).wrong());
            }
            try (TallyFile other = data.openTallies("elsewhere")) {
                assertEquals(List.of(), other.shelves().mixes().all());
            }
        }
    }

    @Test
    void aDamagedFileIsThrownAwayAndCountedAnew(@TempDir Path folder) throws Exception {
        play();
        Files.writeString(folder.resolve("tallies.sqlite"), "no database at all ".repeat(600));
        try (DataFolder data = DataFolder.open(folder);
                TallyFile file = data.openTallies("millrace")) {
            DayBook book = book(file);
            assertEquals(3, book.days(FIRST, FIRST.plusDays(9)).size());
            assertEquals(3, book.days(FIRST, FIRST.plusDays(9)).size());
            assertEquals(List.of(), book.wrong());
        }
    }

    @Test
    void aReopenedDayIsCountedAnew() {
        DayBook book = new DayBook(log, Script.SETTINGS, MemoryShelf.shelves());
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            desk.closed(FIRST);
            desk.closed(FIRST);
            assertEquals(List.of(), book.days(FIRST, FIRST));
            desk.day(FIRST.plusDays(1), 1);
            assertEquals(2, voids(book.days(List.of(FIRST)).get(0)));
            assertEquals(List.of(), book.days(FIRST.plusDays(1), FIRST.plusDays(1)));
        }
    }

    @Test
    void aDayThatWasReopenedSoldAndClosedAgainIsRolledUpOnce() {
        DayBook book = new DayBook(log, Script.SETTINGS, MemoryShelf.shelves());
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            desk.closed(FIRST);
            desk.reopened(FIRST);
            desk.day(FIRST.plusDays(1), 1);
        }
        Stand stand = Replay.day(log, Script.SETTINGS, FIRST).orElseThrow();
        ZoneId zone = Script.SETTINGS.zone();
        DayTally counted = DayTally.of(FIRST, stand.orders(), zone, stand::menuOf);
        assertEquals(2, stand.orders().all().size());
        assertEquals(1, voids(counted));
        assertEquals(List.of(counted), book.days(FIRST, FIRST.plusDays(1)));
        assertEquals(
                List.of(WaitTally.of(FIRST, stand.orders(), stand.kitchen(), zone)),
                book.waits(FIRST, FIRST.plusDays(1), date -> true));
        assertEquals(List.of(), book.wrong());
    }

    private DayBook book(TallyFile file) {
        return new DayBook(log, Script.SETTINGS, file.shelves());
    }

    private static int voids(DayTally day) {
        return day.halfHours().stream().mapToInt(half -> half.counts().voids()).sum();
    }

    /** Days with one order more each. */
    private void play() {
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            for (int day = 0; day < DAYS; day++) {
                desk.day(FIRST.plusDays(day), day + 1);
            }
        }
    }
}
