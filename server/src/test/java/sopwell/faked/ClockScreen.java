package sopwell.faked;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import sopwell.web.RawScreen;
import sopwell.web.StandServer;

/**
 * A screen at the pass that holds what it is told of time against a clock that never jumps, and
 * comes back when its connection ends. Thread-safe.
 */
final class ClockScreen implements AutoCloseable {
    /** How much a time may be off. */
    static final long OFF_MILLIS_MAX = 2_000;

    private static final int LOOK_MILLIS = 250;
    private static final int OPENS_MILLIS = 5_000;

    private final InetSocketAddress server;
    private final Thread thread;
    private final List<String> wrong = new ArrayList<>();
    private volatile boolean over;
    private int connects;
    private int told;
    private long awayMillisMax;
    private long heardAtNanos;
    private long firstNowMs;
    private long firstNanos;

    ClockScreen(String address) {
        URI uri = URI.create(address);
        this.server = new InetSocketAddress(uri.getHost(), uri.getPort());
        this.thread = new Thread(this::live, "clock screen");
        thread.setDaemon(true);
        thread.start();
    }

    /** What was wrong with the times. */
    synchronized List<String> wrong() {
        return List.copyOf(wrong);
    }

    /** How often it was told the time. */
    synchronized int told() {
        return told;
    }

    /** How often it had to connect. */
    synchronized int connects() {
        return connects;
    }

    /** The longest that it was without a connection. */
    synchronized long awayMillisMax() {
        return awayMillisMax;
    }

    /** Its thread ends at its next look. */
    @Override
    public void close() {
        over = true;
    }

    private void live() {
        while (!over) {
            try (RawScreen screen = RawScreen.at(server, "pass", OPENS_MILLIS)) {
                connected();
                while (!over && screen.closeCode() == 0) {
                    String text = screen.next(LOOK_MILLIS);
                    if (text != null) {
                        take(StandServer.tree(text));
                    }
                }
            } catch (IOException unreachable) {
                Thread.onSpinWait();
            }
        }
    }

    private synchronized void connected() {
        long now = System.nanoTime();
        if (connects > 0) {
            awayMillisMax =
                    Math.max(awayMillisMax, TimeUnit.NANOSECONDS.toMillis(now - heardAtNanos));
        }
        connects++;
        heardAtNanos = now;
    }

    private synchronized void take(JsonNode said) {
        long nanos = System.nanoTime();
        long nowMs = ms(said.path("now"));
        heardAtNanos = nanos;
        told++;
        if (firstNanos == 0) {
            firstNanos = nanos;
            firstNowMs = nowMs;
        }
        long off = nowMs - firstNowMs - TimeUnit.NANOSECONDS.toMillis(nanos - firstNanos);
        if (Math.abs(off) > OFF_MILLIS_MAX) {
            wrong.add("the time is off by " + off + " ms: " + said);
        }
        for (JsonNode row : said.path("rows")) {
            long age = nowMs - ms(row.path("placedAt"));
            if (age < 0) {
                wrong.add("an age of " + age + " ms: " + row);
            }
        }
    }

    private static long ms(JsonNode time) {
        return Instant.parse(time.textValue()).toEpochMilli();
    }
}
