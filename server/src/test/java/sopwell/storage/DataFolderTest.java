package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.Check;
import sopwell.menu.MenuEvent.MenuAdopted;
import sopwell.prep.calendar.CalendarEvent.CalendarSet;
import sopwell.prep.calendar.OwnerCalendar;
import sopwell.stock.recipes.RecipeEvent.RecipesAdopted;

class DataFolderTest {
    @TempDir Path parent;

    @Test
    void letsOneServerIn() {
        Path folder = parent.resolve("stand");
        try (DataFolder first = DataFolder.open(folder)) {
            assertEquals(folder, first.path());
            FolderFault fault = assertThrows(FolderFault.class, () -> DataFolder.open(folder));
            assertTrue(fault.getMessage().contains("Another Sopwell"), fault.getMessage());
        }
        DataFolder.open(folder).close();
    }

    @Test
    void opensItsLogOnce() {
        try (DataFolder data = DataFolder.open(parent);
                SqliteLog log = data.openLog("millrace")) {
            assertEquals(0, log.lastSeq());
            assertThrows(Check.Broken.class, () -> data.openLog("millrace"));
        }
    }

    @Test
    void keepsItsFilesToTheOwner() throws IOException {
        Path folder = parent.resolve("stand");
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            log.append(Samples.entries(1, 1));
            for (String name : List.of("log.sqlite", "log.sqlite-wal", "log.sqlite-shm")) {
                assertEquals("rw-------", permissions(folder.resolve(name)), name);
            }
            assertEquals("rwx------", permissions(folder));
        }
    }

    @Test
    void replacesFilesWhole() throws IOException {
        byte[] first = "{\"a\": 1}".getBytes(StandardCharsets.UTF_8);
        byte[] second = "{}".getBytes(StandardCharsets.UTF_8);
        try (DataFolder data = DataFolder.open(parent)) {
            assertEquals(Optional.empty(), data.menu());
            assertEquals(Optional.empty(), data.stand());
            assertFalse(data.hasLog());
            data.putMenu(first);
            data.putMenu(second);
            data.putStand(first);
            assertArrayEquals(second, data.menu().orElseThrow());
            assertArrayEquals(first, data.stand().orElseThrow());
        }
        try (Stream<Path> files = Files.list(parent)) {
            List<String> names = files.map(f -> f.getFileName().toString()).sorted().toList();
            assertEquals(List.of("menu.json", "sopwell.lock", "stand.json"), names);
        }
    }

    @Test
    void makesEverySettingOnTheWritersConnection() throws SQLException, IOException {
        Path file = parent.resolve("log.sqlite");
        SqliteFile.prepare(file);
        try (Connection connection = SqliteFile.writer(file, SqliteFile.Options.USUAL)) {
            assertEquals("wal", SqliteFile.text(connection, "journal_mode"));
            assertEquals(2, SqliteFile.number(connection, "synchronous"));
            assertEquals(1, SqliteFile.number(connection, "foreign_keys"));
            assertEquals(0, SqliteFile.number(connection, "trusted_schema"));
            assertEquals(1, SqliteFile.number(connection, "cell_size_check"));
            assertEquals(5_000, SqliteFile.number(connection, "busy_timeout"));
            assertEquals(1_000, SqliteFile.number(connection, "wal_autocheckpoint"));
            assertEquals(67_108_864, SqliteFile.number(connection, "journal_size_limit"));
            assertEquals(0, SqliteFile.number(connection, "mmap_size"));
            assertEquals(
                    SqliteFile.APPLICATION_ID, SqliteFile.number(connection, "application_id"));
            assertEquals(6, SqliteFile.number(connection, "user_version"));
        }
    }

    @Test
    void readersCanNotWrite() throws SQLException, IOException {
        Path file = parent.resolve("log.sqlite");
        SqliteFile.prepare(file);
        try (Connection connection = SqliteFile.reader(file);
                Statement statement = connection.createStatement()) {
            assertThrows(SQLException.class, () -> statement.executeUpdate("DELETE FROM events"));
        }
    }

    @Test
    void refusesALogOfANewerSopwellAndLeavesItAsItIs() throws SQLException, IOException {
        Path file = parent.resolve("log.sqlite");
        SqliteFile.prepare(file);
        run(file, "PRAGMA user_version = " + (SqliteFile.SCHEMA_VERSION + 1));
        byte[] before = Files.readAllBytes(file);
        try (DataFolder data = DataFolder.open(parent)) {
            FolderFault fault = assertThrows(FolderFault.class, () -> data.openLog("millrace"));
            assertTrue(fault.getMessage().contains("newer Sopwell"), fault.getMessage());
        }
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void refusesTheDatabaseOfAnotherProgram() throws SQLException, IOException {
        Path file = parent.resolve("log.sqlite");
        run(file, "CREATE TABLE recipes (name TEXT)");
        byte[] before = Files.readAllBytes(file);
        try (DataFolder data = DataFolder.open(parent)) {
            FolderFault fault = assertThrows(FolderFault.class, () -> data.openLog("millrace"));
            assertTrue(fault.getMessage().contains("another program"), fault.getMessage());
        }
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    @Test
    void refusesWhatIsNoDatabase() throws IOException {
        Path file = parent.resolve("log.sqlite");
        byte[] text = "a shopping list\n".repeat(200).getBytes(StandardCharsets.UTF_8);
        Files.write(file, text);
        try (DataFolder data = DataFolder.open(parent)) {
            assertThrows(FolderFault.class, () -> data.openLog("millrace"));
        }
        assertArrayEquals(text, Files.readAllBytes(file));
    }

    @Test
    void anEmptyFileBecomesALog() throws IOException {
        Files.createFile(parent.resolve("log.sqlite"));
        try (DataFolder data = DataFolder.open(parent);
                SqliteLog log = data.openLog("millrace")) {
            assertEquals(1, log.append(Samples.entries(1, 1)).get(0).seq());
        }
    }

    private static String permissions(Path file) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
    }

    /** A log as the first Sopwell made it: its events stay, and books of recipes are found. */
    @Test
    void raisesALogOfTheFirstVersion() throws SQLException, IOException {
        Path file = parent.resolve("log.sqlite");
        try (DataFolder data = DataFolder.open(parent);
                SqliteLog log = data.openLog("millrace")) {
            log.append(List.of(Samples.entry(1, new MenuAdopted(Samples.smallMenu()))));
        }
        run(file, "DROP INDEX events_rare");
        run(
                file,
                "CREATE INDEX events_rare ON events (stand, kind, seq)"
                        + " WHERE kind IN ('day-opened', 'day-closed', 'menu-adopted')");
        run(file, "DROP TABLE erased");
        run(file, "UPDATE events SET salt = NULL");
        run(file, "ALTER TABLE events DROP COLUMN salt");
        run(file, "PRAGMA user_version = 1");
        try (DataFolder data = DataFolder.open(parent);
                SqliteLog log = data.openLog("millrace")) {
            log.append(List.of(Samples.entry(2, new RecipesAdopted(Samples.smallBook()))));
            assertEquals(List.of(1L), log.placesOf(MenuAdopted.class));
            assertEquals(List.of(2L), log.placesOf(RecipesAdopted.class));
            assertEquals(OptionalLong.of(2), log.lastOf(RecipesAdopted.class, 2));
            log.append(List.of(Samples.entry(3, new CalendarSet(OwnerCalendar.EMPTY))));
            assertEquals(List.of(3L), log.placesOf(CalendarSet.class));
        }
        try (Connection connection = SqliteFile.writer(file, SqliteFile.Options.USUAL)) {
            assertEquals(6, SqliteFile.number(connection, "user_version"));
        }
    }

    private static void run(Path file, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.executeUpdate(sql);
        }
    }
}
