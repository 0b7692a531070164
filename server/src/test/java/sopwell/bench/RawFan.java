package sopwell.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.util.ArrayList;
import java.util.List;

/**
 * The least that a push can be: what one connection sends is written to fifty others as it is,
 * while thousands more are open. No protocol, no log, no rules.
 */
public final class RawFan {
    /** Says that a connection wants what is sent. */
    static final byte LISTENER = 'L';

    /** Says that a connection sends. */
    static final byte SENDER = 'S';

    /** Says that a connection is only there. */
    static final byte IDLE = 'I';

    private RawFan() {}

    /** Listens on a free port and prints it. */
    public static void main(String[] args) throws IOException {
        ServerSocketChannel server = ServerSocketChannel.open();
        server.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 4_096);
        server.configureBlocking(false);
        Selector selector = Selector.open();
        server.register(selector, SelectionKey.OP_ACCEPT);
        List<SocketChannel> listeners = new ArrayList<>();
        ByteBuffer buffer = ByteBuffer.allocateDirect(65_536);
        System.out.println(server.socket().getLocalPort());
        while (true) {
            selector.select(key -> serve(selector, key, listeners, buffer));
        }
    }

    private static void serve(
            Selector selector, SelectionKey key, List<SocketChannel> listeners, ByteBuffer buffer) {
        try {
            if (key.isAcceptable()) {
                SocketChannel accepted = ((ServerSocketChannel) key.channel()).accept();
                accepted.configureBlocking(false);
                accepted.setOption(StandardSocketOptions.TCP_NODELAY, true);
                accepted.register(selector, SelectionKey.OP_READ);
                return;
            }
            SocketChannel from = (SocketChannel) key.channel();
            buffer.clear();
            if (from.read(buffer) < 0) {
                key.cancel();
                from.close();
                return;
            }
            buffer.flip();
            if (key.attachment() == null) {
                byte word = buffer.get();
                key.attach(word);
                if (word == LISTENER) {
                    listeners.add(from);
                }
            }
            if (buffer.hasRemaining()) {
                for (SocketChannel listener : listeners) {
                    listener.write(buffer.duplicate());
                }
            }
        } catch (IOException gone) {
            key.cancel();
        }
    }
}
