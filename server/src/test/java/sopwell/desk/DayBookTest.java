package sopwell.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.mix.DayTally;
import sopwell.mix.TallyShelf;
import sopwell.mix.TallyShelf.Shelved;
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
        MemoryShelf grown = new MemoryShelf();
        DayBook book = new DayBook(log, Script.SETTINGS, grown);
        play();
        List<DayTally> days = book.days(FIRST, FIRST.plusDays(DAYS));
        assertEquals(DAYS - 1, days.size(), "the newest day may still grow");
        List<Shelved> before = grown.all();
        List<String> progress = new ArrayList<>();
        assertEquals(3, book.rebuild((done, all) -> progress.add(done + "/" + all)));
        assertEquals(before, grown.all());
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
    void aTamperedTallyIsFound() {
        MemoryShelf shelf = new MemoryShelf();
        DayBook book = new DayBook(log, Script.SETTINGS, shelf);
        play();
        book.days(FIRST, FIRST.plusDays(DAYS));
        Shelved second = shelf.of(List.of(FIRST.plusDays(1))).get(0);
        shelf.put(
                List.of(
                        new Shelved(
                                new DayTally(second.tally().date(), List.of()), second.lastSeq())));
        assertEquals(List.of(FIRST.plusDays(1)), book.wrong());
        assertTrue(book.days(List.of(FIRST.plusDays(1))).get(0).halfHours().isEmpty());
        book.rebuild((done, all) -> {});
        assertEquals(List.of(), book.wrong());
        assertFalse(book.days(List.of(FIRST.plusDays(1))).get(0).halfHours().isEmpty());
    }

    @Test
    void whatIsKeptInAFileComesBackAsItWas(@TempDir Path folder) throws Exception {
        play();
        try (DataFolder data = DataFolder.open(folder)) {
            List<DayTally> counted;
            try (TallyFile file = data.openTallies("millrace")) {
                counted = new DayBook(log, Script.SETTINGS, file).days(FIRST, FIRST.plusDays(9));
            }
            try (TallyFile file = data.openTallies("millrace")) {
                List<Shelved> kept = file.all();
                assertEquals(counted, kept.stream().map(Shelved::tally).toList());
                assertEquals(List.of(), new DayBook(log, Script.SETTINGS, file).wrong());
            }
            try (TallyFile other = data.openTallies("elsewhere")) {
                assertEquals(List.of(), other.all());
            }
        }
    }

    @Test
    void aDamagedFileIsThrownAwayAndCountedAnew(@TempDir Path folder) throws Exception {
        play();
        Files.writeString(folder.resolve("tallies.sqlite"), "no database at all ".repeat(600));
        try (DataFolder data = DataFolder.open(folder);
                TallyFile file = data.openTallies("millrace")) {
            DayBook book = new DayBook(log, Script.SETTINGS, file);
            assertEquals(3, book.days(FIRST, FIRST.plusDays(9)).size());
            assertEquals(3, book.days(FIRST, FIRST.plusDays(9)).size());
            assertEquals(List.of(), book.wrong());
        }
    }

    @Test
    void aReopenedDayIsCountedAnew() {
        TallyShelf shelf = new MemoryShelf();
        DayBook book = new DayBook(log, Script.SETTINGS, shelf);
        try (DaysDesk desk = new DaysDesk(log, FIRST)) {
            desk.closed(FIRST);
            desk.closed(FIRST);
            assertEquals(List.of(), book.days(FIRST, FIRST));
            desk.day(FIRST.plusDays(1), 1);
            assertEquals(2, voids(book.days(List.of(FIRST)).get(0)));
            assertEquals(List.of(), book.days(FIRST.plusDays(1), FIRST.plusDays(1)));
        }
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
