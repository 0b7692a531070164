package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RehearsalTest {
    private static final InstantSource NOON =
            InstantSource.fixed(Instant.parse("2026-05-12T17:00:00Z"));

    @Test
    void playsAWholeStandAndLeavesNothingBehind() throws StartRefused, IOException {
        long before = leftovers();
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        new Rehearsal(new RunningStand.Clocks(NOON, System::nanoTime), out).play();
        String text = said.toString(StandardCharsets.UTF_8);
        assertTrue(text.matches("(?s)first page after \\d+ ms\\R.*all well\\R"), text);
        assertEquals(before, leftovers());
    }

    private static long leftovers() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(path -> path.getFileName().toString().contains("rehearsal")).count();
        }
    }
}
