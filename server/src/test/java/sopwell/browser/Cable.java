package sopwell.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A network cable between a browser and a server, which can be pulled. Pulled, it is as silent as a
 * wireless network that is gone: nothing is refused and nothing answered. Thread-safe.
 */
final class Cable implements AutoCloseable {
    private final ServerSocket end = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    private final Set<Socket> sockets = ConcurrentHashMap.newKeySet();
    private volatile int server;
    private volatile State state = State.WHOLE;

    /** What the cable does. */
    enum State {
        /** Carries everything. */
        WHOLE,
        /** Carries requests, and swallows the answers. */
        ONE_WAY,
        /** Carries nothing. */
        PULLED
    }

    Cable(int server) throws IOException {
        this.server = server;
        start(this::accept);
    }

    /** Where the browser goes in, such as {@code http://127.0.0.1:40123}. */
    String address() {
        return "http://127.0.0.1:" + end.getLocalPort();
    }

    /** Another server at the far end, for connections from now on. */
    void lead(int to) {
        server = to;
    }

    void put(State now) {
        state = now;
    }

    /** Plugs it in again; what hung in it is lost, as it is when a network comes back. */
    void plugIn() {
        sockets.forEach(Cable::shut);
        state = State.WHOLE;
    }

    @Override
    public void close() throws IOException {
        end.close();
        sockets.forEach(Cable::shut);
    }

    private void accept() {
        try {
            while (true) {
                Socket browser = end.accept();
                sockets.add(browser);
                start(() -> lay(browser));
            }
        } catch (IOException closed) {
            return;
        }
    }

    private void lay(Socket browser) {
        try {
            Socket far = new Socket(InetAddress.getLoopbackAddress(), server);
            sockets.add(far);
            start(() -> carry(browser, far, true));
            carry(far, browser, false);
        } catch (IOException nobodyThere) {
            shut(browser);
        }
    }

    private void carry(Socket from, Socket to, boolean request) {
        byte[] buffer = new byte[16_384];
        try {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            int read = in.read(buffer);
            while (read >= 0) {
                if (state == State.WHOLE || (request && state == State.ONE_WAY)) {
                    out.write(buffer, 0, read);
                    out.flush();
                }
                read = in.read(buffer);
            }
        } catch (IOException cut) {
            shut(from);
        }
        if (state == State.WHOLE) {
            shut(from);
            shut(to);
        }
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "cable");
        thread.setDaemon(true);
        thread.start();
    }

    private static void shut(Socket socket) {
        try {
            socket.close();
        } catch (IOException alreadyShut) {
            return;
        }
    }
}
