package sopwell.web.pages;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import sopwell.backup.BackupState;
import sopwell.backup.BackupState.Warning;
import sopwell.desk.ClockState;
import sopwell.desk.DiskState;
import sopwell.storage.BackupRule;
import sopwell.web.Care;

/** Backups and a clock that are as a test says. Thread-safe. */
final class CareStub {
    volatile BackupState backup =
            new BackupState(
                    "/media/stick/sopwell",
                    true,
                    false,
                    BackupRule.USUAL,
                    Optional.of(
                            new BackupState.Good(
                                    "millrace-20260114T100000.backup",
                                    1_768_384_800_000L,
                                    14,
                                    2_500_000)),
                    3,
                    Optional.empty(),
                    1_768_471_200_000L,
                    false,
                    Warning.NONE,
                    Optional.empty());
    volatile ClockState clock = new ClockState(ClockState.Trust.RIGHT, 0, 0);
    volatile DiskState disk = new DiskState(DiskState.Kind.WELL, OptionalLong.empty());
    final AtomicInteger asked = new AtomicInteger();

    Care care() {
        return new Care(
                () -> backup,
                () -> {
                    asked.incrementAndGet();
                    return CompletableFuture.completedFuture(true);
                },
                () -> clock,
                () -> disk);
    }

    /** From now on something is wrong. */
    void warn(
            Warning warning,
            Optional<BackupState.Failure> failure,
            Optional<BackupState.Origin> origin) {
        backup =
                new BackupState(
                        backup.folder(),
                        warning != Warning.FOLDER_MISSING,
                        true,
                        backup.rule(),
                        warning == Warning.NEVER ? Optional.empty() : backup.last(),
                        warning == Warning.NEVER ? 0 : backup.kept(),
                        failure,
                        backup.nextAtMs(),
                        false,
                        warning,
                        origin);
    }
}
