package sopwell.web;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import sopwell.backup.BackupState;
import sopwell.desk.ClockState;

/**
 * What a stand's owner must look after: its backups and the box's clock. Immutable; everything in
 * it is thread-safe.
 *
 * @param backup how the backups are
 * @param makeBackup makes one now; whether it came to something
 * @param clock how the box's clock is
 */
public record Care(
        Supplier<BackupState> backup,
        Supplier<CompletableFuture<Boolean>> makeBackup,
        Supplier<ClockState> clock) {}
