package sopwell.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that fails now and then loses nothing that was answered and leaves no half command. */
class IoFaultTest {
    @TempDir Path work;

    @Test
    void whateverCallFailsNothingThatWasAnsweredIsLost() throws IOException {
        Recorder.needed();
        IoFaultRun.Result result =
                new IoFaultRun(work, Recorder.compiled(work)).run(IoFaultRun.everySo(11));
        System.out.println("faults of the disk: " + result);
        assertEquals(List.of(), result.wrong());
        assertTrue(result.faults() >= 10, result::toString);
    }
}
