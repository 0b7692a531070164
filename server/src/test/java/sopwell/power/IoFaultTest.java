package sopwell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fails now and then loses nothing that was answered and leaves no half command. */
class IoFaultTest {
    @TempDir Path work;

    @BeforeEach
    void needsTheRecorder() {
        Recorder.needed();
    }

    @Test
    void whateverCallFailsNothingThatWasAnsweredIsLost() throws IOException {
        IoFaultRun.Result result = run().run(IoFaultRun.everySo(11));
        System.out.println("faults of the disk: " + result);
        assertEquals(List.of(), result.wrong());
        assertTrue(result.faults() >= 10, result::toString);
    }

    @Test
    void aLogThatADiskCanNeverReadIsWholeOnADiskThatCan() throws IOException {
        IoFaultRun.Result result = run().runInVain(List.of("read:44:EIO:1:44"));
        System.out.println("reads that fail at each start: " + result);
        assertEquals(List.of(), result.wrong());
        assertTrue(result.faults() >= 40, result::toString);
    }

    @Test
    void aDiskThatFailsAgainAndAgainIsOnlyReadUntilItIsWell() throws IOException {
        IoFaultRun.Result result = run().run(List.of("sync:20:EIO:9"));
        System.out.println("only read for a while: " + result);
        assertEquals(List.of(), result.wrong());
        assertTrue(result.looks() >= 3, result::toString);
    }

    private IoFaultRun run() throws IOException {
        return new IoFaultRun(work, Recorder.compiled(work));
    }
}
