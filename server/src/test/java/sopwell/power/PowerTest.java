package sopwell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was answered is there after a power cut; and a log that does not wait is found out. */
class PowerTest {
    private static final int ORDERS = 120;
    private static final int POINTS = 100;

    @TempDir Path work;

    @BeforeEach
    void aCompilerIsThere() {
        Recorder.needed();
    }

    @Test
    void aPowerCutLosesNothingThatWasAnswered() throws IOException {
        PowerRun.Result result = run("full", List.of(Disk.Mode.values()));
        assertEquals(0, result.bad(), () -> result.toString());
        assertTrue(result.images() >= 3 * POINTS, () -> result.toString());
    }

    /** Shows that the test above can fail: without waiting, most cuts lose something. */
    @Test
    void aLogThatDoesNotWaitForTheDiskIsFoundOut() throws IOException {
        PowerRun.Result result = run("normal", List.of(Disk.Mode.DROP));
        assertTrue(result.bad() > result.images() / 2, () -> result.toString());
        assertTrue(result.first().orElseThrow().contains("lost"), () -> result.toString());
    }

    private PowerRun.Result run(String commits, List<Disk.Mode> modes) throws IOException {
        PowerRun.Result result =
                new PowerRun(work, Recorder.compiled(work), ORDERS, System.nanoTime())
                        .run(commits, modes, POINTS);
        System.out.println("power cuts, " + commits + ": " + result);
        return result;
    }
}
