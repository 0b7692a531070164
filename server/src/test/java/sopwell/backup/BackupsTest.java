package sopwell.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.backup.BackupState.Warning;
import sopwell.storage.BackupFile;
import sopwell.storage.BackupRule;

/** What counts as a backup was opened and replayed; everything else is said. */
class BackupsTest {
    @TempDir Path folder;
    @TempDir Path stick;

    @Test
    void aBackupHoldsTheWholeStandAndIsTheOwnersAlone() throws IOException {
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            stand.desk.day(BackedUp.FIRST, 3);
            assertTrue(backups.makeNow().join());

            Path file = stick.resolve("millrace-20260115T110000.backup");
            assertEquals(List.of(file), files());
            assertEquals(
                    new BackupFile.Made(
                            "millrace",
                            stand.now.toEpochMilli(),
                            stand.log.lastSeq(),
                            stand.log.epoch()),
                    BackupFile.made(file));
            assertEquals(
                    Set.of("stand.json", "menu.json", "recipes.json"),
                    BackupFile.files(file).keySet());
            assertEquals(
                    "rw-------",
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
            BackupState state = backups.state();
            assertEquals(Warning.NONE, state.warning());
            assertEquals(1, state.kept());
            assertEquals(Files.size(file), state.last().orElseThrow().bytes());
            assertEquals(Instant.parse("2026-01-16T10:00:00Z").toEpochMilli(), state.nextAtMs());
        }
    }

    @Test
    void aFolderThatIsNotThereIsSaidAndNotMade() {
        Path gone = stick.resolve("gone");
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(gone, 14, 8))) {
            assertFalse(backups.makeNow().join());
            assertEquals(Warning.FOLDER_MISSING, backups.state().warning());
            assertTrue(backups.state().failure().orElseThrow().why().contains("is not there"));
            assertFalse(Files.exists(gone));
        }
    }

    @Test
    void anOldBackupIsWarnedOfAndANewOneIsNot() {
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            assertEquals(Warning.NEVER, backups.state().warning());
            assertTrue(backups.makeNow().join());
            stand.now = stand.now.plus(Duration.ofHours(47));
            assertEquals(Warning.NONE, backups.state().warning());
            stand.now = stand.now.plus(Duration.ofHours(1));
            assertEquals(Warning.OLD, backups.state().warning());
        }
    }

    @Test
    void aHalfWrittenOneNeverCountsAndIsSweptAway() throws IOException {
        Path half = stick.resolve("millrace-20260114T110000.backup.part");
        Files.write(half, new byte[4_096]);
        Files.write(stick.resolve("millrace-20260113T110000.backup"), new byte[4_096]);
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            assertEquals(Optional.empty(), new BackupFolder(stick, "millrace").newest());
            assertTrue(backups.makeNow().join());
            assertFalse(Files.exists(half));
            assertEquals(
                    "millrace-20260115T110000.backup", backups.state().last().orElseThrow().name());
        }
    }

    @Test
    void aBackupOfADamagedLogIsNone() throws IOException, SQLException {
        try (BackedUp stand = new BackedUp(folder)) {
            stand.desk.day(BackedUp.FIRST, 2);
            stand.desk.day(BackedUp.FIRST.plusDays(1), 2);
        }
        damage(folder.resolve("log.sqlite"));
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            assertFalse(backups.makeNow().join());
            assertEquals(List.of(), files());
            assertEquals(Warning.FAILED, backups.state().warning());
            String why = backups.state().failure().orElseThrow().why();
            assertTrue(why.contains("damaged"), why);
        }
    }

    @Test
    void theRuleThrowsOldOnesAway() throws IOException {
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 2, 2))) {
            for (int day = 0; day < 10; day++) {
                assertTrue(backups.makeNow().join());
                stand.now = stand.now.plus(Duration.ofDays(1));
            }
            // Thursday the 15th and nine days on: the last two dates, and Sunday the 18th.
            assertEquals(
                    List.of(
                            "millrace-20260118T110000.backup",
                            "millrace-20260123T110000.backup",
                            "millrace-20260124T110000.backup"),
                    files().stream().map(file -> file.getFileName().toString()).toList());
        }
    }

    @Test
    void withoutAFolderOfTheOwnersItStandsBesideTheLogAndSaysSo() {
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackupRule.USUAL)) {
            assertTrue(backups.makeNow().join());
            assertTrue(backups.state().sameDisk());
            assertEquals(folder.resolve("backups").toString(), backups.state().folder());
        }
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(stick)) {
            return all.sorted().toList();
        }
    }

    /** Changes one letter of the first order, long ago; SQLite itself finds nothing wrong. */
    private static void damage(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            assertEquals(
                    1,
                    statement.executeUpdate(
                            "UPDATE events SET body = replace(body, 'fries', 'frles')"
                                    + " WHERE seq = (SELECT min(seq) FROM events"
                                    + " WHERE kind = 'order-placed')"));
        }
    }
}
