package sopwell.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The same with as many kills as asked for: {@code CrashMain [kills] [seed] [life]}, the life being
 * the most milliseconds between a start and its kill.
 */
public final class CrashMain {
    private static final int LIFE_MILLIS_MAX = 1_500;

    private CrashMain() {}

    /** Prints what it came to; ends with an error when anything was lost or doubled. */
    public static void main(String[] args) throws IOException, InterruptedException {
        int kills = args.length > 0 ? Integer.parseInt(args[0]) : 1_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime();
        int lifeMillisMax = args.length > 2 ? Integer.parseInt(args[2]) : LIFE_MILLIS_MAX;
        System.out.println(kills + " kills, seed " + seed + ", lives up to " + lifeMillisMax);
        Path folder = Files.createTempDirectory("sopwell-crash");
        System.out.println(new KillRun(folder.resolve("stand"), kills, lifeMillisMax, seed).run());
        System.out.println(
                "0 lost, 0 doubled, 0 shown that do not exist, 0 left of what was refused");
    }
}
