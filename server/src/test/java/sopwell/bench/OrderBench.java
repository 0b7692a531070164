package sopwell.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import sopwell.crash.StandProcess;

/**
 * Orders a second and the time from post to frame, beside the disk's sync and a post that does
 * nothing, in one run on one machine; the client shares its cores.
 */
public final class OrderBench {
    private static final List<String> FLAGS = List.of("-XX:+UseSerialGC", "-Xms256m", "-Xmx1g");
    private static final int CONNECTIONS = 64;
    private static final int PER_SECOND = 20;
    private static final int ROUNDS = 3;

    /** On two cores the compiler of the virtual machine needs so long to be done. */
    private static final int WARM_MILLIS = 30_000;

    private static final int COUNTED_MILLIS = 8_000;
    private static final String ORDER =
            "{\"call\": \"2 beef dipped hot, fries\", \"name\": \"Ines\"}";

    private OrderBench() {}

    /** Prints what it measured. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("sopwell-bench");
        System.out.println("disk: 600 bytes and a sync, at once " + sync(folder, 3_000, 0));
        Times sync = sync(folder, 400, PER_SECOND);
        System.out.println("disk: the same, at the orders' pace " + sync);
        latency(folder, sync);
        throughput(folder);
    }

    private static void latency(Path folder, Times sync) throws IOException, InterruptedException {
        try (StandProcess stand = stand(folder.resolve("latency"), FLAGS)) {
            int port = port(stand.address());
            Times cold = FrameTimes.measure(port, PER_SECOND, 200);
            System.out.println("post to frame, 20/s, first 10 s     " + cold);
        }
        try (StandProcess stand = stand(folder.resolve("latency-warm"), FLAGS)) {
            int port = port(stand.address());
            Load.perSecond(port, 4, 0, 5_000, OrderBench::order);
            Times warm = FrameTimes.measure(port, PER_SECOND, 400);
            System.out.println("post to frame, 20/s, after 5 s load " + warm);
            double limit = 5 * sync.ninetyNinth() / 1000 + 5;
            System.out.printf(
                    Locale.ROOT,
                    "  p99 %.2f ms, aim: 5 x sync p99 + 5 ms = %.2f ms%n",
                    warm.ninetyNinth() / 1000,
                    limit);
        }
    }

    private static void throughput(Path folder) throws IOException, InterruptedException {
        List<Double> noops = new ArrayList<>();
        List<Double> orders = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            noops.add(noop());
            try (StandProcess stand = stand(folder.resolve("load-" + round), FLAGS)) {
                int port = port(stand.address());
                orders.add(
                        Load.perSecond(
                                port, CONNECTIONS, WARM_MILLIS, COUNTED_MILLIS, OrderBench::order));
            }
            System.out.printf(
                    Locale.ROOT,
                    "round %d: no-op %.0f/s, orders %.0f/s, ratio %.2f%n",
                    round + 1,
                    noops.get(round),
                    orders.get(round),
                    orders.get(round) / noops.get(round));
        }
        noops.sort(null);
        orders.sort(null);
        System.out.printf(
                Locale.ROOT,
                "%d connections, medians of %d: no-op posts %.0f/s, orders %.0f/s, ratio %.2f"
                        + " (aim 0.50)%n",
                CONNECTIONS,
                ROUNDS,
                noops.get(ROUNDS / 2),
                orders.get(ROUNDS / 2),
                orders.get(ROUNDS / 2) / noops.get(ROUNDS / 2));
    }

    private static int order(RawClient client, long number) throws IOException {
        return client.post("/api/orders", "load-" + number, ORDER);
    }

    private static double noop() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(FLAGS);
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.add(NoopServer.class.getName());
        Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        try {
            BufferedReader out =
                    new BufferedReader(
                            new InputStreamReader(
                                    process.getInputStream(), StandardCharsets.UTF_8));
            String line = out.readLine();
            int port = port(line.substring(line.indexOf("http")));
            return Load.perSecond(
                    port,
                    CONNECTIONS,
                    WARM_MILLIS,
                    COUNTED_MILLIS,
                    (client, number) -> client.post("/noop", "load-" + number, ORDER));
        } finally {
            process.destroyForcibly();
        }
    }

    /** A stand whose numbers don't run out, since nobody hands these orders over. */
    static StandProcess stand(Path data, List<String> flags) throws IOException {
        Files.createDirectories(data);
        Files.writeString(data.resolve("stand.json"), settings());
        try (var menu = OrderBench.class.getResourceAsStream("/demo/menu.json")) {
            Files.write(data.resolve("menu.json"), menu.readAllBytes());
        }
        return StandProcess.start(
                data,
                flags,
                List.of("--start-with", "nothing", "--connections-per-address", "8000"));
    }

    private static String settings() throws IOException {
        try (var in = OrderBench.class.getResourceAsStream("/demo/stand.json")) {
            String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return json.replaceAll("\"orderNumberMax\": *\\d+", "\"orderNumberMax\": 9999999");
        }
    }

    /** Syncs one behind the other, or so many a second: a disk that idles answers later. */
    private static Times sync(Path folder, int times, int perSecond)
            throws IOException, InterruptedException {
        List<Long> nanos = new ArrayList<>();
        ByteBuffer row = ByteBuffer.allocateDirect(600);
        try (FileChannel file =
                FileChannel.open(
                        folder.resolve("sync"),
                        StandardOpenOption.CREATE,
                        StandardOpenOption.WRITE)) {
            long pace = perSecond == 0 ? 0 : TimeUnit.SECONDS.toNanos(1) / perSecond;
            int unused = times / 6;
            long due = System.nanoTime();
            for (int i = 0; i < times; i++) {
                due += pace;
                TimeUnit.NANOSECONDS.sleep(Math.max(0, due - System.nanoTime()));
                row.clear();
                long from = System.nanoTime();
                file.write(row);
                file.force(false);
                if (i >= unused) {
                    nanos.add(System.nanoTime() - from);
                }
            }
        }
        return Times.ofNanos(nanos);
    }

    private static int port(String address) {
        return URI.create(address).getPort();
    }
}
