package sopwell.net;

import java.io.IOException;
import java.nio.file.Files;

/** Stops a server under load so many times: {@code StopMain [times]}. */
public final class StopMain {
    private StopMain() {}

    /** Prints how long each took; ends with an error when one did not end in order. */
    public static void main(String[] args) throws IOException, InterruptedException {
        int times = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        StopRun run = new StopRun(Files.createTempDirectory("sopwell-stop").resolve("stand"));
        long slowest = 0;
        for (int i = 0; i < times; i++) {
            slowest = Math.max(slowest, run.once());
        }
        System.out.println(
                times + " stops, slowest " + slowest + " ms, " + run.answered() + " orders");
    }
}
