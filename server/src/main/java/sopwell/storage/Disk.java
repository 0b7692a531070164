package sopwell.storage;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Files that are on the disk when a call returns. Never for a database that is open: closing a
 * second handle on it would drop SQLite's locks. Stateless.
 */
public final class Disk {
    private Disk() {}

    /** Makes a file's bytes durable. */
    public static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Makes a folder's names durable; only POSIX lets a folder be opened for that. */
    public static void syncFolder(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    /** Gives a file another name, in place of what has that name, and makes that durable. */
    public static void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        syncFolder(to.toAbsolutePath().getParent());
    }

    /** Replaces a file: a reader, or a power cut, finds the old one or the new, never half. */
    static void replace(Path target, byte[] bytes) throws IOException {
        Path fresh = target.resolveSibling(target.getFileName() + ".new");
        Files.deleteIfExists(fresh);
        Files.createFile(fresh, SqliteFile.ownerOnly(fresh, "rw-------"));
        try (FileChannel out = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                out.write(rest);
            }
            out.force(true);
        }
        rename(fresh, target);
    }
}
