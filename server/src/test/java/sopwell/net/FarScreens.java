package sopwell.net;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** What {@link FarMain} says, heard at this end. Used by one thread. */
final class FarScreens implements AutoCloseable {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    private final Process process;
    private final Map<Integer, Seen> now = new TreeMap<>();
    private final BlockingQueue<String> said = new LinkedBlockingQueue<>();
    private final List<String> faults = new ArrayList<>();

    /**
     * What a screen shows.
     *
     * @param sinceNanos by this machine's one monotonic clock, which both programs read
     */
    record Seen(boolean stale, long seq, long sinceNanos) {}

    FarScreens(Cable cable, int port, String token, int screens) throws IOException {
        this.process =
                cable.far(
                        List.of(
                                JAVA,
                                "-Xmx64m",
                                "-XX:+UseSerialGC",
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                FarMain.class.getName(),
                                cable.near(),
                                "" + port,
                                token,
                                "" + screens));
        Thread reading = new Thread(this::read, "far screens");
        reading.setDaemon(true);
        reading.start();
    }

    /** What each screen shows at the moment. */
    synchronized Map<Integer, Seen> now() {
        return new TreeMap<>(now);
    }

    /** Asks each screen for its rows; with them come faults. */
    Map<Integer, String> rows() throws IOException {
        said.clear();
        OutputStream out = process.getOutputStream();
        out.write("rows\n".getBytes(StandardCharsets.UTF_8));
        out.flush();
        Map<Integer, String> rows = new TreeMap<>();
        for (String line = next(); !line.equals("said"); line = next()) {
            String[] words = line.split(" ", 3);
            if (words[0].equals("fault")) {
                faults.add(line);
            } else {
                rows.put(Integer.valueOf(words[1]), words[2]);
            }
        }
        return rows;
    }

    /** What did not follow, as far as rows were asked for. */
    List<String> faults() {
        return List.copyOf(faults);
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }

    private String next() throws IOException {
        try {
            String line = said.poll(10, TimeUnit.SECONDS);
            if (line == null) {
                throw new IOException("the far screens say nothing");
            }
            return line;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
    }

    private void read() {
        try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (Character.isDigit(line.charAt(0))) {
                    hear(line.split(" "));
                } else {
                    said.add(line);
                }
            }
        } catch (IOException gone) {
            if (process.isAlive()) {
                throw new UncheckedIOException(gone);
            }
        }
    }

    private synchronized void hear(String[] words) {
        long nanos = Long.parseLong(words[0]);
        boolean stale = words[2].equals("stale");
        now.put(Integer.valueOf(words[1]), new Seen(stale, Long.parseLong(words[3]), nanos));
    }
}
