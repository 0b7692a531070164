package sopwell.power;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** The same at many places: {@code IoFaultMain [last distance]}, from 5 on. */
public final class IoFaultMain {
    private IoFaultMain() {}

    /** Prints what it came to; ends with an error when anything was lost. */
    public static void main(String[] args) throws IOException {
        int last = args.length > 0 ? Integer.parseInt(args[0]) : 60;
        Path work = Files.createTempDirectory("sopwell-faults");
        IoFaultRun.Result result =
                new IoFaultRun(work, Recorder.compiled(work))
                        .run(
                                IntStream.rangeClosed(5, last)
                                        .mapToObj(IoFaultRun::everySo)
                                        .flatMap(List::stream)
                                        .toList());
        System.out.println(result);
        if (!result.wrong().isEmpty()) {
            throw new AssertionError(result.wrong().size() + " are wrong");
        }
    }
}
