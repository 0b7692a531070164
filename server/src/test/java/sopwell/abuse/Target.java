package sopwell.abuse;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;

/** The stand that is attacked, and bare connections to it. Immutable. */
record Target(InetAddress host, int port) {
    private static final int PATIENCE_MILLIS = 15_000;
    private static final int LOOPBACK = 127;

    /** The name that the stand goes by. */
    String name() {
        return host.getHostAddress() + ":" + port;
    }

    /**
     * A connection that comes from another address each, where this machine has many: all of
     * 127.0.0.0/8 is its own.
     *
     * @param from 0 for the usual address
     */
    Socket connect(int from) throws IOException {
        Socket socket = new Socket();
        if (from > 0 && host.getAddress()[0] == LOOPBACK) {
            byte[] own = {LOOPBACK, 0, (byte) (1 + from / 250), (byte) (1 + from % 250)};
            socket.bind(new InetSocketAddress(InetAddress.getByAddress(own), 0));
        }
        socket.connect(new InetSocketAddress(host, port), PATIENCE_MILLIS);
        socket.setSoTimeout(PATIENCE_MILLIS);
        socket.setTcpNoDelay(true);
        return socket;
    }

    /** Sends this and returns everything that comes until the other side closes. */
    String exchange(String request) throws IOException {
        try (Socket socket = connect(0)) {
            try {
                send(socket, request);
            } catch (IOException closedMeanwhile) {
                // The refusal may have been sent before the request was through.
                return rest(socket);
            }
            return rest(socket);
        }
    }

    static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
        socket.getOutputStream().flush();
    }

    static String rest(Socket socket) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] part = new byte[8_192];
        InputStream in = socket.getInputStream();
        try {
            for (int n = in.read(part); n >= 0; n = in.read(part)) {
                all.write(part, 0, n);
            }
        } catch (SocketTimeoutException late) {
            return all.toString(StandardCharsets.ISO_8859_1) + "[still open]";
        } catch (IOException reset) {
            return all.toString(StandardCharsets.ISO_8859_1);
        }
        return all.toString(StandardCharsets.ISO_8859_1);
    }

    /** A whole order as it goes over the wire. */
    String order(String key, boolean keepAlive) {
        return post(
                "/api/orders",
                "Idempotency-Key: " + key + "\r\n" + (keepAlive ? "" : "Connection: close\r\n"),
                "{\"call\":\"beef dipped\"}");
    }

    /** A POST of JSON with more header lines, each ended. */
    String post(String path, String headers, String body) {
        return "POST "
                + path
                + " HTTP/1.1\r\nHost: "
                + name()
                + "\r\nContent-Type: application/json\r\n"
                + headers
                + "Content-Length: "
                + body.getBytes(StandardCharsets.ISO_8859_1).length
                + "\r\n\r\n"
                + body;
    }

    /** The status that an answer begins with; 0 when it begins with none. */
    static int status(String answer) {
        return answer.matches("(?s)HTTP/1\\.1 \\d{3} .*")
                ? Integer.parseInt(answer.substring(9, 12))
                : 0;
    }
}
