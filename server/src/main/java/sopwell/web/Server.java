package sopwell.web;

import io.undertow.Undertow;
import io.undertow.UndertowOptions;
import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import io.undertow.server.handlers.GracefulShutdownHandler;
import io.undertow.server.handlers.PathHandler;
import jakarta.servlet.ServletException;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.xnio.Options;
import sopwell.Limits;
import sopwell.menu.Lang;
import sopwell.web.live.BoardHub;
import sopwell.web.live.FrameWriter;
import sopwell.web.live.LiveEndpoint;

/** The HTTP server: routes, sockets, limits. Thread-safe. */
public final class Server implements AutoCloseable {
    private static final long DRAIN_MILLIS_MAX = 5_000;

    private final Undertow undertow;
    private final GracefulShutdownHandler shutdown;
    private final BoardHub hub;

    /**
     * Where to listen.
     *
     * @param host an address or name of this machine
     * @param port 0 for any free one
     * @param names the names and addresses by which the stand is called, lower case
     */
    public record Place(String host, int port, Set<String> names) {
        public Place {
            names = Set.copyOf(names);
        }
    }

    /**
     * A server that does not listen yet.
     *
     * @param routes adds the routes
     * @param json writes frames for programs
     * @param html writes frames for screens, by language
     */
    public Server(
            Place place,
            Consumer<RoutingHandler> routes,
            BoardHub hub,
            FrameWriter json,
            Map<Lang, FrameWriter> html)
            throws ServletException {
        this.hub = hub;
        Texts texts = Texts.load();
        NotedRoutes routing = new NotedRoutes();
        routes.accept(routing);
        HttpHandler absent =
                e -> refuse(e, Problem.of(ProblemKind.NOT_FOUND, texts.in(Languages.of(e))));
        routing.setFallbackHandler(absent);
        routing.setInvalidMethodHandler(e -> refuseMethod(e, routing.methods(e), texts));
        HttpHandler live = LiveEndpoint.handler(hub, json, html);
        HttpHandler paths =
                new PathHandler(routing)
                        .addPrefixPath(
                                LiveEndpoint.PATH,
                                e ->
                                        (LiveEndpoint.isHandshake(e) ? live : absent)
                                                .handleRequest(e));
        this.shutdown = new GracefulShutdownHandler(new Doors(paths, place.names(), texts));
        this.undertow = build(place, shutdown);
    }

    /** Listens from now on. */
    public void start() {
        undertow.start();
    }

    /** The port that it listens on. */
    public int port() {
        return ((InetSocketAddress) undertow.getListenerInfo().get(0).getAddress()).getPort();
    }

    /** Takes no new requests, answers those under way, and tells the screens to come back. */
    @Override
    public void close() {
        shutdown.shutdown();
        try {
            shutdown.awaitShutdown(DRAIN_MILLIS_MAX);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        hub.close();
        undertow.stop();
    }

    private static void refuse(HttpServerExchange exchange, Problem problem) {
        Reply.problem(problem).send(exchange);
    }

    private static void refuseMethod(HttpServerExchange exchange, String allowed, Texts texts) {
        T text = texts.in(Languages.of(exchange));
        Reply.problem(Problem.of(ProblemKind.METHOD_WRONG, text, allowed))
                .with("Allow", allowed)
                .send(exchange);
    }

    private static Undertow build(Place place, HttpHandler root) {
        return Undertow.builder()
                .addHttpListener(place.port(), place.host(), root)
                .setSocketOption(Options.SEND_BUFFER, Limits.SEND_BUFFER_BYTES)
                .setServerOption(UndertowOptions.MAX_ENTITY_SIZE, Limits.BODY_DRAINED_BYTES_MAX)
                .setServerOption(UndertowOptions.MAX_HEADER_SIZE, Limits.HEADER_BYTES_MAX)
                .setServerOption(UndertowOptions.MAX_HEADERS, Limits.HEADERS_MAX)
                .setServerOption(UndertowOptions.MAX_PARAMETERS, Limits.PARAMETERS_MAX)
                .setServerOption(UndertowOptions.MAX_COOKIES, Limits.COOKIES_MAX)
                .setServerOption(UndertowOptions.REQUEST_PARSE_TIMEOUT, Limits.HEAD_MILLIS_MAX)
                .setServerOption(UndertowOptions.NO_REQUEST_TIMEOUT, Limits.NO_REQUEST_MILLIS_MAX)
                .setServerOption(UndertowOptions.ENABLE_HTTP2, false)
                .setServerOption(UndertowOptions.ALWAYS_SET_KEEP_ALIVE, false)
                .build();
    }
}
