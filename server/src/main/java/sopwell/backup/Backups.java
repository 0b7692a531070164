package sopwell.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import java.util.logging.Logger;
import sopwell.backup.BackupState.Failure;
import sopwell.backup.BackupState.Good;
import sopwell.backup.BackupState.Warning;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.LogFault;
import sopwell.orders.StandSettings;
import sopwell.storage.BackupRule;
import sopwell.storage.DataFolder;
import sopwell.storage.Restored;
import sopwell.storage.SqliteLog;

/**
 * Has a backup made when one is due, on a thread of its own: at the hour, when a day was closed,
 * when somebody asks, and every few minutes where they are quick and go to another disk.
 * Thread-safe.
 */
public final class Backups implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(Backups.class.getName());
    private static final String USUAL_FOLDER = "backups";

    private final StandSettings settings;
    private final BackupRule rule;
    private final DataFolder data;
    private final SqliteLog log;
    private final BackupFolder folder;
    private final BackupMaker maker;
    private final InstantSource clock;
    private final LongSupplier nanos;
    private volatile Optional<Restored> restored;
    private final ScheduledExecutorService worker =
            Executors.newSingleThreadScheduledExecutor(Backups::thread);
    private volatile Future<?> looks = CompletableFuture.completedFuture(null);
    private volatile boolean closing;
    private volatile boolean making;
    private volatile boolean wanted;
    private volatile Optional<Failure> failure = Optional.empty();
    private volatile Optional<Good> last = Optional.empty();
    private volatile long tookMillis;
    private volatile Instant triedAt = Instant.MIN;

    /**
     * What is backed up.
     *
     * @param data the stand's folder
     * @param log the running log in it
     */
    public record Source(DataFolder data, SqliteLog log, StandSettings settings, BackupRule rule) {}

    /** Makes none before it is started. */
    public Backups(Source source, InstantSource clock, LongSupplier nanos) {
        this.settings = source.settings();
        this.rule = source.rule();
        this.data = source.data();
        this.log = source.log();
        this.clock = clock;
        this.nanos = nanos;
        this.maker = new BackupMaker(data, log, settings);
        this.folder = new BackupFolder(path(data, rule), settings.stand());
        this.restored = data.restored();
    }

    /** The newest good backup of a stand that does not run. */
    public static Optional<Good> newest(DataFolder data, BackupRule rule, String stand) {
        return new BackupFolder(path(data, rule), stand).newest();
    }

    /** From now on looks by itself whether one is due. */
    public void start() {
        worker.execute(() -> last = folder.newest());
        looks =
                worker.scheduleWithFixedDelay(
                        this::look,
                        BackupLimits.BACKUP_LOOK_SECONDS,
                        BackupLimits.BACKUP_LOOK_SECONDS,
                        TimeUnit.SECONDS);
    }

    /** A day was closed: what it came to is safe as soon as possible. */
    public void dayClosed() {
        wanted = true;
        try {
            worker.execute(this::look);
        } catch (RejectedExecutionException closed) {
            LOGGER.fine("closed; no more backups");
        }
    }

    /** Makes one now; says whether it came to something. */
    public CompletableFuture<Boolean> makeNow() {
        CompletableFuture<Boolean> made = new CompletableFuture<>();
        try {
            worker.execute(() -> made.complete(make()));
        } catch (RejectedExecutionException closed) {
            made.complete(false);
        }
        return made;
    }

    /**
     * A screen says what it saw last. If that was of the log that this stand was restored from, it
     * may be later than anything that was known to be missing.
     */
    public void seen(String epoch, long seq) {
        if (restored.filter(note -> isNews(note, epoch, seq)).isPresent()) {
            try {
                worker.execute(() -> note(epoch, seq));
            } catch (RejectedExecutionException closed) {
                LOGGER.fine("closed; the screen will say it again");
            }
        }
    }

    private static boolean isNews(Restored note, String epoch, long seq) {
        return note.epoch().equals(epoch)
                && seq > note.knownSeq()
                && seq - note.lastSeq() <= BackupLimits.SEEN_BEYOND_EVENTS_MAX;
    }

    private void note(String epoch, long seq) {
        try {
            Optional<Restored> news =
                    restored.filter(note -> isNews(note, epoch, seq)).map(note -> note.seen(seq));
            news.ifPresent(data::putRestored);
            restored = news.or(() -> restored);
        } catch (LogFault fault) {
            Told.of(Happening.SEEN_UNNOTED).fault(fault).to(LOGGER);
        }
    }

    /** How it all is. */
    public BackupState state() {
        Instant now = clock.instant();
        boolean there = folder.isThere();
        return new BackupState(
                folder.path().toString(),
                there,
                isSameDisk(),
                rule,
                last,
                folder.all().size(),
                failure,
                Due.next(now, rule.hour(), settings.zone()).toEpochMilli(),
                making,
                warning(there, now),
                restored.map(BackupState.Origin::of));
    }

    /** What is being made is given up. */
    @Override
    public void close() {
        closing = true;
        looks.cancel(false);
        worker.shutdown();
        try {
            if (!worker.awaitTermination(BackupLimits.BACKUP_LOOK_SECONDS, TimeUnit.SECONDS)) {
                Told.of(Happening.UNFINISHED).id("part", "backup").to(LOGGER);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private Warning warning(boolean there, Instant now) {
        if (!there && !rule.folder().isEmpty()) {
            return Warning.FOLDER_MISSING;
        }
        if (failure.isPresent()) {
            return Warning.FAILED;
        }
        if (last.isEmpty()) {
            return Warning.NEVER;
        }
        Duration old = Duration.between(Instant.ofEpochMilli(last.get().atMs()), now);
        return old.toHours() >= BackupLimits.BACKUP_OLD_HOURS ? Warning.OLD : Warning.NONE;
    }

    /** A look that fails must not be the last. */
    private void look() {
        try {
            last = folder.newest();
            if (isDue(clock.instant())) {
                make();
            }
        } catch (RuntimeException fault) {
            Told.of(Happening.BACKUP_FAILED).fault(fault).to(LOGGER);
        }
    }

    private boolean isDue(Instant now) {
        if (failure.isPresent()
                && now.isBefore(
                        triedAt.plus(Duration.ofMinutes(BackupLimits.BACKUP_AGAIN_MINUTES)))) {
            return false;
        }
        if (wanted || last.isEmpty()) {
            return true;
        }
        Instant lastAt = Instant.ofEpochMilli(last.get().atMs());
        if (lastAt.isBefore(Due.last(now, rule.hour(), settings.zone()))) {
            return true;
        }
        return last.get().lastSeq() < log.lastSeq()
                && now.isAfter(lastAt.plus(Duration.ofMinutes(BackupLimits.BACKUP_OFTEN_MINUTES)))
                && tookMillis > 0
                && tookMillis <= BackupLimits.BACKUP_QUICK_MILLIS
                && !isSameDisk();
    }

    private boolean make() {
        making = true;
        Instant now = clock.instant();
        triedAt = now;
        wanted = false;
        long fromNanos = nanos.getAsLong();
        try {
            prepare();
            maker.make(folder, now, () -> closing);
            folder.prune(rule, settings.zone());
            last = folder.newest();
            failure = Optional.empty();
            tookMillis = Duration.ofNanos(nanos.getAsLong() - fromNanos).toMillis() + 1;
            Told.of(Happening.BACKUP_MADE).with("millis", tookMillis).to(LOGGER);
            return true;
        } catch (LogFault | IOException fault) {
            wanted = true;
            failure = Optional.of(new Failure(now.toEpochMilli(), fault.getMessage()));
            if (!closing) {
                Told.of(Happening.BACKUP_FAILED)
                        .own("why", fault.getMessage())
                        .fault(fault)
                        .to(LOGGER);
            }
            return false;
        } finally {
            making = false;
        }
    }

    /** A folder that the owner chose is not made: on a stick that is not in, it would be a lie. */
    private void prepare() throws IOException {
        if (rule.folder().isEmpty()) {
            Files.createDirectories(folder.path());
        } else if (!folder.isThere()) {
            throw new LogFault("The folder " + folder.path() + " is not there.");
        }
        if (folder.sweep()) {
            Told.of(Happening.BACKUP_CUT_SHORT).to(LOGGER);
        }
    }

    private static Path path(DataFolder data, BackupRule rule) {
        return rule.folder().isEmpty() ? data.path().resolve(USUAL_FOLDER) : Path.of(rule.folder());
    }

    private boolean isSameDisk() {
        try {
            return folder.isThere()
                    && Files.getFileStore(folder.path()).equals(Files.getFileStore(data.path()));
        } catch (IOException unknown) {
            return false;
        }
    }

    private static Thread thread(Runnable task) {
        Thread thread = new Thread(task, "backup");
        thread.setDaemon(true);
        return thread;
    }
}
