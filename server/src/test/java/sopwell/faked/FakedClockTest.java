package sopwell.faked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The packaged stand goes on evenly whatever becomes of the box's clock. */
@Timeout(240)
class FakedClockTest {
    private static final List<Duration> OFFS =
            List.of(
                    Duration.ofHours(1),
                    Duration.ofHours(-1),
                    Duration.ofHours(24),
                    Duration.ofHours(-24),
                    Duration.ZERO);

    @TempDir Path folder;

    @Test
    void stepsOfTheBoxsClockWhileGuestsOrderMoveNothing() throws IOException, InterruptedException {
        FakeTime time = FakeTime.in(folder);
        FakedRun run = new FakedRun(folder.resolve("stand"), time);

        FakedRun.Result result = run.run(OFFS, 2_500);
        System.out.println("steps of the clock: " + result);
        assertEquals(List.of(), result.wrong());
        assertTrue(result.orders() >= 20, result::toString);
        assertTrue(result.told() >= 5, result::toString);
        assertEquals(OFFS.size() - 1, result.noted(), "each step is noted once: " + result);
        assertTrue(
                result.screenConnects() == 1 || result.screenAwayMillis() <= 3_000,
                result::toString);
    }
}
