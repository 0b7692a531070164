package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stand refuses to start on, and that it leaves it as it was. */
class StartRefusalTest {
    private static final String STAND = "millrace";

    @TempDir Path work;

    @Test
    void refusesNetworkDisksAndNoOthers() {
        for (String type : new String[] {"nfs4", "cifs", "9p", "fuse.sshfs"}) {
            assertTrue(DiskRules.isRemote(type), type);
        }
        for (String type : new String[] {"ext4", "tmpfs", "xfs", "btrfs", "overlay", "NTFS"}) {
            assertFalse(DiskRules.isRemote(type), type);
        }
    }

    @Test
    void refusesAnSqliteThatCanDamageALog() {
        assertTrue(DiskRules.isTooOld("3.40.1"));
        assertTrue(DiskRules.isTooOld("3.51.2"));
        assertFalse(DiskRules.isTooOld("3.51.3"));
        assertFalse(DiskRules.isTooOld("3.54.1"));
        assertFalse(DiskRules.isTooOld("4.0"));
    }

    @Test
    void aLogThatLostItsEndIsRefusedUntouchedAndAcceptedWhenToldSo() throws IOException {
        Path killed = work.resolve("killed");
        String epoch = killedAfter(killed, 40);
        Files.delete(killed.resolve("log.sqlite-wal"));
        byte[] before = Files.readAllBytes(killed.resolve("log.sqlite"));
        LogLoss loss = assertThrows(LogLoss.class, () -> last(killed));
        assertTrue(loss.getMessage().contains("40 were kept"), loss.getMessage());
        assertTrue(loss.getMessage().contains("--accept-loss"), loss.getMessage());
        assertArrayEquals(before, Files.readAllBytes(killed.resolve("log.sqlite")));
        try (DataFolder folder = DataFolder.open(killed)) {
            assertTrue(folder.acceptLoss(STAND).isPresent());
            try (SqliteLog log = folder.openLog(STAND)) {
                assertEquals(0, log.lastSeq());
                assertNotEquals(epoch, log.epoch(), "screens start over");
            }
        }
        assertEquals(0, last(killed), "a loss is accepted once");
    }

    @Test
    void aCutWriteAheadFileIsFoundAndLeftAsItIs() throws IOException {
        Path killed = work.resolve("killed");
        killedAfter(killed, 40);
        Path ahead = killed.resolve("log.sqlite-wal");
        byte[] whole = Files.readAllBytes(ahead);
        byte[] cut = java.util.Arrays.copyOf(whole, whole.length - 5_000);
        Files.write(ahead, cut);
        assertThrows(LogLoss.class, () -> last(killed));
        assertArrayEquals(cut, Files.readAllBytes(ahead), "what can be saved of it is there");
    }

    @Test
    void aKilledLogAndAnOlderNoteAreNoLoss() throws IOException {
        Path killed = work.resolve("killed");
        killedAfter(killed, 40);
        assertEquals(40, last(killed));
        Files.write(killed.resolve("log.mark"), new byte[5_000]);
        assertEquals(40, last(killed), "a note that can't be made out says nothing");
        try (DataFolder folder = DataFolder.open(killed)) {
            assertTrue(folder.acceptLoss(STAND).isEmpty(), "nothing is lost");
        }
    }

    /** A folder as a killed server leaves it; the log's epoch. */
    private String killedAfter(Path killed, int events) throws IOException {
        Path running = work.resolve("running");
        try (DataFolder folder = DataFolder.open(running);
                SqliteLog log = folder.openLog(STAND)) {
            log.append(Samples.entries(0, events / 2));
            log.append(Samples.entries(events / 2, events / 2));
            assertEquals(events, log.lastSeq());
            Files.createDirectories(killed);
            try (Stream<Path> files = Files.list(running)) {
                for (Path file : files.toList()) {
                    Path to = killed.resolve(file.getFileName());
                    Files.copy(file, to, StandardCopyOption.REPLACE_EXISTING);
                }
            }
            Files.deleteIfExists(killed.resolve("log.sqlite-shm"));
            return log.epoch();
        }
    }

    private static long last(Path folder) {
        try (DataFolder data = DataFolder.open(folder);
                SqliteLog log = data.openLog(STAND)) {
            return log.lastSeq();
        }
    }
}
