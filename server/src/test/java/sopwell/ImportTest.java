package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.desk.DayBook;
import sopwell.desk.DaysDesk;
import sopwell.desk.MemoryShelf;
import sopwell.desk.PastRecords;
import sopwell.desk.Replay;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.log.Entry;
import sopwell.log.EventLog;
import sopwell.log.Recorded;
import sopwell.mix.DayTally;
import sopwell.mix.TallyShelves;
import sopwell.prep.HistoryEvent.PastDayKept;
import sopwell.prep.forecast.History;
import sopwell.prep.forecast.PastDay;
import sopwell.records.HistoryFiles;
import sopwell.storage.DataFolder;
import sopwell.storage.MemoryLog;
import sopwell.storage.SqliteLog;

/** An owner's old records go into the log, and change nothing that the stand knows. */
class ImportTest {
    /** The stand's own days are 14 to 16 January 2026; the records end before. */
    private static final LocalDate OWN = LocalDate.of(2026, 1, 14);

    private static final LocalDate FIRST = LocalDate.of(2025, 12, 1);

    @TempDir Path parent;
    private final TallyShelves shelves = MemoryShelf.shelves();
    private Path data;
    private Path history;
    private Instant now = Instant.parse("2026-01-20T18:00:00Z");

    @BeforeEach
    void standWithRecords() throws Exception {
        data = Files.createDirectory(parent.resolve("data"));
        history = Files.createDirectory(parent.resolve("history"));
        try (DataFolder folder = DataFolder.open(data)) {
            StandFolder.fillIfEmpty(folder, Config.StartWith.menu);
            try (SqliteLog log = folder.openLog(Script.SETTINGS.stand());
                    DaysDesk desk = new DaysDesk(log, OWN)) {
                for (int day = 0; day < 3; day++) {
                    desk.day(OWN.plusDays(day), day + 1);
                }
            }
        }
        write("lines.csv", lines("5"));
        write(
                "days.csv",
                """
                business_date,open,close,closed_reason,events,weather
                2025-12-01,10:30,20:00,,festival: river x 1.4,rain
                2025-12-25,,,Christmas,,
                """);
        write("outs.csv", "business_date,from,to,what\n2025-12-02,18:15,,beef\n");
        write(
                "weather.csv",
                "issued,business_date,kind,probability\n2025-11-30,2025-12-01,rain,0.35\n");
    }

    @Test
    void whatWasTakenInIsWhatTheRecordsSay() throws Exception {
        String said = run(false);
        assertEquals(
                "took in 21 of 21 days, 2025-12-01 to 2025-12-25\n"
                        + "not the id of an item on the menu, and kept under these names:"
                        + " old sandwich\n",
                said);
        History read = HistoryFiles.read(history).history();
        assertEquals(read, onLog(log -> PastRecords.history(log, 15)));
        History halves = onLog(log -> PastRecords.history(log, 30));
        assertEquals(24, halves.days().get(0).sold().get(0).bin());
        assertEquals("Christmas", onLog(PastRecords::kept).lastEntry().getValue().closedReason());
    }

    @Test
    void theStandAndItsBookAreTheSameBeforeAndAfter() throws Exception {
        List<DayTally> before = onLog(this::book);
        Stand stand = onLog(log -> Replay.newestDay(log, Script.SETTINGS, e -> {}));
        List<Recorded> old = onLog(ImportTest::all);

        run(false);

        assertEquals(before, onLog(this::book));
        Stand after = onLog(log -> Replay.newestDay(log, Script.SETTINGS, e -> {}));
        assertEquals(List.copyOf(stand.orders().all()), List.copyOf(after.orders().all()));
        assertEquals(stand.orders().date(), after.orders().date());
        assertEquals(stand.menu().revision(), after.menu().revision());
        assertEquals(stand.seq() + 21, after.seq(), "its place is the log's end");
        List<Recorded> now = onLog(ImportTest::all);
        assertEquals(old.size() + 21, now.size());
        for (int i = 1; i < now.size(); i++) {
            assertTrue(now.get(i).atMs() >= now.get(i - 1).atMs(), "times never run backwards");
        }
    }

    @Test
    void theStandSellsOnAfterItAndItsDaysAreCountedAsEver() throws Exception {
        run(false);
        try (DataFolder folder = DataFolder.open(data);
                SqliteLog log = folder.openLog(Script.SETTINGS.stand());
                DaysDesk desk = new DaysDesk(log, OWN.plusDays(7))) {
            desk.day(OWN.plusDays(7), 4);
            desk.day(OWN.plusDays(8), 1);
        }
        List<DayTally> days = onLog(this::book);
        assertEquals(4, days.size(), "three of before and one of after");
        assertEquals(OWN.plusDays(7), days.get(3).date());
        assertTrue(refusedAt(OWN.plusDays(7)).contains("2026-01-21"));
    }

