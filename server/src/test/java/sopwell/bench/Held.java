package sopwell.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What another Java process holds after a collection, in KiB. Immutable.
 *
 * @param heap objects that are in use
 * @param resident all of the process that the system has in memory; without what the system itself
 *     keeps for its sockets
 */
record Held(long heap, long resident) {

    static Held by(long pid) throws IOException, InterruptedException {
        jcmd(pid, "GC.run");
        String info = jcmd(pid, "GC.heap_info");
        Matcher used = Pattern.compile("generation +total +\\d+K, used (\\d+)K").matcher(info);
        long heap = 0;
        while (used.find()) {
            heap += Long.parseLong(used.group(1));
        }
        if (heap == 0) {
            throw new IllegalStateException("not a serial collector: " + info);
        }
        return new Held(heap, resident(pid));
    }

    /** How much less this is than something later, a piece. */
    String growth(Held later, int pieces) {
        return String.format(
                java.util.Locale.ROOT,
                "%.1f KiB of heap, %.1f KiB resident",
                (later.heap - heap) / (double) pieces,
                (later.resident - resident) / (double) pieces);
    }

    private static long resident(long pid) throws IOException {
        for (String line : Files.readAllLines(Path.of("/proc/" + pid + "/status"))) {
            if (line.startsWith("VmRSS:")) {
                return Long.parseLong(line.replaceAll("\\D", ""));
            }
        }
        throw new IllegalStateException("the system does not say how much memory is held");
    }

    private static String jcmd(long pid, String command) throws IOException, InterruptedException {
        String jcmd = Path.of(System.getProperty("java.home"), "bin", "jcmd").toString();
        Process process = new ProcessBuilder(jcmd, Long.toString(pid), command).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return out;
    }
}
