package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.desk.DaysDesk;
import sopwell.storage.DataFolder;
import sopwell.storage.FolderFault;
import sopwell.storage.SqliteLog;

/** Days are written out by command, whether the stand runs or not. */
class ExportingTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);

    @TempDir Path folder;
    private final Config.Export asked = new Config.Export();

    @BeforeEach
    void ask() {
        asked.data = folder.resolve("stand");
        asked.from = FIRST;
        asked.to = FIRST.plusDays(9);
        asked.what = Config.What.mix;
        asked.format = Config.Format.csv;
        asked.out = folder.resolve("out");
    }

    @Test
    void writesTheSameWhetherTheStandRunsOrNot() throws Exception {
        String running;
        try (DataFolder data = DataFolder.open(asked.data)) {
            StandFolder.fillIfEmpty(data, Config.StartWith.menu);
            try (SqliteLog log = data.openLog(StandFolder.settings(data).stand());
                    DaysDesk desk = new DaysDesk(log, FIRST)) {
                desk.day(FIRST, 1);
                desk.day(FIRST.plusDays(1), 2);
                running = exported();
                assertEquals(5, running.lines().count(), "a head, and two kinds on each day");
            }
        }
        assertEquals(running, exported());
        assertTrue(
                running.contains("2026-01-15,12:00,\"fries\",\"fries\",\"\",\"\",0,2,690"),
                running);
        try (DataFolder data = DataFolder.open(asked.data);
                SqliteLog log = data.openLog(StandFolder.settings(data).stand())) {
            assertTrue(log.lastSeq() > 0, "the stand starts as before");
        }
    }

    @Test
    void writesEveryTableInBothForms() throws Exception {
        play();
        for (Config.What what : Config.What.values()) {
            asked.what = what;
            asked.format = Config.Format.csv;
            List<String> lines = exported().lines().toList();
            int columns = lines.get(0).split(",", -1).length;
            asked.format = Config.Format.json;
            JsonNode rows = new ObjectMapper().readTree(exported());
            assertEquals(lines.size() - 1, rows.size(), what.name());
            assertTrue(rows.size() >= 4, what.name());
            rows.forEach(row -> assertEquals(columns, row.size(), row::toString));
            assertEquals("2026-01-14", rows.path(0).path("date").textValue());
        }
        asked.to = null;
        assertFalse(exported().contains("2026-01-15"), "one day alone");
    }

    @Test
    void saysWhatCantBeWritten() throws Exception {
        FolderFault absent = assertThrows(FolderFault.class, this::exported);
        assertTrue(absent.getMessage().contains("There is no folder"), absent.getMessage());
        Files.createDirectories(asked.data);
        assertTrue(refused().contains("There is no stand in"));
        play();
        asked.to = FIRST.minusDays(1);
        assertTrue(refused().contains("end before they begin"));
        asked.to = FIRST.plusYears(100);
        assertTrue(refused().contains("more than 3660 days"));
        asked.from = LocalDate.of(2030, 1, 1);
        asked.to = LocalDate.of(2030, 1, 2);
        assertTrue(refused().contains("was not open on any day from 2030-01-01 to 2030-01-02"));
        asked.from = FIRST;
        asked.out = folder.resolve("no").resolve("where");
        assertTrue(refused().contains("can't be written"));
        asked.out = Files.createDirectories(folder.resolve("full").resolve("one")).getParent();
        assertTrue(refused().contains("can't be written"));
        assertFalse(Files.exists(folder.resolve("full.new")), "nothing is left of what was begun");
    }

    private String refused() {
        return assertThrows(StartRefused.class, this::exported).getMessage();
    }

    private String exported() throws Exception {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        new Exporting(asked, new PrintStream(said, true, StandardCharsets.UTF_8)).run();
        String days = asked.to == null ? "wrote 1 day to " : "wrote 2 days to ";
        assertTrue(said.toString(StandardCharsets.UTF_8).startsWith(days + asked.out));
        return Files.readString(asked.out);
    }

    private void play() throws StartRefused {
        try (DataFolder data = DataFolder.open(asked.data)) {
            StandFolder.fillIfEmpty(data, Config.StartWith.menu);
            try (SqliteLog log = data.openLog(StandFolder.settings(data).stand());
                    DaysDesk desk = new DaysDesk(log, FIRST)) {
                desk.day(FIRST, 1);
                desk.day(FIRST.plusDays(1), 2);
            }
        }
    }
}
