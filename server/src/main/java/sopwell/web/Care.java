package sopwell.web;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import sopwell.backup.BackupState;
import sopwell.desk.ClockState;
import sopwell.desk.DiskState;

/**
 * What a stand's owner must look after: its backups, the box's clock and its disk. Immutable;
 * everything in it is thread-safe.
 *
 * @param backup how the backups are
 * @param makeBackup makes one now; whether it came to something
 * @param clock how the box's clock is
 * @param disk how the disk with the log is
 */
public record Care(
        Supplier<BackupState> backup,
        Supplier<CompletableFuture<Boolean>> makeBackup,
        Supplier<ClockState> clock,
        Supplier<DiskState> disk) {}
