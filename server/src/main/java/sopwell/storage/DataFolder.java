package sopwell.storage;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import sopwell.Check;

/**
 * The folder that holds everything a stand keeps: {@code stand.json}, {@code menu.json}, {@code
 * recipes.json} to begin with, {@code log.sqlite}, {@code tallies.sqlite} that can be made again
 * from the log, and {@code sopwell.lock}, which one server at a time holds. Not thread-safe: for
 * the thread that starts and stops the server.
 */
public final class DataFolder implements AutoCloseable {
    private static final String STAND = "stand.json";
    private static final String MENU = "menu.json";
    private static final String RECIPES = "recipes.json";
    private static final String LOG = "log.sqlite";
    private static final String ACCESS = "access.json";
    private static final String RESTORED = "restored.json";
    private static final String RESTORING = "restoring.sqlite";
    private static final String TALLIES = "tallies.sqlite";
    private static final String MARK = LogMark.NAME;
    private static final String LOCK = "sopwell.lock";

    /** What a backup takes along besides the log. */
    private static final List<String> FILES = List.of(STAND, MENU, RECIPES, ACCESS);

    private final Path folder;
    private final Optional<FileChannel> lockFile;
    private boolean logIsOpen;

    private DataFolder(Path folder, Optional<FileChannel> lockFile) {
        this.folder = folder;
        this.lockFile = lockFile;
    }

