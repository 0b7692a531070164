package sopwell.web;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.DataInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/**
 * A board's socket, done by hand: it answers no ping and reads nothing unless the test does.
 * Belongs to one thread.
 */
public final class RawScreen implements AutoCloseable {
    /** The subprotocol of JSON frames. */
    public static final String JSON = "sopwell.json.v1";

    private static final int TEXT = 1;
    private static final int CLOSE = 8;
    private static final int PING = 9;
    private static final int PONG = 10;
    private static final byte[] MASK = {1, 2, 3, 4};

    private final RawConnection connection;
    private final String answer;
    private int closeCode;

    /**
     * How to connect.
     *
     * @param more further header lines, each ended
     * @param receiveBytes how much the system may take in unread; 0 for its own choice
     */
    public record Manner(String more, int receiveBytes) {
        /** A program that reads well. */
        public static Manner json() {
            return new Manner("Sec-WebSocket-Protocol: " + JSON + "\r\n", 0);
        }

        /** The same with one more header line. */
        public Manner with(String line) {
            return new Manner(more + line + "\r\n", receiveBytes);
        }

        /** The same with hardly any room for what is not read. */
        public Manner cramped() {
            return new Manner(more, 2_048);
        }
    }

    /** Asks for a socket; whether it was given is to be seen by {@link #answer}. */
    public RawScreen(int port, String path, Manner manner) throws IOException {
        this(new RawConnection(port, manner.receiveBytes()), "127.0.0.1:" + port, path, manner);
    }

    private RawScreen(RawConnection made, String host, String path, Manner manner)
            throws IOException {
        connection = made;
        connection.send(
                "GET "
                        + path
                        + " HTTP/1.1\r\nHost: "
                        + host
                        + "\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n"
                        + "Sec-WebSocket-Version: 13\r\n"
                        + "Sec-WebSocket-Key: c29wd2VsbC10ZXN0LWtleQ==\r\n"
                        + manner.more()
                        + "\r\n");
        answer = connection.head();
    }

    /**
     * A program at a board of a server that may be far or gone.
     *
     * @param patienceMillis how long it may take to get a socket
     */
    public static RawScreen at(InetSocketAddress server, String board, int patienceMillis)
            throws IOException {
        return at(server, board, patienceMillis, Manner.json());
    }

    /** The same in a manner of its own. */
    public static RawScreen at(
            InetSocketAddress server, String board, int patienceMillis, Manner manner)
            throws IOException {
        RawConnection made = new RawConnection(server, 0, patienceMillis);
        String host = server.getAddress().getHostAddress() + ":" + server.getPort();
        try {
            RawScreen screen = new RawScreen(made, host, "/ws/boards/" + board, manner);
            if (!screen.answer.startsWith("HTTP/1.1 101 ")) {
                throw new IOException("no socket: " + screen.answer);
            }
            return screen;
        } catch (IOException silent) {
            made.close();
            throw silent;
        }
    }

    /** A program at a board. */
    public static RawScreen at(int port, String board) throws IOException {
        RawScreen screen = new RawScreen(port, "/ws/boards/" + board, Manner.json());
        if (!screen.answer.startsWith("HTTP/1.1 101 ")) {
            throw new AssertionError("no socket: " + screen.answer);
        }
        return screen;
    }

    /** The head of the answer to the handshake. */
    public String answer() {
        return answer;
    }

    /** The code that the other side closed with; 0 while it has not. */
    public int closeCode() {
        return closeCode;
    }

    /** Sends a text in one frame. */
    public void say(String text) throws IOException {
        frame(0x80 | TEXT, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Sends a piece of a text; the first begins it, the last ends it. */
    public void sayPiece(boolean first, boolean last, byte[] piece) throws IOException {
        frame((last ? 0x80 : 0) | (first ? TEXT : 0), piece);
    }

    /**
     * The next text, with pings answered on the way.
     *
     * @return null when nothing came for so long, or the other side has closed
     */
    public String next(int millis) throws IOException {
        return next(millis, true);
    }

    /** The next text; pings are left unanswered. */
    public String nextSilently(int millis) throws IOException {
        return next(millis, false);
    }

    /**
     * The next frame of the board as JSON, signs of life passed over.
     *
     * @return null when none came for so long
     */
    public JsonNode nextFrame(int millis) throws IOException {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        String text = next(millis);
        while (text != null && text.startsWith("{\"beat\"")) {
            long left = TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime());
            text = left > 0 ? next((int) left) : null;
        }
        return text == null ? null : StandServer.tree(text);
    }

    @Override
    public void close() throws IOException {
        connection.close();
    }

    private String next(int millis, boolean pongs) throws IOException {
        DataInputStream in = new DataInputStream(connection.socket().getInputStream());
        while (closeCode == 0) {
            connection.socket().setSoTimeout(millis);
            int head;
            try {
                head = in.readUnsignedByte();
            } catch (SocketTimeoutException nothing) {
                return null;
            } catch (EOFException | java.net.SocketException gone) {
                closeCode = 1006;
                return null;
            }
            connection.socket().setSoTimeout(20_000);
            byte[] payload = new byte[length(in)];
            in.readFully(payload);
            switch (head & 0x0f) {
                case TEXT -> {
                    return new String(payload, StandardCharsets.UTF_8);
                }
                case CLOSE ->
                        closeCode = payload.length < 2 ? 1005 : ByteBuffer.wrap(payload).getShort();
                case PING -> {
                    if (pongs) {
                        frame(0x80 | PONG, payload);
                    }
                }
                default -> throw new AssertionError("a frame of kind " + (head & 0x0f));
            }
        }
        return null;
    }

    private static int length(DataInputStream in) throws IOException {
        int length = in.readUnsignedByte();
        return switch (length) {
            case 126 -> in.readUnsignedShort();
            case 127 -> (int) in.readLong();
            default -> length;
        };
    }

    private void frame(int head, byte[] payload) throws IOException {
        ByteBuffer frame = ByteBuffer.allocate(payload.length + 14);
        frame.put((byte) head);
        if (payload.length < 126) {
            frame.put((byte) (0x80 | payload.length));
        } else if (payload.length < 65_536) {
            frame.put((byte) (0x80 | 126)).putShort((short) payload.length);
        } else {
            frame.put((byte) (0x80 | 127)).putLong(payload.length);
        }
        frame.put(MASK);
        for (int i = 0; i < payload.length; i++) {
            frame.put((byte) (payload[i] ^ MASK[i % 4]));
        }
        OutputStream out = connection.socket().getOutputStream();
        out.write(frame.array(), 0, frame.position());
        out.flush();
    }
}
