package sopwell.power;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The recorder, compiled for this machine. Needs a C compiler; without it tests are skipped, and
 * with SOPWELL_REQUIRE_CC=1 that is a failure. Immutable.
 */
final class Recorder {
    private static final Path SOURCE = Path.of("server", "src", "test", "c", "recorder.c");
    private static final int SECONDS_MAX = 60;

    private final Path library;

    private Recorder(Path library) {
        this.library = library;
    }

    /** Skips the test, or fails it, where no C compiler is. */
    static void needed() {
        boolean there = isThere();
        assertTrue(
                there || !"1".equals(System.getenv("SOPWELL_REQUIRE_CC")),
                "a C compiler is missing: apt-get install gcc libc6-dev");
        assumeTrue(there, "no C compiler (cc) or no Linux here; the disk is not recorded");
    }

    private static boolean isThere() {
        if (!System.getProperty("os.name").equals("Linux")) {
            return false;
        }
        try {
            return run(List.of("cc", "--version"), Map.of()) == 0;
        } catch (IOException missing) {
            return false;
        }
    }

    /** Compiles it into a folder. */
    static Recorder compiled(Path folder) throws IOException {
        Path library = folder.resolve("recorder.so");
        Path source = Path.of(System.getProperty("sopwell.basedir", ".")).resolve(SOURCE);
        List<String> command =
                List.of(
                        "cc",
                        "-O2",
                        "-Wall",
                        "-Wextra",
                        "-Werror",
                        "-shared",
                        "-fPIC",
                        "-o",
                        library.toString(),
                        source.toString());
        if (run(command, Map.of()) != 0) {
            throw new IOException("the recorder can't be compiled: " + command);
        }
        return new Recorder(library);
    }

    /** What a process needs in its environment so that its disk is recorded. */
    Map<String, String> recording(Path folder, Path record) throws IOException {
        return Map.of(
                "LD_PRELOAD", library.toString(),
                "SOPWELL_DISK_DIR", real(folder),
                "SOPWELL_DISK_LOG", record.toString());
    }

    /**
     * What a process needs in its environment so that its disk is recorded and fails.
     *
     * @param calls which calls fail, as the recorder reads it: {@code sync:30:EIO:1:50}
     */
    Map<String, String> failing(Path folder, Path record, String calls) throws IOException {
        Map<String, String> environment = new HashMap<>(recording(folder, record));
        environment.put("SOPWELL_DISK_FAIL", calls);
        return environment;
    }

    /** Runs a main class of the tests in a process of its own; how it ended. */
    static int java(Class<?> main, List<String> arguments, Map<String, String> environment)
            throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(arguments);
        return run(command, environment);
    }

    private static int run(List<String> command, Map<String, String> environment)
            throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(environment);
        Path said = Files.createTempFile("sopwell-disk", ".out");
        try {
            Process process = builder.redirectOutput(said.toFile()).start();
            if (!process.waitFor(SECONDS_MAX, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IOException("not done within " + SECONDS_MAX + " s: " + command);
            }
            if (process.exitValue() != 0) {
                System.err.println(Files.readString(said));
            }
            return process.exitValue();
        } catch (InterruptedException interrupted) {
            throw new IOException(interrupted);
        } finally {
            Files.delete(said);
        }
    }

    private static String real(Path folder) throws IOException {
        return Files.createDirectories(folder).toRealPath().toString();
    }
}
