package sopwell.soak;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import sopwell.web.RawScreen;
import sopwell.web.StandServer;
import sopwell.web.StandServer.Got;

/**
 * {@code SoakMain [HOURS [SECONDS_AN_HOUR]]}: so many hours of a busy day by a clock that runs
 * faster, with ten screens, orders, edits, payments and taps. Prints each hour what is held, and
 * ends with 1 when it grows.
 */
public final class SoakMain {
    private static final int ORDERS_AN_HOUR = 100;
    private static final int OPEN_HOURS = 14;
    private static final List<String> BOARDS =
            List.of("line", "fryer", "grill", "drinks", "pass", "counter", "ready");
    private static final int SCREENS = 10;
    private static final int READ_MILLIS = 1_000;

    /**
     * How much the heap may grow an hour. A day's own orders are kept at hand until its end, some
     * kilobytes each.
     */
    private static final double HEAP_KIB_AN_HOUR_MAX = 1_024;

    private static final long FILES_GROWTH_MAX = 5;

    private final StandServer stand;
    private final List<RawScreen> screens = new ArrayList<>();
    private final List<Long> postNanos = new ArrayList<>();
    private final AtomicLong frames = new AtomicLong();
    private final AtomicInteger cut = new AtomicInteger();
    private volatile boolean over;
    private int orders;
    private int wrong;

    private SoakMain(StandServer stand) {
        this.stand = stand;
    }

    /** What is held after an hour. */
    private record Held(double heapKib, long files, int threads, long residentKib) {}

    /** Prints what it measured. */
    public static void main(String[] args) throws IOException {
        int hours = args.length > 0 ? Integer.parseInt(args[0]) : 24;
        int seconds = args.length > 1 ? Integer.parseInt(args[1]) : 10;
        long start = System.nanoTime();
        long speed = 3_600L / seconds;
        Instant morning = Instant.parse("2026-06-01T14:00:00Z");
        InstantSource clock = () -> morning.plusNanos((System.nanoTime() - start) * speed);
        boolean grows;
        try (StandServer stand = StandServer.fresh(clock)) {
            grows = new SoakMain(stand).run(hours, TimeUnit.SECONDS.toNanos(seconds));
        }
        System.exit(grows ? 1 : 0);
    }

    private boolean run(int hours, long hourNanos) throws IOException {
        for (int i = 0; i < SCREENS; i++) {
            RawScreen screen = RawScreen.at(stand.port(), BOARDS.get(i % BOARDS.size()));
            screens.add(screen);
            Thread reader = new Thread(() -> read(screen), "screen");
            reader.setDaemon(true);
            reader.start();
        }
        List<Held> held = new ArrayList<>();
        long due = System.nanoTime();
        for (int hour = 1; hour <= hours; hour++) {
            due += hourNanos;
            hour(hour <= OPEN_HOURS ? ORDERS_AN_HOUR : 0, due);
            Held now = held();
            held.add(now);
            System.out.printf(
                    Locale.ROOT,
                    "hour %2d: heap %.0f KiB, files %d, threads %d, resident %d KiB; %d orders,"
                            + " POST p99 %.1f ms%n",
                    hour,
                    now.heapKib,
                    now.files,
                    now.threads,
                    now.residentKib,
                    orders,
                    p99Millis());
        }
        boolean grows = judge(held);
        over = true;
        for (RawScreen screen : screens) {
            screen.close();
        }
        return grows;
    }

    private void hour(int count, long until) {
        long begin = System.nanoTime();
        for (int i = 0; i < count; i++) {
            order(i);
            long at = begin + (until - begin) * (i + 1) / (count + 1);
            LockSupport.parkNanos(Math.max(0, at - System.nanoTime()));
        }
        LockSupport.parkNanos(Math.max(0, until - System.nanoTime()));
    }

    /** Takes an order, changes every tenth, has it paid and made, and hands it over. */
    private void order(int number) {
        long from = System.nanoTime();
        Got got = stand.post("/api/orders", "{\"call\": \"2 beef dipped hot, fries\"}");
        postNanos.add(System.nanoTime() - from);
        if (got.status() != 201) {
            wrong++;
            return;
        }
        orders++;
        String path = "/api/orders/" + got.json().path("order").textValue();
        if (number % 10 == 0) {
            String body =
                    "{\"version\": 1, \"call\": \"beef dry, fries\", \"reason\": \"misheard\"}";
            expect(200, stand.post(path + "/changes", body));
        }
        expect(200, stand.post(path + "/payments", "{\"means\": \"card\"}"));
        for (JsonNode part : stand.get(path).json().path("parts")) {
            String id = part.path("part").textValue();
            if (number % 10 == 0) {
                stand.post("/api/parts/" + id + "/seen", "");
            }
            expect(200, stand.post("/api/parts/" + id + "/up", ""));
        }
        expect(200, stand.post(path + "/handed", ""));
    }

    private void expect(int status, Got got) {
        if (got.status() != status) {
            wrong++;
            if (wrong < 4) {
                System.out.println("answered " + got.status() + ": " + got.text());
            }
        }
    }

    private void read(RawScreen screen) {
        try {
            while (screen.closeCode() == 0 && !over) {
                if (screen.next(READ_MILLIS) != null) {
                    frames.incrementAndGet();
                }
            }
        } catch (IOException gone) {
            cut.incrementAndGet();
            return;
        }
        if (!over) {
            cut.incrementAndGet();
        }
    }

    private double p99Millis() {
        long[] sorted = postNanos.stream().mapToLong(Long::longValue).toArray();
        Arrays.sort(sorted);
        postNanos.clear();
        return sorted.length == 0 ? 0 : sorted[(sorted.length - 1) * 99 / 100] / 1e6;
    }

    /** The slope from the first hour after warming to the last, by least squares. */
    private boolean judge(List<Held> held) {
        List<Held> warm = held.subList(Math.min(3, held.size() - 1), held.size());
        double middle = (warm.size() - 1) / 2.0;
        double mean = warm.stream().mapToDouble(Held::heapKib).average().orElse(0);
        double over = 0;
        double under = 0;
        for (int i = 0; i < warm.size(); i++) {
            over += (i - middle) * (warm.get(i).heapKib - mean);
            under += (i - middle) * (i - middle);
        }
        double slope = under == 0 ? 0 : over / under;
        long files = warm.get(warm.size() - 1).files - warm.get(0).files;
        System.out.printf(
                Locale.ROOT,
                "heap grows by %.0f KiB an hour (at most %.0f), files by %d; %d frames, %d screens"
                        + " cut off, %d answers wrong%n",
                slope,
                HEAP_KIB_AN_HOUR_MAX,
                files,
                frames.get(),
                cut.get(),
                wrong);
        return slope > HEAP_KIB_AN_HOUR_MAX
                || files > FILES_GROWTH_MAX
                || cut.get() > 0
                || wrong > 0;
    }

    private static Held held() throws IOException {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        double heap = (runtime.totalMemory() - runtime.freeMemory()) / 1_024.0;
        long resident =
                Files.readAllLines(Path.of("/proc/self/status")).stream()
                        .filter(line -> line.startsWith("VmRSS:"))
                        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                        .sum();
        try (Stream<Path> files = Files.list(Path.of("/proc/self/fd"))) {
            return new Held(heap, files.count(), Thread.getAllStackTraces().size(), resident);
        }
    }
}
