package sopwell.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.function.BooleanSupplier;
import sopwell.desk.Replay;
import sopwell.desk.Stand;
import sopwell.log.LogFault;
import sopwell.orders.StandSettings;
import sopwell.storage.BackupFile;
import sopwell.storage.DataFolder;
import sopwell.storage.Disk;
import sopwell.storage.SqliteLog;

/**
 * Makes one backup and only then gives it its name: when it was opened, every event's hash followed
 * from the one before, and all of it was replayed to what the running stand was at that event.
 * Belongs to one thread.
 */
final class BackupMaker {
    private final DataFolder data;
    private final SqliteLog log;
    private final StandSettings settings;

    BackupMaker(DataFolder data, SqliteLog log, StandSettings settings) {
        this.data = data;
        this.log = log;
        this.settings = settings;
    }

    /**
     * Makes it.
     *
     * @param stop says that it is to be given up
     * @throws LogFault when it came to nothing; the sentence says why
     */
    void make(BackupFolder into, Instant at, BooleanSupplier stop) {
        Path file = into.fresh(at);
        Path part = BackupFolder.part(file);
        try {
            needRoom(into.path());
            BackupFile.Made made = data.backUp(part, settings.stand(), at.toEpochMilli(), stop);
            verify(part, made, stop);
            Disk.rename(part, file);
        } catch (IOException fault) {
            throw new LogFault("The backup can't be kept: " + fault, fault);
        } finally {
            deleteQuietly(part);
        }
    }

    private void needRoom(Path folder) throws IOException {
        long free = Files.getFileStore(folder).getUsableSpace();
        long needed = data.logBytes() + BackupLimits.BACKUP_RESERVE_BYTES;
        if (free < needed) {
            throw new LogFault(
                    "There is no room for a backup in "
                            + folder
                            + ": "
                            + free / 1_000_000
                            + " MB are free, "
                            + needed / 1_000_000
                            + " MB are needed.");
        }
    }

    private void verify(Path part, BackupFile.Made made, BooleanSupplier stop) {
        Fold running = Fold.of(Replay.at(log, settings, made.lastSeq(), event -> {}));
        String hash = log.hashOf(made.lastSeq());
        if (!replayed(part, settings, hash, stop).equals(running)) {
            throw new LogFault("The backup does not replay to what the stand is.");
        }
    }

    /**
     * What a backup comes to, read from its first event to its last.
     *
     * @param hash what its last event's hash must be, or empty when nobody knows
     * @throws LogFault when it is damaged, or not what it says it is
     */
    static Fold replayed(Path file, StandSettings settings, String hash, BooleanSupplier stop) {
        BackupFile.Made made = BackupFile.made(file);
        Stand stand = new Stand(settings);
        try (SqliteLog log = BackupFile.log(file, made.stand())) {
            if (log.lastSeq() != made.lastSeq() || !log.epoch().equals(made.epoch())) {
                throw new LogFault(file + " is not the log that it says it is.");
            }
            log.read(
                    1,
                    log.lastSeq(),
                    recorded -> {
                        if (stop.getAsBoolean()) {
                            throw new LogFault("The stand is stopping; the backup was given up.");
                        }
                        stand.apply(recorded);
                    });
            if (!hash.isEmpty() && !hash.equals(log.hashOf(made.lastSeq()))) {
                throw new LogFault("The backup's last event is not the running log's.");
            }
        }
        return Fold.of(stand);
    }

    private static void deleteQuietly(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException stays) {
            // It has no backup's name; the next one sweeps it away.
        }
    }
}
