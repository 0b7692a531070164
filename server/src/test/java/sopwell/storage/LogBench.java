package sopwell.storage;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import sopwell.log.Entry;

/**
 * How many events a second the log takes, by batch size, and what one costs in processor time. Run
 * by hand; the first argument is a folder on the disk to be measured.
 */
public final class LogBench {
    private static final int EVENTS = 60_000;

    private LogBench() {}

    /** Prints one line per batch size, twice: the first round warms up. */
    public static void main(String[] args) throws Exception {
        for (int round = 0; round < 2; round++) {
            for (int batch : List.of(512, 64, 8, 1)) {
                Path folder = Files.createTempDirectory(Path.of(args[0]), "log");
                try (DataFolder data = DataFolder.open(folder);
                        SqliteLog log = data.openLog("millrace")) {
                    measure(log, batch, batch == 1 ? EVENTS / 20 : EVENTS);
                }
            }
        }
    }

    private static void measure(SqliteLog log, int batch, int events) {
        List<List<Entry>> batches = new ArrayList<>();
        for (int n = 0; n < events; n += batch) {
            batches.add(Samples.entries(n, batch));
        }
        int rows = batches.size() * batch;
        long encodeStart = System.nanoTime();
        long bytes = 0;
        for (List<Entry> entries : batches) {
            for (Entry entry : entries) {
                bytes += EventCodec.encode(entry.events().get(0)).length;
            }
        }
        long encodeNanos = System.nanoTime() - encodeStart;
        long cpuStart = cpuNanos();
        long start = System.nanoTime();
        for (List<Entry> entries : batches) {
            log.append(entries);
        }
        long nanos = System.nanoTime() - start;
        long cpu = cpuNanos() - cpuStart;
        long readStart = System.nanoTime();
        long[] read = new long[1];
        log.read(1, log.lastSeq(), recorded -> read[0]++);
        long readNanos = System.nanoTime() - readStart;
        System.out.printf(
                "batch %3d: %,7.0f events/s, %5.1f us processor each; encode %.1f us (%d bytes),"
                        + " read and check %.1f us%n",
                batch,
                rows * 1e9 / nanos,
                cpu / 1e3 / rows,
                encodeNanos / 1e3 / rows,
                bytes / rows,
                readNanos / 1e3 / read[0]);
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
