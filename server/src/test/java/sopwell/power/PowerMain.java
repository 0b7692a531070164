package sopwell.power;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The same at every change of the disk: {@code PowerMain [orders] [seeds]}. */
public final class PowerMain {
    private PowerMain() {}

    /** Prints what it came to; ends with an error when anything was lost. */
    public static void main(String[] args) throws IOException {
        int orders = args.length > 0 ? Integer.parseInt(args[0]) : 400;
        int seeds = args.length > 1 ? Integer.parseInt(args[1]) : 3;
        Path shared = Path.of("/dev/shm");
        Path work =
                Files.isWritable(shared)
                        ? Files.createTempDirectory(shared, "sopwell-power")
                        : Files.createTempDirectory("sopwell-power");
        Recorder recorder = Recorder.compiled(work);
        int bad = 0;
        for (int seed = 1; seed <= seeds; seed++) {
            PowerRun run = new PowerRun(work, recorder, orders, seed);
            PowerRun.Result full = run.run("full", List.of(Disk.Mode.values()), Integer.MAX_VALUE);
            System.out.println("seed " + seed + ", as a stand runs: " + full);
            PowerRun.Result normal = run.run("normal", List.of(Disk.Mode.DROP), 1_000);
            System.out.println("seed " + seed + ", without waiting for the disk: " + normal);
            bad += full.bad() + (normal.bad() > normal.images() / 2 ? 0 : 1);
        }
        if (bad > 0) {
            throw new AssertionError(bad + " are wrong");
        }
    }
}
