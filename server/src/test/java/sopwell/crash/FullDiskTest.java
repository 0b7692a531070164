package sopwell.crash;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that runs full: orders are refused, nothing is lost, and it goes on with more room. */
class FullDiskTest {
    private static final long DISK_BYTES = 4_000_000;
    private static final long RESERVE_BYTES = 1_000_000;

    @TempDir Path folder;

    @Test
    void belowItsReserveAStandTakesNoOrdersUntilThereIsRoom()
            throws IOException, InterruptedException {
        try (SmallDisk disk = SmallDisk.needed(folder.resolve("disk"), DISK_BYTES)) {
            FullDiskRun.Result result = new FullDiskRun(disk, RESERVE_BYTES).run(2);
            System.out.println("nearly full: " + result);
            assertEquals(Set.of("no-room"), result.codes());
            assertEquals(Set.of("no-room"), result.states());
            assertTrue(result.orders() > 2, result::toString);
        }
    }

    @Test
    void aDiskThatTakesNothingMoreIsOnlyReadUntilItDoes() throws IOException, InterruptedException {
        try (SmallDisk disk = SmallDisk.needed(folder.resolve("disk"), DISK_BYTES)) {
            FullDiskRun.Result result = new FullDiskRun(disk, 0).run(1);
            System.out.println("full: " + result);
            assertEquals(Set.of("reading-only", "unknown-outcome"), result.codes());
            assertTrue(result.orders() > 1, result::toString);
        }
    }
}