    /**
     * Opens a folder, creating it if need be, and keeps others out of it until it is closed.
     *
     * @throws FolderFault when another server has it, or the disk does not let us
     */
    public static DataFolder open(Path folder) {
        try {
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder, SqliteFile.ownerOnly(folder, "rwx------"));
                Disk.syncFolder(folder.toAbsolutePath().getParent());
            }
            FileChannel lockFile =
                    FileChannel.open(
                            folder.resolve(LOCK),
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE);
            if (!locked(lockFile)) {
                lockFile.close();
                throw new FolderFault("Another Sopwell server runs on " + folder + " already.");
            }
            return new DataFolder(folder, Optional.of(lockFile));
        } catch (IOException e) {
            throw new FolderFault("The data folder " + folder + " can't be used: " + e, e);
        }
    }

    /**
     * A folder that is only looked at, whether a server runs on it or not.
     *
     * @throws FolderFault when there is no such folder
     */
    public static DataFolder look(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new FolderFault("There is no folder " + folder + ".");
        }
        return new DataFolder(folder, Optional.empty());
    }

    public Path path() {
        return folder;
    }

    /** Whether there is a log, that is, whether this stand was ever started. */
    public boolean hasLog() {
        return Files.exists(folder.resolve(LOG));
    }

    /** The stand's settings as they are on the disk. */
    public Optional<byte[]> stand() {
        return read(STAND);
    }

    /** The menu as it is on the disk. */
    public Optional<byte[]> menu() {
        return read(MENU);
    }

    /** The book of recipes as it is on the disk, for a log that has none yet. */
    public Optional<byte[]> recipes() {
        return read(RECIPES);
    }

    /** Who may do what, as it is on the disk. */
    public Optional<byte[]> access() {
        return read(ACCESS);
    }

    /** Replaces who may do what, whole or not at all; only the owner of the folder can read it. */
    public synchronized void putAccess(byte[] json) {
        write(ACCESS, json);
    }

    /** Replaces the stand's settings, whole or not at all. */
    public void putStand(byte[] json) {
        write(STAND, json);
    }

    /** Replaces the menu, whole or not at all. */
    public void putMenu(byte[] json) {
        write(MENU, json);
    }

    /** Replaces the book of recipes, whole or not at all. */
    public void putRecipes(byte[] json) {
        write(RECIPES, json);
    }

    /** A small file that its owner alone may read, under a name of its keeper's choice. */
    public Optional<byte[]> secret(String name) {
        return read(name);
    }

    /** Replaces such a file, whole or not at all. */
    public void putSecret(String name, byte[] bytes) {
        write(name, bytes);
    }

    /**
     * Opens the log of a stand; once per folder. That of a folder that is only looked at takes no
     * entries and shows what was there when it was opened.
     *
     * @throws FolderFault when the file is not a log that this Sopwell can write
     */
    public SqliteLog openLog(String stand) {
        return openLog(stand, SqliteFile.Options.USUAL);
    }

    SqliteLog openLog(String stand, SqliteFile.Options options) {
        Check.that(!logIsOpen, "a folder's log is opened once");
        Path file = folder.resolve(LOG);
        SqliteLog log =
                lockFile.isPresent()
                        ? new SqliteLog(file, stand, options)
                        : SqliteLog.reading(file, stand);
        logIsOpen = true;
        return log;
    }

    /**
     * Puts all that the folder holds into one file: the log as it is now, which may be in use, and
     * the files beside it. What was not finished is left where it is.
     *
     * @param stop says that it is to be given up
     * @throws FolderFault when the file can't be written, or it was given up
     */
    public BackupFile.Made backUp(Path to, String stand, long atMs, BooleanSupplier stop) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        for (String name : FILES) {
            read(name).ifPresent(bytes -> files.put(name, bytes));
        }
        try {
            Files.deleteIfExists(to);
            // SQLite takes an empty file for its own; so it is the owner's alone from the start.
            Files.createFile(to, SqliteFile.ownerOnly(to, "rw-------"));
            BackupFile.copy(folder.resolve(LOG), to, stop);
            BackupFile.Made made = BackupFile.seal(to, stand, atMs, files);
            Disk.sync(to);
            return made;
        } catch (SQLException | IOException e) {
            throw new FolderFault("The backup " + to + " can't be written: " + e.getMessage(), e);
        }
    }

    /** The schema of each log that was opened: the newest that this Sopwell knows. */
    public static int schema() {
        return SqliteFile.SCHEMA_VERSION;
    }

    /** Loads SQLite, which takes a while; if it can't be loaded, opening a log says so. */
    public static void loadLibrary() {
        SqliteFile.load();
    }

    /** How large the log is, in bytes. */
    public long logBytes() {
        try {
            return Files.size(folder.resolve(LOG));
        } catch (IOException e) {
            throw new FolderFault("The log in " + folder + " can't be found: " + e, e);
        }
    }

    /** Whether this folder holds anything of a stand. */
    public boolean isTaken() {
        return hasLog() || stand().isPresent() || menu().isPresent() || isHalfRestored();
    }

    /** Whether a restore into this folder was cut short. */
    public boolean isHalfRestored() {
        return Files.exists(folder.resolve(RESTORING));
    }

    /** What is remembered of the restore that this folder came from, if it came from one. */
    public Optional<Restored> restored() {
        return read(RESTORED).flatMap(Restored::read);
    }

    /** Remembers more of that restore. */
    public synchronized void putRestored(Restored note) {
        write(RESTORED, note.written());
    }

    /** How far this stand's log of that epoch came by the note beside it; 0 when nothing says. */
    public long markedSeq(String stand, String epoch) {
        return new LogMark(folder.resolve(LOG))
                .read()
                .filter(note -> note.stand().equals(stand) && note.epoch().equals(epoch))
                .map(LogMark.Note::seq)
                .orElse(0L);
    }

    /**
     * Begins to make this folder what a backup holds: the copy that will be its log is written, and
     * no server starts on the folder before the restore is finished or given up.
     *
     * @return the copy, to be looked at
     * @throws FolderFault when that can't be done; the folder is as it was
     */
    public Path beginRestore(Path backup) {
        Check.that(lockFile.isPresent(), "who only looks writes nothing");
        Path fresh = folder.resolve(RESTORING);
        boolean copied = false;
        try {
            Files.deleteIfExists(fresh);
            Files.createFile(fresh, SqliteFile.ownerOnly(fresh, "rw-------"));
            BackupFile.copy(backup, fresh, () -> false);
            copied = true;
            return fresh;
        } catch (SQLException | IOException e) {
            throw notRestored(e);
        } finally {
            if (!copied) {
                giveUpRestore();
            }
        }
    }

    /** Leaves the folder as it was before the restore began. */
    public void giveUpRestore() {
        try {
            Files.deleteIfExists(folder.resolve(RESTORING));
        } catch (IOException e) {
            throw notRestored(e);
        }
    }

    /**
     * Puts the copy and the files in place. What was in the folder is kept, in a folder within it.
     *
     * @param note is remembered
     * @param aside the name of the folder for what was here
     * @throws FolderFault when that can't be done; then no server starts on it until it is
     */
    public void finishRestore(Restored note, String aside) {
        Path fresh = folder.resolve(RESTORING);
        try {
            Map<String, byte[]> files = BackupFile.files(fresh);
            BackupFile.unseal(fresh);
            Disk.sync(fresh);
            setAside(folder.resolve(aside));
            for (String name : FILES) {
                if (files.containsKey(name)) {
                    write(name, files.get(name));
                }
            }
            write(RESTORED, note.written());
            Disk.rename(fresh, folder.resolve(LOG));
        } catch (SQLException | IOException e) {
            throw notRestored(e);
        }
    }

    private FolderFault notRestored(Exception e) {
        return new FolderFault(
                "The backup can't be restored to " + folder + ": " + e.getMessage(), e);
    }

    /** The log's side files go first: beside another log they would be taken for its own. */
    private void setAside(Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> found = Files.list(folder)) {
            all =
                    found.filter(Files::isRegularFile)
                            .filter(file -> !file.endsWith(LOCK))
                            .filter(file -> !file.getFileName().toString().startsWith(RESTORING))
                            .sorted(Comparator.reverseOrder())
                            .toList();
        }
        if (all.isEmpty()) {
            return;
        }
        Files.createDirectories(to, SqliteFile.ownerOnly(to, "rwx------"));
        for (Path file : all) {
            Files.move(file, to.resolve(file.getFileName()), StandardCopyOption.ATOMIC_MOVE);
        }
        Disk.syncFolder(to);
        Disk.syncFolder(folder);
    }

    /** What looks whether the log's file holds what was written. */
    public LogCheck checkOf(String stand) {
        return new LogCheck(folder.resolve(LOG), stand);
    }

    /**
     * Takes what is left of a log that lost its end for the whole, before it is opened: screens
     * start over, and the write-ahead file that could not be read is put aside.
     *
     * @return what is lost, in a sentence, or empty when nothing is and nothing was changed
     */
    public Optional<String> acceptLoss(String stand) {
        Check.that(!logIsOpen, "a loss is accepted before the log is opened");
        return hasLog() || Files.exists(folder.resolve(MARK))
                ? new LogEnd(folder.resolve(LOG), stand).accept()
                : Optional.empty();
    }

    /** The kept tallies of a stand's past days, which can be made again from its log. */
    public TallyFile openTallies(String stand) {
        return new TallyFile(folder.resolve(TALLIES), stand);
    }

    /** Lets others use the folder; close the log first. */
    @Override
    public void close() {
        try {
            if (lockFile.isPresent()) {
                lockFile.get().close();
            }
        } catch (IOException e) {
            throw new FolderFault("The lock on " + folder + " was not given back: " + e, e);
        }
    }

    private static boolean locked(FileChannel lockFile) throws IOException {
        try {
            FileLock lock = lockFile.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false; // This very process has it.
        }
    }

    private Optional<byte[]> read(String name) {
        try {
            return Optional.of(Files.readAllBytes(folder.resolve(name)));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new FolderFault(folder.resolve(name) + " can't be read: " + e, e);
        }
    }

    /** A reader, or a power cut, finds the old file or the new one, never half of one. */
    private void write(String name, byte[] bytes) {
        Check.that(lockFile.isPresent(), "who only looks writes nothing");
        Path target = folder.resolve(name);
        try {
            Disk.replace(target, bytes);
        } catch (IOException e) {
            throw new FolderFault(target + " can't be written: " + e, e);
        }
    }
}
