package sopwell.net;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import sopwell.crash.StandProcess;

/**
 * Screens, tills and browsers over links that are cut: {@code CutMain [SECONDSxTIMES,...] [screens]
 * [browser|none] [address]}; without an address a server of its own is started.
 */
public final class CutMain {
    private static final String ALL = "1x20,5x10,15x5,60x2,600x1";

    private CutMain() {}

    /** Prints what it came to; ends with an error when anything was missed, doubled or too slow. */
    public static void main(String[] args) throws IOException {
        List<String> cuts = List.of((args.length > 0 ? args[0] : ALL).split(","));
        int screens = args.length > 1 ? Integer.parseInt(args[1]) : 8;
        boolean browsers = args.length <= 2 || args[2].equals("browser");
        Path folder = Files.createTempDirectory("sopwell-cuts");
        if (args.length > 3) {
            run(args[3], cuts, screens, browsers ? folder : null);
            return;
        }
        try (StandProcess stand =
                StandProcess.start(
                        folder.resolve("stand"),
                        StandProcess.quick(),
                        List.of("--start-with", "menu"))) {
            run(stand.address(), cuts, screens, browsers ? folder : null);
        }
    }

    private static void run(String address, List<String> cuts, int screens, Path profiles)
            throws IOException {
        for (String each : cuts) {
            int[] cut = Arrays.stream(each.split("x")).mapToInt(Integer::parseInt).toArray();
            try (CutRun run =
                    new CutRun(address, List.of(Cut.values()), screens, profiles, 2_000)) {
                int before = run.orders().get(0) - run.orders().get(1);
                for (int i = 0; i < cut[1]; i++) {
                    run.cut(cut[0] * 1_000L);
                }
                run.tallies()
                        .forEach((kind, t) -> System.out.println(cut[0] + " s " + kind + ": " + t));
                List<Integer> orders = run.orders();
                check(run, orders.get(0) - before, orders.get(1));
            }
        }
        System.out.println("0 missed, 0 twice");
    }

    private static void check(CutRun run, int orders, int wanted) {
        System.out.println("  orders " + orders + " of " + wanted + ", faults " + run.faults());
        boolean good = orders == wanted && run.faults().isEmpty();
        for (Tally tally : run.tallies().values()) {
            good &= tally.missed() + tally.twice() + tally.liveWhileCut() == 0;
        }
        if (!good) {
            throw new AssertionError("something was missed, doubled or shown as live");
        }
    }
}
