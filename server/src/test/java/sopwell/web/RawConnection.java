package sopwell.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;

/** A bare connection, for requests that no proper client would send. */
public final class RawConnection implements AutoCloseable {
    private static final int PATIENCE_MILLIS = 20_000;

    private final Socket socket = new Socket();

    /** Connects to a port of this machine. */
    public RawConnection(int port) throws IOException {
        this(port, 0);
    }

    /**
     * Connects with a small receive buffer.
     *
     * @param receiveBytes how much the system may take in unread; 0 for its own choice
     */
    public RawConnection(int port, int receiveBytes) throws IOException {
        this(
                new InetSocketAddress(InetAddress.getLoopbackAddress(), port),
                receiveBytes,
                PATIENCE_MILLIS);
    }

    /**
     * Connects to a server.
     *
     * @param patienceMillis how long it may take to connect, and to say anything
     */
    public RawConnection(InetSocketAddress server, int receiveBytes, int patienceMillis)
            throws IOException {
        if (receiveBytes > 0) {
            socket.setReceiveBufferSize(receiveBytes);
        }
        try {
            socket.connect(server, patienceMillis);
        } catch (IOException unreachable) {
            socket.close();
            throw unreachable;
        }
        socket.setSoTimeout(patienceMillis);
        socket.setTcpNoDelay(true);
    }

    /** The connection itself. */
    public Socket socket() {
        return socket;
    }

    /** Sends text as it stands, one byte a character. */
    public void send(String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
        socket.getOutputStream().flush();
    }

    /** Everything that comes until the other side closes. */
    public String rest() throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        InputStream in = socket.getInputStream();
        byte[] part = new byte[4_096];
        try {
            for (int n = in.read(part); n >= 0; n = in.read(part)) {
                all.write(part, 0, n);
            }
        } catch (SocketTimeoutException late) {
            throw new AssertionError("still open after: " + text(all), late);
        } catch (IOException reset) {
            return text(all);
        }
        return text(all);
    }

    /** What comes up to the empty line after a response's headers. */
    public String head() throws IOException {
        StringBuilder head = new StringBuilder();
        InputStream in = socket.getInputStream();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = in.read();
            if (next < 0) {
                return head.toString();
            }
            head.append((char) next);
        }
        return head.toString();
    }

    /** Sends a request and reads all that comes of it, to the end of the connection. */
    public static String exchange(int port, String request) throws IOException {
        try (RawConnection connection = new RawConnection(port)) {
            connection.send(request);
            return connection.rest();
        }
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }

    private static String text(ByteArrayOutputStream all) {
        return all.toString(StandardCharsets.UTF_8);
    }
}
