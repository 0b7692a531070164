package sopwell.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import sopwell.history.HistoryMain;
import sopwell.storage.DataFolder;
import sopwell.storage.LogCheck;
import sopwell.storage.LogLimits;
import sopwell.storage.SqliteLog;
import sopwell.storage.StandFile;

/**
 * What it costs to look whether a log is what was written: {@code CheckBench DIR [ORDERS]}. The
 * folder is filled when it holds no log, with so many orders over a year; an order is seven or
 * eight events. Each figure is of a process that just began, as at a start.
 */
public final class CheckBench {
    private static final int ORDERS = 33_300;

    private CheckBench() {}

    /** Prints what it measured. */
    public static void main(String[] args) throws IOException {
        Path at = Path.of(args[0]);
        if (!Files.exists(at.resolve("log.sqlite"))) {
            int orders = args.length > 1 ? Integer.parseInt(args[1]) : ORDERS;
            HistoryMain.make(at, orders, 1, HistoryMain.LAST, HistoryMain.SEED);
        }
        try (DataFolder folder = DataFolder.open(at)) {
            byte[] settings = folder.stand().orElseThrow();
            String stand = StandFile.read(settings).settings().orElseThrow().stand();
            Since opening = new Since();
            try (SqliteLog log = folder.openLog(stand)) {
                opening.say("opened, its end compared with the mark");
                long events = log.lastSeq();
                LogCheck check = folder.checkOf(stand);
                Since newest = new Since();
                check.newest(events, LogLimits.START_CHECK_EVENTS);
                newest.say("the newest " + LogLimits.START_CHECK_EVENTS + " checked");
                Since whole = new Since();
                check.newest(events, events);
                whole.say("all " + events + " checked");
            }
        }
    }

    /** A moment, by the clock on the wall and by this thread's share of the processor. */
    private record Since(long nanos, long cpuNanos) {
        Since() {
            this(System.nanoTime(), cpu());
        }

        void say(String what) {
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.2f s, %.2f s of processor time%n",
                    what,
                    (System.nanoTime() - nanos) / 1e9,
                    (cpu() - cpuNanos) / 1e9);
        }

        private static long cpu() {
            return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        }
    }
}
