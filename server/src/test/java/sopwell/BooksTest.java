package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.desk.DaysDesk;
import sopwell.desk.Script;
import sopwell.log.LogFault;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;

/** What is kept of past days is checked against the log, and can be made again from it. */
class BooksTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 14);

    private static final InstantSource CLOCK = () -> Instant.parse("2026-11-28T14:05:06.007Z");

    @TempDir Path folder;

    @Test
    void rebuildsAndChecksAndFindsATamperedDay() throws Exception {
        play();
        assertEquals("counted anew: 2 days\n", said(b -> b.rebuild()));
        assertTrue(
                said(b -> b.check()).endsWith("what is kept of past days is what the log says\n"));
        for (String change :
                List.of(
                        "body = ''",
                        "body = body || 'x'",
                        "body = substr(body, 1, length(body) - 1) || '\u00e9'",
                        "last_seq = last_seq + 1")) {
            for (String what : List.of("mix", "waits")) {
                tamper(
                        "UPDATE tallies SET "
                                + change
                                + " WHERE date = '2026-01-15' AND what = '"
                                + what
                                + "'");
                String wrong = refused(b -> b.check());
                assertTrue(wrong.contains("2026-01-15") && !wrong.contains("2026-01-14"), wrong);
                said(b -> b.rebuild());
            }
        }
        tamper("UPDATE tallies SET date = '2026-01-1' WHERE date = '2026-01-15' AND what = 'mix'");
        assertTrue(
                assertThrows(LogFault.class, () -> said(b -> b.check()))
                        .getMessage()
                        .contains("damaged"));
        said(b -> b.rebuild());
        String said = said(b -> b.check());
        assertTrue(said.contains("the log holds "), said);
        String head = "Sopwell " + Version.NUMBER + ", schema 6\nchecked at 2026-11-28T14:05:06Z\n";
        assertTrue(said.startsWith(head + "there is no good backup\n"), said);
    }

    @Test
    void saysWhenThereIsNoStandOrItRuns() throws Exception {
        assertTrue(refused(b -> b.check()).contains("There is no stand in " + folder));
        Path nowhere = folder.resolve("nowhere");
        StartRefused absent =
                assertThrows(
                        StartRefused.class, () -> new Books(nowhere, System.out, CLOCK).rebuild());
        assertTrue(absent.getMessage().contains("There is no folder " + nowhere));
        assertFalse(Files.exists(nowhere), "asking makes no folder");
        play();
        try (DataFolder running = DataFolder.open(folder)) {
            assertEquals(folder, running.path());
            RuntimeException busy =
                    assertThrows(
                            RuntimeException.class,
                            () -> new Books(folder, System.out, CLOCK).rebuild());
            assertTrue(busy.getMessage().contains("runs on"), busy.getMessage());
        }
    }

    private interface Work {
        void on(Books books) throws StartRefused;
    }

    private String said(Work work) throws StartRefused {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        work.on(new Books(folder, new PrintStream(said, true, StandardCharsets.UTF_8), CLOCK));
        return said.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private String refused(Work work) {
        return assertThrows(StartRefused.class, () -> said(work)).getMessage();
    }

    /** Three days, of which the newest may still grow. */
    private void play() throws StartRefused {
        try (DataFolder data = DataFolder.open(folder)) {
            StandFolder.fillIfEmpty(data, Config.StartWith.menu);
            assertEquals(Script.SETTINGS.stand(), StandFolder.settings(data).stand());
            try (SqliteLog log = data.openLog(StandFolder.settings(data).stand());
                    DaysDesk desk = new DaysDesk(log, FIRST)) {
                for (int day = 0; day < 3; day++) {
                    desk.day(FIRST.plusDays(day), day + 1);
                }
            }
        }
    }

    private void tamper(String sql) throws Exception {
        try (Connection connection =
                        DriverManager.getConnection(
                                "jdbc:sqlite:" + folder.resolve("tallies.sqlite"));
                Statement statement = connection.createStatement()) {
            assertEquals(1, statement.executeUpdate(sql));
        }
    }
}
