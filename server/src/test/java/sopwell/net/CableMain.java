package sopwell.net;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts a cable of the kernel's own in every way, then chokes it: {@code CableMain
 * [SECONDSxTIMES,...] [screens]}. Needs to be root.
 */
public final class CableMain {
    private static final String ALL = "1x20,5x10,15x5,60x2,600x1";
    private static final int ORDERS = 400;

    private CableMain() {}

    /** Prints what each came to; ends with an error when a screen was wrong afterwards. */
    public static void main(String[] args) throws IOException {
        List<String> cuts = List.of((args.length > 0 ? args[0] : ALL).split(","));
        int screens = args.length > 1 ? Integer.parseInt(args[1]) : 4;
        boolean good = true;
        try (Cable cable = Cable.needed();
                CableRun run = new CableRun(cable, screens)) {
            for (String each : cuts) {
                int[] cut = Arrays.stream(each.split("x")).mapToInt(Integer::parseInt).toArray();
                for (Cable.Break kind : Cable.Break.values()) {
                    for (int i = 0; i < cut[1]; i++) {
                        CableRun.Came came = run.cut(kind, cut[0] * 1_000L);
                        good &= came.wrong().isEmpty();
                        System.out.println(cut[0] + " s " + kind + ": " + came);
                    }
                }
            }
            System.out.println("connections held: " + run.believedIn() + " of " + screens);
            System.out.println("orders p99 " + run.orderMillis(ORDERS, 99) + " ms");
            cable.choke();
            System.out.println("  with all screens at 8 kbit/s: " + run.orderMillis(ORDERS, 99));
        }
        if (!good) {
            throw new AssertionError("a screen was wrong after a cut");
        }
    }
}
