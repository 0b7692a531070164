package sopwell.metrics;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.lang.management.OperatingSystemMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.ToLongFunction;

/** The process's own figures, under the names that Prometheus' libraries give them. Stateless. */
public final class OwnProcess {
    private static final double MILLIS_PER_SECOND = 1e3;
    private static final double NANOS_PER_SECOND = 1e9;
    private static final long BYTES_PER_KIBIBYTE = 1_024;
    private static final Path STATUS = Path.of("/proc/self/status");

    private OwnProcess() {}

    /** Adds them; those that this system does not tell are left out. */
    public static void add(Scrape to) {
        to.now("jvm_memory_used_bytes", "Memory in use.", "area", memory(MemoryUsage::getUsed));
        to.now(
                "jvm_memory_committed_bytes",
                "Memory taken from the system.",
                "area",
                memory(MemoryUsage::getCommitted));
        to.now(
                "jvm_memory_max_bytes",
                "The most memory there may be; -1 where there is no limit.",
                "area",
                memory(MemoryUsage::getMax));
        Map<String, Double> seconds = new TreeMap<>();
        Map<String, Long> runs = new TreeMap<>();
        for (GarbageCollectorMXBean gc : ManagementFactory.getGarbageCollectorMXBeans()) {
            seconds.put(gc.getName(), gc.getCollectionTime() / MILLIS_PER_SECOND);
            runs.put(gc.getName(), gc.getCollectionCount());
        }
        to.sum("sopwell_gc_seconds", "Time that collecting garbage took.", "gc", seconds);
        to.sum("sopwell_gc_runs", "How often garbage was collected.", "gc", runs);
        to.now(
                "jvm_threads_current",
                "Threads.",
                ManagementFactory.getThreadMXBean().getThreadCount());
        system(to);
        residentBytes()
                .ifPresent(
                        bytes ->
                                to.now(
                                        "process_resident_memory_bytes",
                                        "Memory that the process holds.",
                                        bytes));
    }

    private static Map<String, Long> memory(ToLongFunction<MemoryUsage> part) {
        Map<String, Long> areas = new TreeMap<>();
        areas.put(
                "heap", part.applyAsLong(ManagementFactory.getMemoryMXBean().getHeapMemoryUsage()));
        areas.put(
                "nonheap",
                part.applyAsLong(ManagementFactory.getMemoryMXBean().getNonHeapMemoryUsage()));
        return areas;
    }

    private static void system(Scrape to) {
        OperatingSystemMXBean system = ManagementFactory.getOperatingSystemMXBean();
        if (system instanceof com.sun.management.UnixOperatingSystemMXBean unix) {
            to.now("process_open_fds", "Open files.", unix.getOpenFileDescriptorCount());
            to.now("process_max_fds", "Files that may be open.", unix.getMaxFileDescriptorCount());
            to.sum(
                    "process_cpu_seconds",
                    "Processor time.",
                    unix.getProcessCpuTime() / NANOS_PER_SECOND);
        }
    }

    private static OptionalLong residentBytes() {
        if (!Files.isReadable(STATUS)) {
            return OptionalLong.empty();
        }
        try {
            return Files.readAllLines(STATUS).stream()
                    .filter(line -> line.startsWith("VmRSS:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .map(kibibytes -> kibibytes * BYTES_PER_KIBIBYTE)
                    .findFirst();
        } catch (java.io.IOException untold) {
            return OptionalLong.empty();
        }
    }
}
