package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.log.LogFault;

/** Someone, or a failing disk, altered the log behind Sopwell's back. */
class SqliteDamageTest {
    @TempDir Path folder;

    @BeforeEach
    void tenEventsOfFiveCommands() {
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            for (int n = 1; n <= 5; n++) {
                log.append(
                        List.of(
                                Samples.entry(
                                        n,
                                        Samples.placed(n, "Guest"),
                                        EventLogContract.handed(n))));
            }
        }
    }

    @Test
    void everyAlteredColumnShows() throws SQLException {
        List<String> alterations =
                List.of(
                        "body = replace(body, '790', '970')",
                        "at_ms = at_ms + 1",
                        "key = 'another'",
                        "fingerprint = 'another'",
                        "kind = 'order-changed'",
                        "version = 2",
                        "ordinal = 1",
                        "hash = randomblob(32)");
        for (String alteration : alterations) {
            alter("UPDATE events SET " + alteration + " WHERE seq = 5", alteration);
        }
    }

    @Test
    void aRowThatIsGoneShows() throws SQLException {
        alter("DELETE FROM events WHERE seq = 5", "it is missing");
    }

    @Test
    void rowsThatChangedPlacesShow() throws SQLException {
        alter(
                "UPDATE events SET body = (SELECT e.body FROM events e WHERE e.seq = 7)"
                        + " WHERE seq = 5",
                "swapped");
    }

    @Test
    void aSharperFirstRowShowsToo() throws SQLException {
        run("UPDATE events SET at_ms = 1 WHERE seq = 1");
        LogFault fault = assertThrows(LogFault.class, () -> read(1, 10));
        assertTrue(fault.getMessage().contains("event 1:"), fault.getMessage());
        assertTrue(fault.getMessage().contains("1970-01-01"), fault.getMessage());
    }

    @Test
    void aPlaceThatIsMissingIsNotTakenForTheFirst() throws SQLException {
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("log.sqlite"));
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA writable_schema = ON");
            int changed =
                    statement.executeUpdate(
                            "UPDATE sqlite_schema SET sql = replace(sql,"
                                    + " 'ordinal     INTEGER NOT NULL', 'ordinal     INTEGER')"
                                    + " WHERE name = 'events'");
            assertEquals(1, changed);
        }
        run("UPDATE events SET ordinal = NULL WHERE seq = 5");
        LogFault fault = assertThrows(LogFault.class, () -> read(1, 10));
        assertTrue(fault.getMessage().contains("event 5: its place"), fault.getMessage());
        assertEquals(4, read(1, 4));
    }

    /** Runs the alteration, expects the fault, and puts the old row back. */
    private void alter(String sql, String what) throws SQLException {
        run("CREATE TABLE kept AS SELECT * FROM events WHERE seq = 5");
        run(sql);
        LogFault fault = assertThrows(LogFault.class, () -> read(1, 10), what);
        assertTrue(fault.getMessage().contains("event 5:"), what + ": " + fault.getMessage());
        assertEquals(4, read(1, 4), "what lies before the damage is good");
        run("DELETE FROM events WHERE seq = 5");
        run("INSERT INTO events SELECT * FROM kept");
        run("DROP TABLE kept");
        assertEquals(10, read(1, 10));
    }

    private int read(long from, long to) {
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            return EventLogContract.range(log, from, to).size();
        }
    }

    private void run(String sql) throws SQLException {
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("log.sqlite"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}
