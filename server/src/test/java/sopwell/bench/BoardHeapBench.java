package sopwell.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import sopwell.browser.Browser;
import sopwell.crash.StandProcess;

/**
 * How much memory a line's board holds in the browser after thousands of orders have come and gone,
 * beside what it may: {@code BoardHeapBench [orders]}, 5,000 unless said.
 */
public final class BoardHeapBench {
    private static final int ORDERS = 5_000;
    private static final int HEAP_MIB_MAX = 150;
    private static final double MIB = 1024 * 1024;

    private BoardHeapBench() {}

    /** Prints a line for each tenth of the orders; exits with 1 when it is too much. */
    public static void main(String[] args) throws Exception {
        int orders = args.length > 0 ? Integer.parseInt(args[0]) : ORDERS;
        Path folder = Files.createTempDirectory("board-heap");
        double heapMib = 0;
        try (StandProcess stand =
                        StandProcess.start(
                                folder.resolve("stand"),
                                StandProcess.quick(),
                                List.of("--start-with", "menu"));
                Browser board = Browser.start(folder)) {
            board.size(1920, 1080);
            board.open(stand.address() + "/boards/line");
            board.waitText("#live", "live");
            BoardLoad load = new BoardLoad(stand.address());
            for (int tenth = 1; tenth <= 10; tenth++) {
                load.run(orders / 10);
                Thread.sleep(500);
                heapMib = board.measured("JSHeapUsedSize") / MIB;
                System.out.printf(
                        Locale.ROOT,
                        "%5d orders: heap %.1f MiB of %d, %d nodes, %d listeners%n",
                        orders / 10 * tenth,
                        heapMib,
                        HEAP_MIB_MAX,
                        board.measured("Nodes"),
                        board.measured("JSEventListeners"));
            }
        }
        if (heapMib > HEAP_MIB_MAX) {
            System.exit(1);
        }
    }
}
