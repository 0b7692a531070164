package sopwell.crash;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A disk in memory that is as small as a test wants it. Needs Linux and root; without them tests
 * are skipped and say so, and with SOPWELL_REQUIRE_TMPFS=1 that is a failure. Not thread-safe.
 */
final class SmallDisk implements AutoCloseable {
    private static final int SECONDS_MAX = 20;

    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    /** A disk of so many bytes in a folder that is made; skips or fails the test where it can't. */
    static SmallDisk needed(Path folder, long bytes) throws IOException {
        String said = tried(folder, bytes);
        assertTrue(
                said.isEmpty() || !"1".equals(System.getenv("SOPWELL_REQUIRE_TMPFS")),
                "no small disk can be mounted here: " + said);
        if (!said.isEmpty()) {
            System.err.println("SKIPPED, a full disk is not tried here: " + said);
        }
        assumeTrue(said.isEmpty(), "no small disk can be mounted here: " + said);
        return new SmallDisk(folder);
    }

    /** The same where nothing is skipped. */
    static SmallDisk mounted(Path folder, long bytes) throws IOException {
        String said = tried(folder, bytes);
        if (!said.isEmpty()) {
            throw new IOException(said);
        }
        return new SmallDisk(folder);
    }

    /** Makes it larger or smaller while it is in use. */
    void resize(long bytes) throws IOException {
        String said = run(List.of("mount", "-o", "remount,size=" + bytes, folder.toString()));
        if (!said.isEmpty()) {
            throw new IOException(said);
        }
    }

    long usedBytes() throws IOException {
        var store = Files.getFileStore(folder);
        return store.getTotalSpace() - store.getUsableSpace();
    }

    Path folder() {
        return folder;
    }

    @Override
    public void close() throws IOException {
        String said = run(List.of("umount", folder.toString()));
        if (!said.isEmpty()) {
            throw new IOException(said);
        }
    }

    private static String tried(Path folder, long bytes) throws IOException {
        if (!System.getProperty("os.name").equals("Linux")) {
            return "this is no Linux";
        }
        Files.createDirectories(folder);
        String size = "size=" + bytes + ",mode=0700";
        return run(List.of("mount", "-t", "tmpfs", "-o", size, "sopwell-test", folder.toString()));
    }

    /** What a command complained of, or nothing when it went well. */
    private static String run(List<String> command) throws IOException {
        Path said = Files.createTempFile("sopwell-mount", ".out");
        try {
            Process process =
                    new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(said.toFile())
                            .start();
            if (!process.waitFor(SECONDS_MAX, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                return command + " does not end";
            }
            return process.exitValue() == 0 ? "" : command + ": " + Files.readString(said).strip();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException(interrupted);
        } finally {
            Files.delete(said);
        }
    }
}
