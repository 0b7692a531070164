package sopwell.net;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/**
 * A cable of the kernel's own between this machine and a network of its own, with a few screens at
 * its far end. Needs to be root, and {@code ip}, {@code nft} and {@code tc}. Not thread-safe.
 */
final class Cable implements AutoCloseable {
    private static final String REQUIRED = "SOPWELL_REQUIRE_NETNS";
    private static final int SECONDS_MAX = 10;
    private static final int ESTABLISHED = 1;

    private final String space;
    private final String end;
    private final int net;

    /** What becomes of a cable. */
    enum Break {
        /** The far end's radio is off: whoever sends there is told at once. */
        OFF,
        /** Nothing goes either way, and nobody is told. */
        SILENT,
        /** What the stand sends arrives; what the screens send does not. */
        ONE_WAY
    }

    private Cable(int net) {
        this.net = net;
        this.space = "sopwell-" + net;
        this.end = "sopw" + net;
    }

    /**
     * Lays one. On a machine that can't, the test is skipped and says why; with
     * SOPWELL_REQUIRE_NETNS=1 that is a failure.
     */
    static Cable needed() {
        Cable cable = new Cable((int) (ProcessHandle.current().pid() % 200) + 1);
        try {
            cable.lay();
            return cable;
        } catch (IOException | UncheckedIOException unable) {
            cable.close();
            if ("1".equals(System.getenv(REQUIRED))) {
                throw new AssertionError("no cable of the kernel's own", unable);
            }
            Assumptions.abort("SKIPPED, no cable of the kernel's own: " + unable.getMessage());
            throw new AssertionError(unable);
        }
    }

    /** The address of this machine's end. */
    String near() {
        return "10.231." + net + ".1";
    }

    /** A program at the far end. */
    Process far(List<String> program) throws IOException {
        List<String> whole = new ArrayList<>(List.of("ip", "netns", "exec", space));
        whole.addAll(program);
        return new ProcessBuilder(whole).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    /** Breaks it. */
    void cut(Break kind) throws IOException {
        switch (kind) {
            case OFF -> run("ip -n " + space + " link set far down");
            case SILENT -> {
                drop("input");
                drop("output");
            }
            case ONE_WAY -> drop("output");
        }
    }

    /** Mends it. */
    void mend() throws IOException {
        run("ip netns exec " + space + " nft flush ruleset");
        run("ip -n " + space + " link set far up");
    }

    /** From now on the stand's words go at 8 kbit a second. */
    void choke() throws IOException {
        run("tc qdisc add dev " + end + " root tbf rate 8kbit burst 1540 latency 5s");
    }

    /** How many connections with the far end this machine believes in. */
    int believedIn() throws IOException {
        String far = String.format(Locale.ROOT, "02%02XE70A:", net);
        int count = 0;
        for (String file : List.of("/proc/net/tcp", "/proc/net/tcp6")) {
            for (String line : Files.readAllLines(Path.of(file))) {
                String[] words = line.trim().split(" +", -1);
                if (words.length > 3
                        && words[2].contains(far)
                        && words[3].equals(String.format(Locale.ROOT, "%02X", ESTABLISHED))) {
                    count++;
                }
            }
        }
        return count;
    }

    @Override
    public void close() {
        for (String undo : List.of("ip netns del " + space, "ip link del " + end)) {
            try {
                run(undo);
            } catch (IOException gone) {
                // The one takes the other with it.
            }
        }
    }

    private void lay() throws IOException {
        run("ip netns add " + space);
        run("ip link add " + end + " type veth peer name far netns " + space);
        run("ip addr add " + near() + "/30 dev " + end);
        run("ip -n " + space + " addr add 10.231." + net + ".2/30 dev far");
        run("ip link set " + end + " up");
        run("ip -n " + space + " link set far up");
        run("ip netns exec " + space + " nft list ruleset");
    }

    private void drop(String way) throws IOException {
        String nft = "ip netns exec " + space + " nft ";
        run(nft + "add table inet cut");
        List<String> chain =
                new ArrayList<>(Arrays.asList((nft + "add chain inet cut").split(" ")));
        chain.addAll(List.of(way, "{ type filter hook " + way + " priority 0; policy drop; }"));
        run(chain);
    }

    private static void run(String command) throws IOException {
        run(Arrays.asList(command.split(" ")));
    }

    private static void run(List<String> command) throws IOException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).trim();
        try {
            if (!process.waitFor(SECONDS_MAX, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IOException(String.join(" ", command) + ": " + said);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
    }
}
