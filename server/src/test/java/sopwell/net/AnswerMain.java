package sopwell.net;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import sopwell.crash.StandProcess;

/** Lost, doubled and reordered requests: {@code AnswerMain [orders] [keys] [races] [seed]}. */
public final class AnswerMain {
    private AnswerMain() {}

    /** Prints what held; ends with an error when anything was lost or doubled. */
    public static void main(String[] args) throws IOException {
        int orders = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        int keys = args.length > 1 ? Integer.parseInt(args[1]) : 1_000;
        int races = args.length > 2 ? Integer.parseInt(args[2]) : 10_000;
        long seed = args.length > 3 ? Long.parseLong(args[3]) : System.nanoTime();
        System.out.println("seed " + seed);
        try (StandProcess stand =
                        StandProcess.start(
                                Files.createTempDirectory("sopwell-answers").resolve("stand"),
                                StandProcess.quick(),
                                List.of("--start-with", "menu"));
                BadLink link = new BadLink(Api.at(stand.address(), 1).server(), seed)) {
            AnswerRun run = new AnswerRun(stand.address(), link, seed);
            run.orders(orders);
            System.out.println(orders + " orders over " + link.laid() + " connections: each once");
            run.oneKey(50);
            System.out.println("one key from 50 sides: one order, 50 equal answers");
            run.otherBodies(keys);
            System.out.println(keys + " keys with another body: all 422");
            run.edits(races);
            System.out.println(races + " races of 4 edits: one winner a version, none lost");
        }
    }
}
