package sopwell.faked;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/**
 * Puts a box's clock many times while guests order: {@code FakedMain [steps] [seed]}, one step in
 * each 1.2 seconds, hours and days forward and back and into the year 2038.
 */
public final class FakedMain {
    private static final long STEP_MILLIS = 1_200;

    private FakedMain() {}

    /** Ends with 1 when anything was wrong. */
    public static void main(String[] args) throws IOException, InterruptedException {
        int steps = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : System.nanoTime();
        List<Duration> kinds =
                List.of(
                        Duration.ofHours(1),
                        Duration.ofHours(-1),
                        Duration.ofHours(24),
                        Duration.ofHours(-24),
                        Duration.ofMinutes(-3),
                        Duration.between(Instant.now(), Instant.parse("2038-01-19T03:14:00Z")),
                        Duration.ZERO);
        SplittableRandom dice = new SplittableRandom(seed);
        List<Duration> offs = new ArrayList<>();
        for (int step = 0; step < steps; step++) {
            offs.add(kinds.get(dice.nextInt(kinds.size())));
        }
        boolean wrong;
        Path folder = Files.createTempDirectory("sopwell-faked");
        try {
            FakedRun run = new FakedRun(folder.resolve("stand"), FakeTime.in(folder));
            FakedRun.Result result = run.run(offs, STEP_MILLIS);
            System.out.println(steps + " steps, seed " + seed + ": " + result);
            wrong = !result.wrong().isEmpty();
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
        System.exit(wrong ? 1 : 0);
    }
}
