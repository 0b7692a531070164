package sopwell.crash;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fifty kills at random instants under load lose nothing and double nothing. */
class CrashTest {
    private static final int KILLS = 50;
    private static final int LIFE_MILLIS_MAX = 500;

    @Test
    void fiftyKillsLoseNothingAndDoubleNothing(@TempDir Path folder)
            throws IOException, InterruptedException {
        long seed = System.nanoTime();
        try {
            KillRun.Result result =
                    new KillRun(folder.resolve("stand"), KILLS, LIFE_MILLIS_MAX, seed).run();
            System.out.println(result + ", seed " + seed);
            assertTrue(result.orders() > KILLS, "orders were placed between kills: " + result);
            assertTrue(result.frames() > 0, "a screen was watching: " + result);
            assertTrue(result.refused() > 0, "something was refused: " + result);
            assertTrue(result.sendings() > result.orders(), "answers were lost: " + result);
        } catch (AssertionError wrong) {
            throw new AssertionError("seed " + seed + ": " + wrong.getMessage(), wrong);
        }
    }
}
