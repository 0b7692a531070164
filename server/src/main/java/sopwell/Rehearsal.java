package sopwell;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs a whole stand for a moment, over a folder that is thrown away: does everything work on this
 * box? It also walks through all that a start needs, so that Java can keep it ready for the next
 * start ({@code -XX:ArchiveClassesAtExit}).
 */
final class Rehearsal {
    private static final List<String> PAGES =
            List.of("/counter", "/", "/boards/line", "/pass", "/mix/today", "/healthz");

    private final RunningStand.Clocks clocks;
    private final PrintStream out;

    Rehearsal(RunningStand.Clocks clocks, PrintStream out) {
        this.clocks = clocks;
        this.out = out;
    }

    /**
     * Plays it through and says how it went.
     *
     * @throws StartRefused when the stand can't start or answers wrongly here
     */
    void play() throws StartRefused {
        try {
            Path folder = Files.createTempDirectory("sopwell-rehearsal");
            try {
                play(folder);
            } finally {
                delete(folder);
            }
        } catch (IOException fault) {
            throw new StartRefused("The rehearsal broke off: " + fault.getMessage());
        }
    }

    private void play(Path folder) throws StartRefused, IOException {
        Config.Serve asked = new Config.Serve();
        asked.data = folder;
        asked.host = "127.0.0.1";
        asked.port = 0;
        asked.startWith = Config.StartWith.lunch;
        long fromNanos = clocks.nanos().getAsLong();
        try (RunningStand stand =
                RunningStand.start(asked, clocks, DiskWatch.Disk.of(asked.data))) {
            expect(stand.address() + PAGES.get(0), null, 200);
            long nanos = clocks.nanos().getAsLong() - fromNanos;
            for (String page : PAGES.subList(1, PAGES.size())) {
                expect(stand.address() + page, null, 200);
            }
            expect(stand.address() + "/api/orders", "{\"call\": \"2 beef dipped hot\"}", 201);
            out.println("first page after " + TimeUnit.NANOSECONDS.toMillis(nanos) + " ms");
            out.println("an order, the counter, a board, the pass and the mix: all well");
        }
    }

    /** Asks, or posts a body; the answer must have this status. */
    private static void expect(String address, String body, int status)
            throws StartRefused, IOException {
        HttpURLConnection ask = (HttpURLConnection) URI.create(address).toURL().openConnection();
        try {
            if (body != null) {
                ask.setRequestMethod("POST");
                ask.setDoOutput(true);
                ask.setRequestProperty("Content-Type", "application/json");
                ask.setRequestProperty("Idempotency-Key", "rehearsal");
                ask.getOutputStream().write(body.getBytes(StandardCharsets.UTF_8));
            }
            int answered = ask.getResponseCode();
            if (answered != status) {
                throw new StartRefused(address + " answered " + answered + ", not " + status + ".");
            }
            try (InputStream page = ask.getInputStream()) {
                page.readAllBytes();
            }
        } finally {
            ask.disconnect();
        }
    }

    private static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.delete(path);
        }
    }
}
