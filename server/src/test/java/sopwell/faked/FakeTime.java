package sopwell.faked;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A box's clock that is put by hand: libfaketime (Debian: package faketime) before the C library of
 * one process. It reads a file once a second; clocks that never jump are left alone. Without the
 * library tests are skipped and say so, and with SOPWELL_REQUIRE_FAKETIME=1 that is a failure.
 */
final class FakeTime {
    private static final Path LIBRARIES = Path.of("/usr/lib");

    private final Path library;
    private final Path file;

    private FakeTime(Path library, Path file) {
        this.library = library;
        this.file = file;
    }

    /** Skips the test, or fails it, where the library is not. */
    static FakeTime in(Path folder) throws IOException {
        Optional<Path> library = library();
        assertTrue(
                library.isPresent() || !"1".equals(System.getenv("SOPWELL_REQUIRE_FAKETIME")),
                "libfaketime is missing: apt-get install faketime");
        assumeTrue(library.isPresent(), "no libfaketime here; the box's clock is not put");
        FakeTime time = new FakeTime(library.orElseThrow(), folder.resolve("clock"));
        time.put(Duration.ZERO);
        return time;
    }

    /** How far the box's clock is from the right one from now on. */
    void put(Duration off) throws IOException {
        String seconds = (off.isNegative() ? "" : "+") + off.toSeconds();
        Path next = file.resolveSibling("clock.next");
        Files.writeString(next, seconds + "\n");
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What a process must have in its environment. */
    Map<String, String> environment() {
        return Map.of(
                "LD_PRELOAD",
                library.toString(),
                "FAKETIME_TIMESTAMP_FILE",
                file.toString(),
                "FAKETIME_CACHE_DURATION",
                "1",
                "FAKETIME_DONT_FAKE_MONOTONIC",
                "1");
    }

    private static Optional<Path> library() throws IOException {
        if (!Files.isDirectory(LIBRARIES)) {
            return Optional.empty();
        }
        try (Stream<Path> folders = Files.list(LIBRARIES)) {
            List<Path> found =
                    folders.map(folder -> folder.resolve("faketime/libfaketime.so.1"))
                            .filter(Files::exists)
                            .toList();
            return found.stream().findFirst();
        }
    }
}