    @Test
    void theSameAgainChangesNothingAndOtherNumbersAreRefusedUnlessTheyReplace() throws Exception {
        run(false);
        int size = onLog(ImportTest::all).size();
        assertTrue(run(false).startsWith("took in 0 of 21 days, "), "nothing is new");
        assertEquals(size, onLog(ImportTest::all).size());
        write("lines.csv", lines("6"));
        String refused = refused(false);
        assertTrue(refused.contains("with other numbers: 2025-12-02. "), refused);
        assertTrue(refused.endsWith("say --replace. Nothing was taken in."), refused);
        assertEquals(size, onLog(ImportTest::all).size());
        assertTrue(run(true).contains("took in 1 of 21 days"));
        assertEquals(size + 1, onLog(ImportTest::all).size());
        assertEquals(
                HistoryFiles.read(history).history(), onLog(log -> PastRecords.history(log, 15)));
        write("lines.csv", lines("5"));
        assertTrue(run(true).contains("1 of them replace others; 20 were kept already"));
    }

    @Test
    void oddPercentsReadAgainAreNoOtherNumbers() throws Exception {
        write(
                "weather.csv",
                "issued,business_date,kind,probability\n2025-11-30,2025-12-01,rain,33.3%\n");
        write("days.csv", "business_date,open,close,events\n2025-12-01,10:30,20:00,fair +164 %\n");
        assertTrue(run(false).startsWith("took in 20 of 20 days, "));
        assertTrue(run(false).startsWith("took in 0 of 20 days, "));
    }

    @Test
    void timesNeverRunBackwardsWhenTheClockDid() throws Exception {
        long lastMs = onLog(log -> all(log).get((int) log.lastSeq() - 1).atMs());
        now = Instant.ofEpochMilli(lastMs).minusSeconds(3_600);
        run(false);
        List<Recorded> all = onLog(ImportTest::all);
        assertEquals(lastMs, all.get(all.size() - 1).atMs());
        assertTrue(all.get(all.size() - 1).event() instanceof PastDayKept);
    }

    @Test
    void daysOfTheStandsOwnAndDaysThatAreNotOverAreRefused() throws Exception {
        assertTrue(refusedAt(OWN.plusDays(1)).contains("has sold itself"));
        String future = refusedAt(LocalDate.of(2026, 1, 20));
        assertTrue(future.startsWith("These days are not over yet: 2026-01-20. "), future);
        assertTrue(onLog(PastRecords::kept).isEmpty());
    }

    @Test
    void nothingIsTakenInWhenALineCantBeRead() throws Exception {
        write("lines.csv", lines("5") + "2025-12-24,12:00,beef,,,many\n");
        String refused = refused(false);
        assertTrue(refused.startsWith("lines.csv, line 24, column quantity: \"many\""), refused);
        assertTrue(refused.endsWith("Nothing was taken in."), refused);
        assertTrue(onLog(PastRecords::kept).isEmpty());
    }

    @Test
    void aStandThatNeverOpenedKnowsWhereItsLogEnds() throws Exception {
        MemoryLog log = new MemoryLog("test");
        new DaysDesk(log, OWN).close();
        PastDayKept day = new PastDayKept(15, "", PastDay.closed(FIRST), List.of());
        log.append(List.of(new Entry(1, "past day", "f", List.of(day))));
        Stand stand = Replay.newestDay(log, Script.SETTINGS, e -> {});
        assertEquals(log.lastSeq(), stand.seq());
        assertTrue(stand.hasMenu());
        try (DaysDesk desk = new DaysDesk(log, OWN)) {
            desk.day(OWN, 2);
        }
        assertEquals(2, Replay.newestDay(log, Script.SETTINGS, e -> {}).orders().all().size());
    }

    /** Twenty days with beef; on the second so many. */
    private static String lines(String second) {
        StringBuilder lines =
                new StringBuilder("business_date,local_time,item,size,modifiers,quantity\n");
        for (int d = 0; d < 20; d++) {
            String pieces = d == 1 ? second : Integer.toString(20 + d);
            lines.append(FIRST.plusDays(d)).append(",12:05,beef,regular,hot|dipped,");
            lines.append(pieces).append('\n');
        }
        return lines + "2025-12-03,12:20,old sandwich,,,1\n2025-12-03,12:25,old sandwich,,,1\n";
    }

    private static List<Recorded> all(EventLog log) {
        List<Recorded> all = new ArrayList<>();
        log.read(1, log.lastSeq(), all::add);
        return all;
    }

    private List<DayTally> book(EventLog log) {
        DayBook book = new DayBook(log, Script.SETTINGS, shelves);
        assertEquals(List.of(), book.wrong(), "what is kept of past days is right");
        return book.days(LocalDate.of(2020, 1, 1), LocalDate.of(2030, 1, 1));
    }

    private <T> T onLog(Function<EventLog, T> work) {
        try (DataFolder folder = DataFolder.open(data);
                SqliteLog log = folder.openLog(Script.SETTINGS.stand())) {
            return work.apply(log);
        }
    }

    private String run(boolean replace) throws StartRefused {
        Config.Import asked = new Config.Import();
        asked.data = data;
        asked.history = history;
        asked.replace = replace;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        new Import(asked, () -> now, out).run();
        return said.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private String refused(boolean replace) {
        return assertThrows(StartRefused.class, () -> run(replace)).getMessage();
    }

    private String refusedAt(LocalDate date) {
        write("lines.csv", lines("5") + date + ",12:00,beef,,,4\n");
        return refused(false);
    }

    private void write(String file, String text) {
        try {
            Files.writeString(history.resolve(file), text);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
