package sopwell.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sopwell.log.Entry;
import sopwell.log.EventLog;
import sopwell.log.LogFault;
import sopwell.log.Recorded;

class SqliteLogTest extends EventLogContract {
    @TempDir Path folder;
    private DataFolder data;
    private SqliteLog log;

    @BeforeEach
    void open() {
        openWith(SqliteFile.Options.USUAL);
    }

    @AfterEach
    void close() {
        log.close();
        data.close();
    }

    @Override
    EventLog log() {
        return log;
    }

    @Override
    EventLog again() {
        close();
        open();
        return log;
    }

    @Test
    void everyNewLogHasAnEpochOfItsOwn(@TempDir Path other) {
        assertTrue(log.epoch().matches("[0-9a-f]{16}"), log.epoch());
        try (DataFolder second = DataFolder.open(other);
                SqliteLog fresh = second.openLog("millrace")) {
            assertNotEquals(log.epoch(), fresh.epoch());
        }
    }

    @Test
    void saysThatTheDiskIsFullAndGoesOnWhenItIsNot() {
        close();
        openWith(new SqliteFile.Options(40, SqliteFile.FULL));
        int kept = 0;
        LogFault full = null;
        while (full == null) {
            try {
                log.append(Samples.entries(kept, 8));
                kept += 8;
            } catch (LogFault e) {
                full = e;
            }
            assertTrue(kept < 2_000, "40 pages do not hold so much");
        }
        assertTrue(full.getMessage().contains("FULL"), full.getMessage());
        assertTrue(kept > 0);
        assertEquals(kept, log.lastSeq());
        List<Entry> whole = Samples.entries(kept, 8);
        assertThrows(LogFault.class, () -> log.append(whole), "it is still full");
        assertEquals(kept, log.lastSeq());
        assertEquals(kept, all(log).size());
        close();
        open();
        assertEquals(kept, log.lastSeq());
        assertEquals(kept + 1, log.append(whole).get(0).seq());
        assertEquals(kept + 8, all(again()).size());
    }

    @Test
    void smallAppendsStillFitAfterOneThatDidNot() {
        close();
        openWith(new SqliteFile.Options(60, SqliteFile.FULL));
        log.append(Samples.entries(0, 4));
        assertThrows(LogFault.class, () -> log.append(Samples.entries(100, 500)));
        List<Recorded> next = log.append(Samples.entries(4, 4));
        assertEquals(5, next.get(0).seq());
        assertEquals(8, all(again()).size());
        assertTrue(log.find("key-100").isEmpty());
    }

    @Test
    void readersSeeWholeAppendsOnly() throws InterruptedException {
        AtomicBoolean stop = new AtomicBoolean();
        AtomicReference<Throwable> failed = new AtomicReference<>();
        Thread reading =
                new Thread(
                        () -> {
                            try {
                                while (!stop.get()) {
                                    long last = log.lastSeq();
                                    assertEquals(0, last % 10, "half an append is in sight");
                                    assertEquals(last, range(log, 1, last).size());
                                }
                            } catch (RuntimeException | AssertionError e) {
                                failed.set(e);
                            }
                        });
        reading.start();
        for (int n = 0; n < 60; n++) {
            log.append(Samples.entries(n * 10, 10));
        }
        stop.set(true);
        reading.join();
        assertEquals(null, failed.get());
    }

    @Test
    void twoStandsInOneFileKnowNothingOfEachOther() {
        log.append(Samples.entries(1, 3));
        try (SqliteLog other =
                new SqliteLog(folder.resolve("log.sqlite"), "tarn", SqliteFile.Options.USUAL)) {
            assertEquals(0, other.lastSeq());
            assertEquals(1, other.append(Samples.entries(3, 1)).get(0).seq());
            assertEquals(1, all(other).size());
            assertTrue(other.find("key-1").isEmpty());
        }
        assertEquals(3, log.lastSeq());
        assertEquals(4, log.append(Samples.entries(4, 1)).get(0).seq());
        assertEquals(4, all(log).size());
    }

    @Test
    void aClosedLogSaysSo() {
        log.append(Samples.entries(1, 1));
        log.close();
        LogFault fault = assertThrows(LogFault.class, () -> log.read(1, 1, r -> {}));
        assertTrue(fault.getMessage().contains("closed"), fault.getMessage());
        assertThrows(LogFault.class, () -> log.append(Samples.entries(2, 1)));
        assertEquals(1, again().lastSeq());
    }

    @Test
    void leavesNoWriteAheadFileBehind() {
        log.append(Samples.entries(1, 100));
        close();
        assertTrue(Files.exists(folder.resolve("log.sqlite")));
        assertTrue(Files.notExists(folder.resolve("log.sqlite-wal")));
        open();
    }

    private void openWith(SqliteFile.Options options) {
        data = DataFolder.open(folder);
        log = data.openLog("millrace", options);
    }
}
