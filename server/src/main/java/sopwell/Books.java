package sopwell;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import sopwell.backup.Backups;
import sopwell.desk.DayBook;
import sopwell.orders.StandSettings;
import sopwell.storage.BackupRule;
import sopwell.storage.DataFolder;
import sopwell.storage.LogCheck;
import sopwell.storage.SqliteLog;
import sopwell.storage.TallyFile;

/** Looks after what is kept of past days, of a stand that does not run. Not thread-safe. */
final class Books {
    private final Path data;
    private final PrintStream out;
    private final InstantSource clock;

    Books(Path data, PrintStream out, InstantSource clock) {
        this.clock = clock;
        this.data = data;
        this.out = out;
    }

    /** A stand that does not run. */
    private record Opened(DataFolder folder, StandSettings settings, SqliteLog log, DayBook book) {}

    /** What is done with a stand's book. */
    private interface Work {
        void on(Opened stand) throws StartRefused;
    }

    /**
     * Counts every past day anew.
     *
     * @throws StartRefused when there is no stand in the folder, or it runs
     */
    void rebuild() throws StartRefused {
        with(
                stand -> {
                    int days =
                            stand.book()
                                    .rebuild(
                                            (done, all) -> {
                                                if (done % 100 == 0) {
                                                    out.println(done + " of " + all + " days");
                                                }
                                            });
                    out.println("counted anew: " + days + " days");
                });
    }

    /**
     * Checks the whole log with its indexes, and compares what is kept of past days with it.
     *
     * @throws StartRefused when there is no stand in the folder, it runs, or something is wrong
     */
    void check() throws StartRefused {
        with(
                stand -> {
                    SqliteLog log = stand.log();
                    out.println("Sopwell " + Version.NUMBER + ", schema " + DataFolder.schema());
                    out.println("checked at " + clock.instant().truncatedTo(ChronoUnit.SECONDS));
                    out.println(backup(stand));
                    long events = log.lastSeq();
                    LogCheck check = stand.folder().checkOf(stand.settings().stand());
                    List<LocalDate> wrong =
                            Ahead.whileChecking(
                                    () -> check.newest(events, events),
                                    stand.book()::wrong,
                                    days -> {});
                    out.println("the log holds " + events + " events, each as it was written");
                    if (!wrong.isEmpty()) {
                        throw new StartRefused(
                                "What is kept of these days is not what the log says: "
                                        + wrong.stream()
                                                .map(LocalDate::toString)
                                                .collect(Collectors.joining(", "))
                                        + ". \"sopwell rebuild\" counts them anew.");
                    }
                    out.println("what is kept of past days is what the log says");
                });
    }

    private static String backup(Opened stand) throws StartRefused {
        BackupRule rule = StandFolder.backup(stand.folder());
        return Backups.newest(stand.folder(), rule, stand.settings().stand())
                .map(
                        good ->
                                "the newest good backup is "
                                        + good.name()
                                        + " of "
                                        + Instant.ofEpochMilli(good.atMs())
                                                .truncatedTo(ChronoUnit.SECONDS)
                                        + ", up to event "
                                        + good.lastSeq())
                .orElse("there is no good backup");
    }

    private void with(Work work) throws StartRefused {
        if (!Files.isDirectory(data)) {
            throw new StartRefused(
                    "There is no folder " + data + ". Name the stand's with --data.");
        }
        try (DataFolder folder = DataFolder.open(data)) {
            if (!folder.hasLog()) {
                throw new StartRefused(
                        "There is no stand in " + data + ". Name its folder with --data.");
            }
            StandSettings settings = StandFolder.settings(folder);
            try (SqliteLog log = folder.openLog(settings.stand());
                    TallyFile tallies = folder.openTallies(settings.stand())) {
                DayBook book = new DayBook(log, settings, tallies.shelves());
                work.on(new Opened(folder, settings, log, book));
            }
        }
    }
}
