package sopwell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.logging.Logger;
import sopwell.desk.DiskGuard;
import sopwell.desk.DiskState;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.EventLog;
import sopwell.storage.LogLimits;

/** Looks at the disk with the log every few seconds. Thread-safe. */
final class DiskWatch implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(DiskWatch.class.getName());

    private final DiskGuard guard;
    private final SpareTime time;

    /** What says how much is free, and from when on the stand minds. */
    record Disk(DiskGuard.Space space, DiskGuard.Terms terms) {
        /** That of a folder, with the usual terms. */
        static Disk of(Path folder) {
            return new Disk(
                    () -> Files.getFileStore(folder).getUsableSpace(),
                    new DiskGuard.Terms(
                            LogLimits.DISK_WARN_BYTES,
                            LogLimits.DISK_RESERVE_BYTES,
                            LogLimits.WRITE_FAILURES_MAX,
                            TimeUnit.SECONDS.toNanos(LogLimits.WRITE_FAILURES_SECONDS)));
        }
    }

    /** Looks from now on; what is written to see whether the log takes it goes to its file. */
    DiskWatch(Disk disk, EventLog log, LongSupplier nanos) {
        guard = new DiskGuard(disk.space(), disk.terms(), nanos);
        time =
                new SpareTime(
                        "disk",
                        here -> look(log),
                        LogLimits.DISK_LOOK_SECONDS,
                        LogLimits.DISK_LOOK_SECONDS);
    }

    /** A look that goes wrong must not be the last. */
    private void look(EventLog log) {
        try {
            guard.look(log::probe);
        } catch (RuntimeException fault) {
            Told.of(Happening.DISK_UNSEEN).fault(fault).to(LOGGER);
        }
    }

    DiskGuard guard() {
        return guard;
    }

    DiskState state() {
        return guard.state();
    }

    @Override
    public void close() {
        time.close();
    }
}
