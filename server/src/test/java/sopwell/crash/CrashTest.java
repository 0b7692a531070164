package sopwell.crash;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fifty kills at random instants under load lose nothing and double nothing. */
class CrashTest {
    private static final int KILLS = 50;

    @Test
    void fiftyKillsLoseNothingAndDoubleNothing(@TempDir Path folder)
            throws IOException, InterruptedException {
        long seed = System.nanoTime();
        try {
            KillRun.Result result = new KillRun(folder.resolve("stand"), KILLS, seed).run();
            System.out.println(result + ", seed " + seed);
            assertTrue(result.orders() > KILLS, "orders were placed between kills: " + result);
            assertTrue(result.frames() > 0, "a screen was watching: " + result);
        } catch (AssertionError wrong) {
            throw new AssertionError("seed " + seed + ": " + wrong.getMessage(), wrong);
        }
    }
}
