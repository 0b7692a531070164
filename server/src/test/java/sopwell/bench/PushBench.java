package sopwell.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import sopwell.crash.StandProcess;

/**
 * How long an order takes to the last of fifty screens of its board while five thousand are
 * connected, what a screen costs in memory, and what screens that stop reading cost the others:
 * beside the barest push that the machine can do, in turns, in one run.
 *
 * <p>The orders are for one station and so change its board, the pass and the counter; fifty
 * screens look at each of the three. The other screens look at stations that those orders don't
 * touch, half of them in Spanish: they get signs of life and are asked whether they are there, no
 * more.
 */
public final class PushBench {
    private static final List<String> FLAGS =
            List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xmx256m");
    private static final int SCREENS = 5_000;
    private static final int EACH = 50;
    private static final int STUCK = 500;
    private static final int PER_SECOND = 20;
    private static final int ROUNDS = 5;
    private static final int WARM_ORDERS = 400;
    private static final int ORDERS = 120;
    private static final int FILLING_ASKS = 40;
    private static final double P99_MILLIS_MAX = 50;
    private static final List<String> BUSY = List.of("drinks", "pass", "counter");
    private static final List<String> QUIET = List.of("line", "fryer", "grill");

    private final Crowd crowd;
    private final int port;
    private final List<List<Onlooker>> busy = new ArrayList<>();
    private int orders;

    private PushBench(Crowd crowd, int port) {
        this.crowd = crowd;
        this.port = port;
    }

    /** Prints what it measured. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("sopwell-push");
        Process fan = fan();
        try (StandProcess stand = OrderBench.stand(folder.resolve("stand"), FLAGS);
                Crowd crowd = new Crowd(URI.create(stand.address()).getPort());
                Crowd rawCrowd = new Crowd(port(fan))) {
            PushBench bench = new PushBench(crowd, URI.create(stand.address()).getPort());
            System.out.println("flags " + FLAGS + "; " + SCREENS + " screens; " + limits());
            bench.orders(WARM_ORDERS);
            Held before = Held.by(stand.pid());
            bench.fill();
            TimeUnit.SECONDS.sleep(3);
            Held after = Held.by(stand.pid());
            System.out.println("a screen: " + before.growth(after, SCREENS) + "; aim 25 KiB");
            bench.orders(WARM_ORDERS);
            bench.rounds(rawCrowd, stand.pid());
        } finally {
            fan.destroyForcibly();
        }
    }

    private void fill() throws IOException {
        for (String board : BUSY) {
            List<Onlooker> fifty = new ArrayList<>();
            for (int i = 0; i < EACH; i++) {
                fifty.add(join(board, i));
            }
            busy.add(fifty);
        }
        for (int i = 0; i < SCREENS - BUSY.size() * EACH; i++) {
            join(QUIET.get(i % QUIET.size()), i / QUIET.size());
        }
    }

    /** Every second in Spanish, every fifth a program that reads JSON. */
    private Onlooker join(String board, int place) throws IOException {
        String lang = place % 2 == 0 ? "en" : "es";
        return crowd.join("/ws/boards/" + board + "?lang=" + lang, place % 5 == 4);
    }

    private void rounds(Crowd rawCrowd, long pid) throws IOException, InterruptedException {
        List<Onlooker> rawFifty = new ArrayList<>();
        for (int i = 0; i < EACH; i++) {
            rawFifty.add(rawCrowd.joinRaw(RawFan.LISTENER));
        }
        for (int i = 0; i < SCREENS - EACH; i++) {
            rawCrowd.joinRaw(RawFan.IDLE);
        }
        Onlooker sender = rawCrowd.joinRaw(RawFan.SENDER);
        Pushes.lastNanos(Pushes.raw(sender, PER_SECOND * 5, WARM_ORDERS, 1), rawFifty);
        List<Long> raw = new ArrayList<>();
        List<List<Long>> without = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        List<List<Long>> with = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        Held reading = Held.by(pid);
        for (int round = 0; round < ROUNDS; round++) {
            long first = 10_000L * (round + 1);
            raw.addAll(Pushes.lastNanos(Pushes.raw(sender, PER_SECOND, ORDERS, first), rawFifty));
            measure(without);
            List<Onlooker> stuck = stick();
            if (round == 0) {
                System.out.println(
                        "a screen that does not read: "
                                + reading.growth(Held.by(pid), STUCK)
                                + " more");
                crowd.leave(stuck);
                stuck = stick();
            }
            TimeUnit.SECONDS.sleep(1);
            measure(with);
            crowd.leave(stuck);
            TimeUnit.SECONDS.sleep(1);
        }
        System.out.println("raw, to the last of 50: " + Times.ofNanos(raw));
        for (int i = 0; i < BUSY.size(); i++) {
            print(BUSY.get(i) + ", to the last of 50", without.get(i));
            print(BUSY.get(i) + ", with " + STUCK + " that don't read", with.get(i));
        }
    }

    private static void print(String what, List<Long> nanos) {
        Times times = Times.ofNanos(nanos);
        System.out.printf(
                Locale.ROOT,
                "%s: %s; aim p99 %.0f ms: %s%n",
                what,
                times,
                P99_MILLIS_MAX,
                times.ninetyNinth() / 1000 <= P99_MILLIS_MAX ? "met" : "missed");
    }

    private void measure(List<List<Long>> nanos) throws IOException, InterruptedException {
        List<Pushes.Sent> sent = orders(ORDERS);
        for (int i = 0; i < BUSY.size(); i++) {
            nanos.get(i).addAll(Pushes.lastNanos(sent, busy.get(i)));
        }
    }

    /** Screens of the boards that change, which ask for the whole board and never read it. */
    private List<Onlooker> stick() throws IOException {
        List<Onlooker> stuck = new ArrayList<>();
        for (int i = 0; i < STUCK; i++) {
            stuck.add(crowd.joinDeaf("/ws/boards/" + BUSY.get(i % BUSY.size())));
        }
        for (int ask = 0; ask < FILLING_ASKS; ask++) {
            for (Onlooker one : stuck) {
                one.askWhole();
            }
        }
        return stuck;
    }

    private List<Pushes.Sent> orders(int count) throws IOException, InterruptedException {
        orders++;
        try (RawClient client = new RawClient(port)) {
            return Pushes.orders(client, "cola", PER_SECOND, count, "push-" + orders + "-");
        }
    }

    private static String limits() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/limits")).stream()
                .filter(line -> line.startsWith("Max open files"))
                .findFirst()
                .orElseThrow()
                .replaceAll(" +", " ");
    }

    private static Process fan() throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(FLAGS);
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.add(RawFan.class.getName());
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    private static int port(Process fan) throws IOException {
        BufferedReader out =
                new BufferedReader(
                        new InputStreamReader(fan.getInputStream(), StandardCharsets.UTF_8));
        return Integer.parseInt(out.readLine());
    }
}
