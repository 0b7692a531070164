package sopwell.backup;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import sopwell.log.LogFault;
import sopwell.orders.StandSettings;
import sopwell.storage.BackupFile;
import sopwell.storage.DataFolder;
import sopwell.storage.Restored;
import sopwell.storage.SqliteLog;
import sopwell.storage.StandFile;

/** {@code sopwell restore}: makes a data folder what a backup holds. Not thread-safe. */
public final class Restore {
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Path from;
    private final Path data;
    private final InstantSource clock;
    private final PrintStream out;

    /** Restores a backup to a folder; says on a stream what came of it. */
    public Restore(Path from, Path data, InstantSource clock, PrintStream out) {
        this.from = from;
        this.data = data;
        this.clock = clock;
        this.out = out;
    }

    /**
     * Does it.
     *
     * @param replace whether a stand that is in the folder gives way
     * @throws LogFault when it is not done; the sentence says why, and the folder is as it was
     */
    public void run(boolean replace) {
        BackupFile.Made made = BackupFile.made(from);
        StandSettings settings = settings();
        try (DataFolder folder = DataFolder.open(data)) {
            if (folder.isTaken() && !replace) {
                throw new LogFault(
                        "There is a stand in "
                                + data
                                + " already; nothing was changed. With --replace it is moved into"
                                + " a folder within "
                                + data
                                + ", and the backup takes its place.");
            }
            Fold fold = copied(folder, settings);
            Instant now = clock.instant();
            long marked = folder.markedSeq(made.stand(), made.epoch());
            long known = Math.max(made.lastSeq(), Math.max(marked, lastSeq(folder, made)));
            Restored note =
                    new Restored(
                            now.toEpochMilli(), made.atMs(), made.lastSeq(), known, made.epoch());
            String aside = "replaced-" + NAME.format(now.atOffset(ZoneOffset.UTC));
            folder.finishRestore(note, aside);
            say(note, fold, settings.zone());
        }
    }

    private StandSettings settings() {
        byte[] json = BackupFile.files(from).get("stand.json");
        if (json == null) {
            throw new LogFault(from + " has no stand.json in it.");
        }
        return StandFile.read(json)
                .settings()
                .orElseThrow(
                        () -> new LogFault("This Sopwell can't read the stand.json in " + from));
    }

    /** The copy is looked at, not the backup: what counts is what is on the disk here. */
    private Fold copied(DataFolder folder, StandSettings settings) {
        boolean sound = false;
        try {
            Path copy = folder.beginRestore(from);
            Fold fold = BackupMaker.replayed(copy, settings, "", () -> false);
            sound = true;
            return fold;
        } finally {
            if (!sound) {
                folder.giveUpRestore();
            }
        }
    }

    /** How far the log went that gives way, if it is the same and can be read. */
    private long lastSeq(DataFolder folder, BackupFile.Made made) {
        if (!folder.hasLog()) {
            return 0;
        }
        try (DataFolder looked = DataFolder.look(data);
                SqliteLog old = looked.openLog(made.stand())) {
            return old.epoch().equals(made.epoch()) ? old.lastSeq() : 0;
        } catch (LogFault unreadable) {
            out.println("what was in the folder can't be read: " + unreadable.getMessage());
            return 0;
        }
    }

    private void say(Restored note, Fold fold, ZoneId zone) {
        out.println(
                "restored: the stand as it was on "
                        + time(note.madeAtMs(), zone)
                        + ", "
                        + note.lastSeq()
                        + " events, each as it was written");
        fold.date()
                .ifPresent(
                        date ->
                                out.println(
                                        "its newest day is "
                                                + date
                                                + ", with "
                                                + fold.orders().size()
                                                + " orders"));
        if (note.isMissingSome()) {
            out.println(
                    "events "
                            + (note.lastSeq() + 1)
                            + ".."
                            + note.knownSeq()
                            + " are missing: what was done after "
                            + time(fold.atMs(), zone)
                            + " is not in the backup");
        }
        out.println("start it with: serve --data " + data);
    }

    private static String time(long atMs, ZoneId zone) {
        return TIME.format(Instant.ofEpochMilli(atMs).atZone(zone));
    }
}
