package sopwell.backup;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.desk.Replay;
import sopwell.log.LogFault;
import sopwell.storage.BackupFile;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;

/** A restored stand is what the backup held, under a new epoch, and says what it lacks. */
class RestoreTest {
    private static final Instant NOW = Instant.parse("2026-01-17T12:00:00Z");

    @TempDir Path folder;
    @TempDir Path stick;
    @TempDir Path other;
    private Path backup;
    private BackupFile.Made made;
    private long lastSeq;
    private Fold fold;

    @BeforeEach
    void backUpAndGoOn() {
        try (BackedUp stand = new BackedUp(folder);
                Backups backups = stand.backups(BackedUp.into(stick, 14, 8))) {
            stand.desk.day(BackedUp.FIRST, 3);
            stand.desk.day(BackedUp.FIRST.plusDays(1), 2);
            assertTrue(backups.makeNow().join());
            fold = Fold.of(Replay.newestDay(stand.log, BackedUp.settings(), event -> {}));
            backup = stick.resolve(backups.state().last().orElseThrow().name());
            made = BackupFile.made(backup);
            stand.desk.day(BackedUp.FIRST.plusDays(2), 4);
            lastSeq = stand.log.lastSeq();
        }
    }

    @Test
    void anEmptyFolderBecomesWhatTheBackupHeld() {
        Path fresh = other.resolve("stand");
        String said = restored(fresh, false);
        assertTrue(said.contains("restored: the stand as it was on 2026-01-15 05:00"), said);
        assertTrue(said.contains("its newest day is 2026-01-15, with 2 orders"), said);
        assertFalse(said.contains("missing"), said);
        try (DataFolder data = DataFolder.open(fresh);
                SqliteLog log = data.openLog("millrace")) {
            assertEquals(made.lastSeq(), log.lastSeq());
            assertNotEquals(made.epoch(), log.epoch(), "screens start over");
            assertEquals(fold, Fold.of(Replay.newestDay(log, BackedUp.settings(), e -> {})));
            assertArrayEquals(BackedUp.demo("menu.json"), data.menu().orElseThrow());
            assertArrayEquals(BackedUp.demo("stand.json"), data.stand().orElseThrow());
            assertArrayEquals(BackedUp.demo("recipes.json"), data.recipes().orElseThrow());
        }
    }

    @Test
    void aStandThatIsThereGivesWayOnlyWhenThatIsAskedFor() throws IOException {
        Map<String, Long> before = sizes();
        LogFault fault = assertThrows(LogFault.class, () -> restored(folder, false));
        assertTrue(fault.getMessage().contains("--replace"), fault.getMessage());
        assertEquals(before, sizes(), "nothing was changed");

        String said = restored(folder, true);
        assertTrue(
                said.contains(
                        "events " + (made.lastSeq() + 1) + ".." + lastSeq + " are missing: what"),
                said);
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog("millrace")) {
            assertEquals(made.lastSeq(), log.lastSeq());
            assertEquals(lastSeq, data.restored().orElseThrow().knownSeq());
        }
        Path aside = folder.resolve("replaced-20260117T120000");
        try (DataFolder data = DataFolder.look(aside);
                SqliteLog log = data.openLog("millrace")) {
            assertEquals(lastSeq, log.lastSeq(), "what was there is kept");
        }
    }

    @Test
    void whatIsNoWholeBackupIsRefusedAndChangesNothing() throws IOException {
        byte[] whole = Files.readAllBytes(backup);
        Path half = stick.resolve("half.backup");
        Files.write(half, java.util.Arrays.copyOf(whole, whole.length / 2));
        Path flipped = stick.resolve("flipped.backup");
        byte[] other = whole.clone();
        other[find(other, "\"item\":\"fries\"") + 9] = 'F';
        Files.write(flipped, other);
        Map<String, Long> before = sizes();
        for (Path wrong : List.of(half, flipped, stick.resolve("none"), folder)) {
            assertThrows(LogFault.class, () -> restored(wrong, folder, true), wrong.toString());
            assertEquals(before, sizes(), wrong.toString());
        }
        LogFault log =
                assertThrows(
                        LogFault.class, () -> restored(folder.resolve("log.sqlite"), folder, true));
        assertTrue(log.getMessage().contains("not a backup"), log.getMessage());
    }

    @Test
    void aFolderInUseIsLeftAlone() {
        try (DataFolder running = DataFolder.open(folder)) {
            assertEquals(folder, running.path());
            LogFault busy = assertThrows(LogFault.class, () -> restored(folder, true));
            assertTrue(busy.getMessage().contains("Another Sopwell"), busy.getMessage());
        }
    }

    @Test
    void aRestoreThatWasCutShortIsSeenAndCanBeDoneAgain() throws IOException {
        try (DataFolder data = DataFolder.open(folder)) {
            data.beginRestore(backup);
            assertTrue(data.isHalfRestored());
            data.giveUpRestore();
            assertFalse(data.isHalfRestored());
            data.beginRestore(backup);
        }
        restored(folder, true);
        try (DataFolder data = DataFolder.open(folder)) {
            assertFalse(data.isHalfRestored());
        }
    }

    private String restored(Path to, boolean replace) {
        return restored(backup, to, replace);
    }

    private static String restored(Path from, Path to, boolean replace) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        new Restore(from, to, () -> NOW, new PrintStream(said, true, StandardCharsets.UTF_8))
                .run(replace);
        return said.toString(StandardCharsets.UTF_8);
    }

    private Map<String, Long> sizes() throws IOException {
        Map<String, Long> sizes = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = file.getFileName().toString();
                if (!name.endsWith("-shm") && !name.endsWith("-wal")) {
                    sizes.put(name, Files.size(file));
                }
            }
        }
        return sizes;
    }

    private static int find(byte[] all, String text) {
        String latin = new String(all, StandardCharsets.ISO_8859_1);
        int at = latin.indexOf(text);
        assertTrue(at > 0, text);
        return at;
    }
}
