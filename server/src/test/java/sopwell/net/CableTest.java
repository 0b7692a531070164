package sopwell.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Screens behind a cable of the kernel's own, which goes dead without a word to either end. */
class CableTest {
    private static final int STALE_MILLIS_MAX = 5_000;
    private static final int DROPPED_MILLIS_MAX = 10_000;
    private static final int BACK_MILLIS_MAX = 3_000;

    @Test
    void aDeadCableIsSeenAtBothEndsAndScreensAreBackSoonAfterIt() throws IOException {
        try (Cable cable = Cable.needed();
                CableRun run = new CableRun(cable, 4)) {
            assertEquals(4, run.believedIn());
            CableRun.Came came = run.cut(Cable.Break.SILENT, 11_000);
            System.out.println("a cable silent for 11 s: " + came);
            assertEquals(List.of(), came.wrong());
            assertTrue(came.stale() >= 0 && came.stale() <= STALE_MILLIS_MAX, came::toString);
            assertTrue(came.dropped() >= 0 && came.dropped() <= DROPPED_MILLIS_MAX, came::toString);
            assertTrue(came.back() <= BACK_MILLIS_MAX, came::toString);
            assertEquals(4, run.believedIn(), "none is held twice");
        }
    }
}
