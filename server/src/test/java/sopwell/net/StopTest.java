package sopwell.net;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server that is told to stop ends in order, under load. */
class StopTest {
    @Test
    void answersWhatIsUnderWayTellsItsScreensAndLeavesNothingBehind(@TempDir Path folder)
            throws IOException, InterruptedException {
        StopRun run = new StopRun(folder.resolve("stand"));
        run.once();
        run.once();
        assertTrue(run.answered() > 0, "orders were placed meanwhile");
    }
}
