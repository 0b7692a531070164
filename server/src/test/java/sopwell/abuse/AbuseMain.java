package sopwell.abuse;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sopwell.Limits;

/**
 * The whole attack on a stand that runs: {@code AbuseMain HOST PORT [PID]}. With the server's
 * process id, on the same machine, its files and its memory are looked at too. Ends with 1 and
 * names what went wrong, or with 0.
 */
public final class AbuseMain {
    private static final Pattern INSIDES =
            Pattern.compile("(?i)exception|\\tat |undertow|java\\.|jackson");
    private static final double ORDER_MILLIS_P99_MAX = 100;
    private static final int WARM_ORDERS = 300;
    private static final long GROWTH_KIB_MAX = 30 * 1_024;

    private final Target target;
    private final String pid;
    private final List<String> wrong = new ArrayList<>();

    private AbuseMain(Target target, String pid) {
        this.target = target;
        this.pid = pid;
    }

    /** Prints what was done and what came of it. */
    public static void main(String[] args) throws IOException, InterruptedException {
        if (args.length < 2) {
            System.err.println("AbuseMain HOST PORT [PID]");
            System.exit(2);
        }
        Target target = new Target(InetAddress.getAllByName(args[0])[0], Integer.parseInt(args[1]));
        AbuseMain abuse = new AbuseMain(target, args.length > 2 ? args[2] : "");
        abuse.all();
        abuse.wrong.forEach(what -> System.out.println("WRONG: " + what));
        System.out.println(abuse.wrong.size() + " wrong");
        System.exit(abuse.wrong.isEmpty() ? 0 : 1);
    }

    /** What is wrong with the answer to a probe; empty when nothing is. */
    static String wrongWith(Probe probe, String answer) {
        if (!probe.statuses().contains(Target.status(answer))) {
            String seen = answer.substring(0, Math.min(200, answer.length()));
            return probe.name() + ": not " + probe.statuses() + " but " + seen;
        }
        return INSIDES.matcher(answer).find() ? probe.name() + " shows insides: " + answer : "";
    }

    private void all() throws IOException, InterruptedException {
        for (int i = 0; i < WARM_ORDERS; i++) {
            target.exchange(target.order("warm-" + System.nanoTime(), false));
        }
        long files = files();
        long kib = residentKib();
        probes();
        Sockets sockets = new Sockets(target);
        expect(sockets.closeCode(8_193, 1) == 1009, "a long text in one frame is closed with 1009");
        expect(sockets.closeCode(8_193, 3) == 1009, "the same in three frames");
        int most = Limits.SOCKET_FRAMES_BURST_MAX + 8 * Limits.SOCKET_FRAMES_PER_SECOND_MAX;
        int pongs = sockets.pongs(6_000, 6_000);
        System.out.println("6,000 pings in 6 s: " + pongs + " answered");
        expect(pongs <= most, "no more than " + most + " pings are answered in 6 s");
        Siege siege = new Siege(target);
        for (Siege.Manner manner : Siege.Manner.values()) {
            Siege.Outcome outcome = siege.run(manner, 500);
            System.out.println(manner + ": " + outcome);
            expect(outcome.leftOpen() == 0, manner + ": all are closed");
            expect(
                    outcome.slowestClosedMillis() <= Siege.closedMillisMax(manner),
                    manner + ": soon");
            expect(outcome.p99Millis() <= ORDER_MILLIS_P99_MAX, manner + ": orders go on");
            expect(outcome.failed() == 0, manner + ": every order is taken");
        }
        System.out.println("files " + files + ", then " + files());
        expect(Math.abs(files() - files) <= 5, "open files go back");
        System.out.println("resident " + kib + " KiB, then " + residentKib());
        expect(residentKib() - kib <= GROWTH_KIB_MAX, "memory stays");
        Overload.Outcome overload = new Overload(target).run(1_000, 10_000);
        System.out.println("overload: " + overload);
        expect(
                overload.p99Millis() <= Limits.ANSWER_MILLIS_MAX / 5.0,
                "admitted orders are answered within a second");
        expect(overload.wrong() == 0, "nothing else is answered under overload");
    }

    private void probes() throws IOException {
        List<Probe> probes = Probe.all(target);
        for (Probe probe : probes) {
            String found = wrongWith(probe, target.exchange(probe.request()));
            expect(found.isEmpty(), found);
        }
        System.out.println(probes.size() + " probes");
    }

    private void expect(boolean holds, String what) {
        if (!holds) {
            wrong.add(what);
        }
    }

    private long files() throws IOException {
        if (pid.isEmpty()) {
            return 0;
        }
        try (Stream<Path> open = Files.list(Path.of("/proc", pid, "fd"))) {
            return open.count();
        }
    }

    private long residentKib() throws IOException {
        if (pid.isEmpty()) {
            return 0;
        }
        return Files.readAllLines(Path.of("/proc", pid, "status")).stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                .sum();
    }
}
