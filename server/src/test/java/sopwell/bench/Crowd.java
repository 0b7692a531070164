package sopwell.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Thousands of screens on one thread, so that the client costs as little as it can. Opened by one
 * thread; closed by the same.
 */
final class Crowd implements AutoCloseable {
    /** The smallest window that the system gives: a screen that does not read is full soon. */
    private static final int SMALL_BYTES = 4_096;

    private final int port;
    private final Selector selector;
    private final Thread thread;
    private final List<Onlooker> all = new ArrayList<>();
    private volatile boolean closing;

    Crowd(int port) throws IOException {
        this.port = port;
        this.selector = Selector.open();
        this.thread = new Thread(this::read, "crowd");
        thread.setDaemon(true);
        thread.start();
    }

    /** A screen that reads. */
    Onlooker join(String path, boolean json) throws IOException {
        Onlooker onlooker = open(path, json, false);
        listen(onlooker);
        return onlooker;
    }

    /** A screen that reads nothing. */
    Onlooker joinDeaf(String path) throws IOException {
        return open(path, false, true);
    }

    /** A plain connection that says one word and then listens. */
    Onlooker joinRaw(byte word) throws IOException {
        SocketChannel channel = connect(false);
        channel.write(ByteBuffer.wrap(new byte[] {word}));
        Onlooker onlooker = new Onlooker(channel);
        all.add(onlooker);
        listen(onlooker);
        return onlooker;
    }

    private void listen(Onlooker onlooker) throws IOException {
        onlooker.channel().configureBlocking(false);
        onlooker.channel().register(selector, SelectionKey.OP_READ, onlooker);
        selector.wakeup();
    }

    private Onlooker open(String path, boolean json, boolean small) throws IOException {
        SocketChannel channel = connect(small);
        String handshake =
                "GET "
                        + path
                        + " HTTP/1.1\r\nHost: 127.0.0.1:"
                        + port
                        + "\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n"
                        + "Sec-WebSocket-Version: 13\r\n"
                        + "Sec-WebSocket-Key: dGhlIHNhbXBsZSBub25jZQ==\r\n"
                        + (json ? "Sec-WebSocket-Protocol: sopwell.json.v1\r\n" : "")
                        + "\r\n";
        channel.write(ByteBuffer.wrap(handshake.getBytes(StandardCharsets.US_ASCII)));
        Onlooker onlooker = new Onlooker(channel);
        ByteBuffer buffer = ByteBuffer.allocate(65_536);
        int end = -1;
        while (end < 0) {
            if (channel.read(buffer) < 0) {
                throw new IOException("no answer to the handshake");
            }
            end = endOfHead(buffer);
        }
        if (buffer.get(9) != '1' || buffer.get(10) != '0') {
            throw new IOException("no socket at " + path);
        }
        onlooker.take(buffer.flip().position(end));
        all.add(onlooker);
        return onlooker;
    }

    private SocketChannel connect(boolean small) throws IOException {
        SocketChannel channel = SocketChannel.open();
        channel.setOption(StandardSocketOptions.TCP_NODELAY, true);
        if (small) {
            channel.setOption(StandardSocketOptions.SO_RCVBUF, SMALL_BYTES);
        }
        channel.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
        return channel;
    }

    private static int endOfHead(ByteBuffer buffer) {
        for (int i = 3; i < buffer.position(); i++) {
            if (buffer.get(i) == '\n' && buffer.get(i - 1) == '\r' && buffer.get(i - 2) == '\n') {
                return i + 1;
            }
        }
        return -1;
    }

    private void read() {
        ByteBuffer buffer = ByteBuffer.allocateDirect(65_536);
        try {
            while (!closing) {
                selector.select(key -> read(key, buffer), 200);
            }
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static void read(SelectionKey key, ByteBuffer buffer) {
        Onlooker onlooker = (Onlooker) key.attachment();
        try {
            buffer.clear();
            int got = onlooker.channel().read(buffer);
            if (got >= 0 && onlooker.take(buffer.flip())) {
                return;
            }
        } catch (IOException cut) {
            onlooker.goodbye();
        }
        onlooker.goodbye();
        key.cancel();
    }

    /** Leaves; the others stay. */
    void leave(List<Onlooker> some) throws IOException {
        for (Onlooker one : some) {
            one.channel().close();
        }
        all.removeAll(some);
    }

    @Override
    public void close() throws IOException {
        closing = true;
        for (Onlooker one : all) {
            one.channel().close();
        }
        selector.close();
    }
}
