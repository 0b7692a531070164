package sopwell.web;

import io.undertow.UndertowOptions;
import io.undertow.connector.ByteBufferPool;
import io.undertow.protocols.ssl.UndertowXnioSsl;
import io.undertow.server.DefaultByteBufferPool;
import io.undertow.server.HttpHandler;
import io.undertow.server.protocol.http.HttpOpenListener;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.TimeUnit;
import org.xnio.ChannelListeners;
import org.xnio.IoUtils;
import org.xnio.OptionMap;
import org.xnio.Options;
import org.xnio.Sequence;
import org.xnio.StreamConnection;
import org.xnio.Xnio;
import org.xnio.XnioWorker;
import org.xnio.channels.AcceptingChannel;
import sopwell.Limits;

/**
 * A port that is listened on, with the threads that read from it. Made here rather than by the
 * server's own builder, which has no place to look at a connection before it is read from.
 */
final class Listening implements AutoCloseable {
    private static final long STOP_SECONDS_MAX = 5;
    private static final int BUFFER_BYTES = 16_384;
    private static final int BUFFERS_KEPT_PER_THREAD = 4;

    private final XnioWorker worker;
    private final HttpOpenListener http;
    private final AcceptingChannel<? extends StreamConnection> port;

    /**
     * Listens from now on.
     *
     * @throws UncheckedIOException when the address can't be had
     */
    Listening(Server.Place place, HttpHandler root, Cuts cuts) {
        try {
            this.worker =
                    Xnio.getInstance(Listening.class.getClassLoader()).createWorker(threads());
            ByteBufferPool buffers =
                    new DefaultByteBufferPool(true, BUFFER_BYTES, -1, BUFFERS_KEPT_PER_THREAD);
            this.http = new HttpOpenListener(buffers, limits());
            http.setRootHandler(root);
            this.port = open(place, cuts);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Loads the library that talks to the system's sockets. */
    static void load() {
        Xnio.getInstance(Listening.class.getClassLoader());
    }

    int port() {
        return ((InetSocketAddress) port.getLocalAddress()).getPort();
    }

    /** Ends what is open; nobody is answered any more. */
    @Override
    public void close() {
        IoUtils.safeClose(port);
        http.closeConnections();
        worker.shutdown();
        try {
            if (!worker.awaitTermination(STOP_SECONDS_MAX, TimeUnit.SECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException interrupted) {
            worker.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }

    private AcceptingChannel<? extends StreamConnection> open(Server.Place place, Cuts cuts)
            throws IOException {
        InetAddress host = InetAddress.getByName(place.host());
        try {
            AcceptingChannel<? extends StreamConnection> opened =
                    open(new InetSocketAddress(host, place.port()), place, cuts);
            opened.resumeAccepts();
            return opened;
        } catch (IOException taken) {
            worker.shutdownNow();
            throw taken;
        }
    }

    private AcceptingChannel<? extends StreamConnection> open(
            InetSocketAddress address, Server.Place place, Cuts cuts) throws IOException {
        Arrivals arrivals = new Arrivals(place.connectionsPerAddressMax(), http, cuts);
        if (place.tls().isEmpty()) {
            return worker.createStreamConnectionServer(
                    address, ChannelListeners.openListenerAdapter(arrivals), sockets());
        }
        Server.Tls tls = place.tls().get();
        OptionMap secured =
                OptionMap.builder()
                        .addAll(sockets())
                        .set(
                                Options.SSL_ENABLED_PROTOCOLS,
                                Sequence.of(tls.protocols().toArray(String[]::new)))
                        .set(
                                Options.SSL_ENABLED_CIPHER_SUITES,
                                Sequence.of(tls.suites().toArray(String[]::new)))
                        .set(UndertowOptions.SSL_USER_CIPHER_SUITES_ORDER, true)
                        .getMap();
        OptionMap direct = OptionMap.create(Options.USE_DIRECT_BUFFERS, true);
        return new UndertowXnioSsl(worker.getXnio(), direct, tls.context())
                .createSslConnectionServer(
                        worker, address, ChannelListeners.openListenerAdapter(arrivals), secured);
    }

    private static OptionMap threads() {
        int cores = Math.max(2, Runtime.getRuntime().availableProcessors());
        return OptionMap.builder()
                .set(Options.WORKER_IO_THREADS, cores)
                .set(Options.CONNECTION_HIGH_WATER, Limits.CONNECTIONS_MAX)
                .set(Options.CONNECTION_LOW_WATER, Limits.CONNECTIONS_MAX)
                .set(Options.WORKER_TASK_CORE_THREADS, cores * Limits.WORKERS_PER_CORE)
                .set(Options.WORKER_TASK_MAX_THREADS, cores * Limits.WORKERS_PER_CORE)
                .set(Options.TCP_NODELAY, true)
                .set(Options.CORK, true)
                .getMap();
    }

    private static OptionMap sockets() {
        return OptionMap.builder()
                .set(Options.TCP_NODELAY, true)
                .set(Options.REUSE_ADDRESSES, true)
                .set(Options.BALANCING_TOKENS, 1)
                .set(Options.BALANCING_CONNECTIONS, 2)
                .set(Options.BACKLOG, Limits.BACKLOG_CONNECTIONS)
                .set(Options.SEND_BUFFER, Limits.SEND_BUFFER_BYTES)
                .getMap();
    }

    private static OptionMap limits() {
        return OptionMap.builder()
                .set(UndertowOptions.BUFFER_PIPELINED_DATA, true)
                .set(UndertowOptions.MAX_ENTITY_SIZE, Limits.BODY_DRAINED_BYTES_MAX)
                .set(UndertowOptions.MAX_HEADER_SIZE, Limits.HEADER_BYTES_MAX)
                .set(UndertowOptions.MAX_HEADERS, Limits.HEADERS_MAX)
                .set(UndertowOptions.MAX_PARAMETERS, Limits.PARAMETERS_MAX)
                .set(UndertowOptions.MAX_COOKIES, Limits.COOKIES_MAX)
                .set(UndertowOptions.REQUEST_PARSE_TIMEOUT, Limits.HEAD_MILLIS_MAX)
                .set(UndertowOptions.NO_REQUEST_TIMEOUT, Limits.NO_REQUEST_MILLIS_MAX)
                .set(UndertowOptions.ENABLE_HTTP2, false)
                .set(UndertowOptions.ALWAYS_SET_KEEP_ALIVE, false)
                .getMap();
    }
}
