package sopwell.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;

/**
 * The thinnest HTTP/1.1 client that keeps its connection, so that as little as possible of what is
 * measured is the client. One thread at a time.
 */
final class RawClient implements AutoCloseable {
    private static final byte[] LENGTH = "content-length: ".getBytes(StandardCharsets.US_ASCII);
    private static final int NEWLINE = '\n';

    private final Socket socket;
    private final InputStream in;
    private final OutputStream out;
    private final String head;
    private final byte[] buffer = new byte[65_536];
    private int filled;
    private int read;
    private int bodyFrom;
    private int bodyLength;

    RawClient(int port) throws IOException {
        socket = new Socket(InetAddress.getLoopbackAddress(), port);
        socket.setTcpNoDelay(true);
        in = socket.getInputStream();
        out = socket.getOutputStream();
        head =
                " HTTP/1.1\r\nHost: 127.0.0.1:"
                        + port
                        + "\r\nContent-Type: application/json\r\nIdempotency-Key: ";
    }

    /** Posts and reads the whole answer; returns its status. */
    int post(String path, String key, String body) throws IOException {
        String request =
                "POST "
                        + path
                        + head
                        + key
                        + "\r\nContent-Length: "
                        + body.length()
                        + "\r\n\r\n"
                        + body;
        out.write(request.getBytes(StandardCharsets.ISO_8859_1));
        return answer();
    }

    /** The body of the last answer. */
    String body() {
        return new String(buffer, bodyFrom, bodyLength, StandardCharsets.UTF_8);
    }

    private int answer() throws IOException {
        int status = 0;
        int length = 0;
        while (true) {
            int from = read;
            int end = lineEnd();
            if (end - from <= 1) {
                break;
            }
            if (status == 0) {
                status = digits(from + 9);
            } else if (isLength(from)) {
                length = digits(from + LENGTH.length);
            }
        }
        while (filled - read < length) {
            fill();
        }
        bodyFrom = read;
        bodyLength = length;
        read += length;
        if (read == filled) {
            read = 0;
            filled = 0;
        }
        return status;
    }

    private int lineEnd() throws IOException {
        while (true) {
            while (read < filled) {
                if (buffer[read++] == NEWLINE) {
                    return read - 1;
                }
            }
            fill();
        }
    }

    private void fill() throws IOException {
        int got = in.read(buffer, filled, buffer.length - filled);
        if (got < 0) {
            throw new IOException("the server closed the connection");
        }
        filled += got;
    }

    private boolean isLength(int from) {
        for (int i = 0; i < LENGTH.length; i++) {
            if ((buffer[from + i] | 0x20) != (LENGTH[i] | 0x20)) {
                return false;
            }
        }
        return true;
    }

    private int digits(int from) {
        int number = 0;
        for (int i = from; buffer[i] >= '0' && buffer[i] <= '9'; i++) {
            number = number * 10 + buffer[i] - '0';
        }
        return number;
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
