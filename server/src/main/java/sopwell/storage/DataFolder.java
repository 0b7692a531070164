package sopwell.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Optional;
import java.util.Set;
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
    private static final String TALLIES = "tallies.sqlite";
    private static final String LOCK = "sopwell.lock";

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
        write(name, bytes, SqliteFile.ownerOnly(folder, "rw-------"));
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

    private void write(String name, byte[] bytes) {
        write(name, bytes, new FileAttribute<?>[0]);
    }

    /** A reader, or a power cut, finds the old file or the new one, never half of one. */
    private void write(String name, byte[] bytes, FileAttribute<?>[] as) {
        Check.that(lockFile.isPresent(), "who only looks writes nothing");
        Path target = folder.resolve(name);
        Path fresh = folder.resolve(name + ".new");
        try {
            Files.deleteIfExists(fresh); // One that a power cut left may be readable by others.
            Set<StandardOpenOption> anew =
                    Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            try (FileChannel out = FileChannel.open(fresh, anew, as)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    out.write(rest);
                }
                out.force(true);
            }
            Files.move(
                    fresh,
                    target,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
            syncFolder();
        } catch (IOException e) {
            throw new FolderFault(target + " can't be written: " + e, e);
        }
    }

    /** Makes the new name durable; only POSIX lets a folder be opened for that. */
    private void syncFolder() throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
