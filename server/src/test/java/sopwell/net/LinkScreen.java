package sopwell.net;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import sopwell.web.RawScreen;
import sopwell.web.Seen;
import sopwell.web.StandServer;

/**
 * A program at a board over a bad link, as the interface's guide has it: it folds frames, holds its
 * board for stale when it hears nothing, and connects anew. A frame that does not follow on what it
 * has is remembered as a fault. Thread-safe.
 */
final class LinkScreen implements AutoCloseable {
    static final int STALE_MILLIS = 4_000;
    private static final int LOST_MILLIS = 2_000;
    private static final int SILENT_MILLIS = 2_500;
    private static final int OPENS_MILLIS = 1_000;
    private static final int REST_MILLIS = 250;

    private final InetSocketAddress server;
    private final String board;
    private final RawScreen.Manner manner;
    private final Thread thread;
    private volatile boolean over;
    private volatile boolean connected;
    private volatile long heardAt = System.nanoTime();
    private volatile long lostBeatAt;
    private volatile long connectedAt;
    private int connects;
    private Seen seen;
    private String fault = "";

    LinkScreen(InetSocketAddress server, String board) {
        this(server, board, RawScreen.Manner.json());
    }

    /** The same at a stand that wants to know who looks. */
    LinkScreen(InetSocketAddress server, String board, RawScreen.Manner manner) {
        this.server = server;
        this.board = board;
        this.manner = manner;
        this.thread = new Thread(this::live, "screen " + board);
        thread.setDaemon(true);
        thread.start();
    }

    String board() {
        return board;
    }

    /** Whether somebody who looks at it would be told that it is old. */
    boolean isStale() {
        long silent = millisSince(heardAt);
        return silent > STALE_MILLIS || (!connected && silent > LOST_MILLIS);
    }

    /** The place in the log that is shown; 0 before the first board. */
    synchronized long seq() {
        return seen == null ? 0 : seen.seq();
    }

    synchronized List<String> rows() {
        return seen == null ? List.of() : seen.board();
    }

    /** What did not follow, or nothing. */
    synchronized Optional<String> fault() {
        return fault.isEmpty() ? Optional.empty() : Optional.of(fault);
    }

    synchronized int connects() {
        return connects;
    }

    /** How long it took from the last thing that was heard to the next connection. */
    long millisAway() {
        return TimeUnit.NANOSECONDS.toMillis(connectedAt - lostBeatAt);
    }

    @Override
    public void close() {
        over = true;
        thread.interrupt();
    }

    private void live() {
        while (!over) {
            try (RawScreen screen = RawScreen.at(server, board, OPENS_MILLIS, manner)) {
                follow(screen);
            } catch (IOException unreachable) {
                connected = false;
            }
            connected = false;
            BadLink.pause(REST_MILLIS);
        }
    }

    private void follow(RawScreen screen) throws IOException {
        Seen fresh = new Seen();
        long from = System.nanoTime();
        long last = from;
        while (!over && screen.closeCode() == 0 && millisSince(last) < SILENT_MILLIS) {
            String text = screen.next(REST_MILLIS);
            if (text != null) {
                last = System.nanoTime();
                take(fresh, text);
            }
        }
    }

    private synchronized void take(Seen fresh, String text) {
        if (!text.startsWith("{\"beat\"")) {
            JsonNode frame = StandServer.tree(text);
            if (fresh == seen && frame.path("seq").longValue() < fresh.seq()) {
                fault = "goes back: " + frame;
            }
            try {
                fresh.take(frame);
            } catch (AssertionError wrong) {
                fault = wrong.getMessage();
            }
            if (seen != fresh) {
                lostBeatAt = heardAt;
                connectedAt = System.nanoTime();
                connects++;
                seen = fresh;
            }
            connected = true;
        }
        heardAt = System.nanoTime();
    }

    private static long millisSince(long nanos) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - nanos);
    }
}
