package sopwell.net;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One connection through a {@link BadLink}, with its two directions. Thread-safe. */
final class Wire {
    private static final int CHUNK_BYTES = 8_192;
    private static final int CHOKED_CHUNK_BYTES = 256;
    private static final int CHUNKS_UNDER_WAY_MAX = 64;
    private static final int CHOKED_CHUNKS_MAX = 4;
    private static final Pattern LENGTH = Pattern.compile("(?i)\r\ncontent-length: *(\\d+)");

    private final BadLink link;
    private final Socket screen;
    private volatile Socket far;
    private volatile Socket second;
    private volatile boolean dead;
    private final Object awake = new Object();

    /** Bytes, and when they are due at the other end. */
    private record Chunk(ByteBuffer bytes, long dueNanos) {
        boolean isEnd() {
            return bytes.capacity() == 0;
        }
    }

    Wire(BadLink link, Socket screen) {
        this.link = link;
        this.screen = screen;
    }

    /** From now on it swallows everything and ends nothing. */
    void die() {
        dead = true;
    }

    /** What it holds may go on. */
    void wake() {
        synchronized (awake) {
            awake.notifyAll();
        }
    }

    /** Reads what the screen says, for nobody. */
    void listenForNothing() throws IOException {
        try (InputStream in = screen.getInputStream()) {
            in.transferTo(OutputStream.nullOutputStream());
        } finally {
            link.gone(this);
        }
    }

    /**
     * Carries both ways until one end is gone.
     *
     * @param copy a second connection that gets what is asked too; or null
     * @param swallow whether the answer is kept back and the connection reset at its end
     */
    void carry(Socket server, Socket copy, boolean swallow) throws IOException {
        far = server;
        second = copy;
        screen.setTcpNoDelay(true);
        if (copy != null) {
            BadLink.start(() -> readForNobody(copy), "link copy");
        }
        BlockingQueue<Chunk> up = queue();
        BlockingQueue<Chunk> down = queue();
        BadLink.start(() -> read(screen, up), "link up");
        BadLink.start(() -> write(up, server, copy, false), "link up out");
        BadLink.start(() -> read(server, down), "link down");
        if (swallow) {
            readAnswer(down);
            end(Cut.RESET);
        } else {
            write(down, screen, null, true);
        }
    }

    /** Ends it at both ends. */
    void end(Cut kind) {
        link.gone(this);
        for (Socket socket : new Socket[] {screen, far, second}) {
            shut(socket, kind);
        }
        wake();
    }

    private BlockingQueue<Chunk> queue() {
        boolean choked = link.weather().bytesPerSecond() > 0;
        return new ArrayBlockingQueue<>(choked ? CHOKED_CHUNKS_MAX : CHUNKS_UNDER_WAY_MAX);
    }

    private void read(Socket from, BlockingQueue<Chunk> to) {
        long due = System.nanoTime();
        try {
            InputStream in = from.getInputStream();
            boolean choked = link.weather().bytesPerSecond() > 0;
            byte[] buffer = new byte[choked ? CHOKED_CHUNK_BYTES : CHUNK_BYTES];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                due = due(n, due);
                to.put(new Chunk(ByteBuffer.wrap(Arrays.copyOf(buffer, n)), due));
            }
        } catch (IOException cut) {
            due = System.nanoTime();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        if (dead) {
            shut(from, Cut.FIN);
        }
        finish(to, due);
    }

    private static void finish(BlockingQueue<Chunk> to, long due) {
        try {
            to.put(new Chunk(ByteBuffer.allocate(0), due));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    /** Nothing overtakes in a connection; what is behind a slow chunk is late too. */
    private long due(int bytes, long before) {
        Weather weather = link.weather();
        long now = System.nanoTime();
        if (weather.isFair()) {
            return now;
        }
        int jitter = weather.jitterMillis() == 0 ? 0 : link.chance(weather.jitterMillis());
        long arrives = now + TimeUnit.MILLISECONDS.toNanos(weather.delayMillis() + (long) jitter);
        long through = Math.max(arrives, before);
        return weather.bytesPerSecond() == 0
                ? through
                : through + TimeUnit.SECONDS.toNanos(bytes) / weather.bytesPerSecond();
    }

    private void write(BlockingQueue<Chunk> from, Socket to, Socket copy, boolean isAnswer) {
        try {
            OutputStream out = to.getOutputStream();
            OutputStream other =
                    copy == null ? OutputStream.nullOutputStream() : copy.getOutputStream();
            for (Chunk chunk = from.take(); !chunk.isEnd(); chunk = from.take()) {
                TimeUnit.NANOSECONDS.sleep(chunk.dueNanos() - System.nanoTime());
                awaitCarrying();
                if (!dead && !(isAnswer && link.swallowsAnswers())) {
                    other.write(chunk.bytes().array());
                    out.write(chunk.bytes().array());
                }
            }
            awaitCarrying();
            if (!dead && !link.swallowsAnswers()) {
                end(Cut.FIN);
            }
        } catch (IOException cut) {
            if (!dead) {
                end(Cut.FIN);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void awaitCarrying() throws InterruptedException {
        synchronized (awake) {
            while (link.isHeld() && !screen.isClosed()) {
                awake.wait(1_000);
            }
        }
    }

    /**
     * Takes in the whole answer: after its head and its body it is there, whatever is kept open.
     */
    private static void readAnswer(BlockingQueue<Chunk> down) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try {
            for (Chunk c = down.take(); !c.isEnd() && !isWhole(all); c = down.take()) {
                all.writeBytes(c.bytes().array());
                if (isWhole(all)) {
                    return;
                }
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean isWhole(ByteArrayOutputStream all) {
        String text = all.toString(StandardCharsets.ISO_8859_1);
        int head = text.indexOf("\r\n\r\n");
        Matcher length = LENGTH.matcher(text);
        return head > 0
                && length.find()
                && text.length() >= head + 4 + Integer.parseInt(length.group(1));
    }

    private static void readForNobody(Socket from) {
        try (InputStream in = from.getInputStream()) {
            in.transferTo(OutputStream.nullOutputStream());
        } catch (IOException ended) {
            shut(from, Cut.FIN);
        }
    }

    private static void shut(Socket socket, Cut kind) {
        try {
            if (socket != null) {
                if (kind == Cut.RESET) {
                    socket.setSoLinger(true, 0);
                }
                socket.close();
            }
        } catch (IOException alreadyShut) {
            return;
        }
    }
}
