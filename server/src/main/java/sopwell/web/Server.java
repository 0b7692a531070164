package sopwell.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import io.undertow.server.handlers.GracefulShutdownHandler;
import io.undertow.server.handlers.PathHandler;
import jakarta.servlet.ServletException;
import jakarta.websocket.server.HandshakeRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.net.ssl.SSLContext;
import sopwell.menu.Lang;
import sopwell.web.live.BoardHub;
import sopwell.web.live.FrameWriter;
import sopwell.web.live.LiveEndpoint;

/** The HTTP server: routes, sockets, limits. Thread-safe. */
public final class Server implements AutoCloseable {
    private static final long DRAIN_MILLIS_MAX = 5_000;

    private final Place place;
    private final GracefulShutdownHandler shutdown;
    private final BoardHub hub;
    private final Set<String> routes;
    private final Cuts cuts = new Cuts();
    private volatile Listening listening;

    /**
     * Where to listen.
     *
     * @param host an address or name of this machine
     * @param port 0 for any free one
     * @param names the names and addresses by which the stand is called, lower case
     * @param connectionsPerAddressMax connections that one address has at once
     * @param tls how to speak https; empty for http
     * @param gate asks everybody who they are
     * @param watch is told of each request
     */
    public record Place(
            String host,
            int port,
            Set<String> names,
            int connectionsPerAddressMax,
            Optional<Tls> tls,
            Optional<Gate> gate,
            RequestWatch watch) {
        public Place {
            names = Set.copyOf(names);
        }

        /** A place where nobody is asked who they are. */
        public Place(String host, int port, Set<String> names, int connectionsPerAddressMax) {
            this(
                    host,
                    port,
                    names,
                    connectionsPerAddressMax,
                    Optional.empty(),
                    Optional.empty(),
                    RequestWatch.NONE);
        }

        /** The same behind a gate, and with somebody who is told of each request. */
        public Place behind(Gate gate, RequestWatch watch) {
            return new Place(
                    host, port, names, connectionsPerAddressMax, tls, Optional.of(gate), watch);
        }
    }

    /**
     * How https is spoken.
     *
     * @param protocols by Java's names, the best first
     * @param suites by Java's names, the best first
     * @param strict whether browsers are told never to come by http again
     */
    public record Tls(
            SSLContext context, List<String> protocols, List<String> suites, boolean strict) {
        public Tls {
            protocols = List.copyOf(protocols);
            suites = List.copyOf(suites);
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
        this.place = place;
        this.hub = hub;
        Texts texts = Texts.load();
        NotedRoutes routing = new NotedRoutes(place.gate(), place.watch());
        routes.accept(routing);
        this.routes = routing.all();
        HttpHandler absent =
                e -> refuse(e, Problem.of(ProblemKind.NOT_FOUND, texts.in(Languages.of(e))));
        routing.setFallbackHandler(routing.watched(NotedRoutes.NONE, absent));
        routing.setInvalidMethodHandler(
                routing.watched(NotedRoutes.NONE, e -> refuseMethod(e, routing.methods(e), texts)));
        HttpHandler live = LiveEndpoint.handler(hub, json, html, request -> stays(place, request));
        HttpHandler paths =
                new PathHandler(routing)
                        .addPrefixPath(
                                LiveEndpoint.PATH,
                                e -> {
                                    if (!LiveEndpoint.isHandshake(e)) {
                                        absent.handleRequest(e);
                                    } else if (place.gate().isPresent()) {
                                        place.gate().get().socket(e, e.getRelativePath(), live);
                                    } else {
                                        live.handleRequest(e);
                                    }
                                });
        HttpHandler inside =
                e -> {
                    if (place.gate().isPresent()) {
                        Actors.expectGate(e);
                    }
                    paths.handleRequest(e);
                };
        HttpHandler doors = new Doors(inside, place.names(), isStrict(place), texts);
        this.shutdown = new GracefulShutdownHandler(new SlowPeers(doors, cuts));
    }

    /** Loads what a server is made of, which takes a while. */
    public static void loadLibrary() {
        Listening.load();
        Texts.load();
    }

    /** Every route but the sockets', as {@code METHOD template}. */
    public Set<String> routes() {
        return routes;
    }

    /** Whom it closed the connection to. */
    public Cuts cuts() {
        return cuts;
    }

    /**
     * Listens from now on.
     *
     * @throws java.io.UncheckedIOException when the address can't be had
     */
    public void start() {
        listening = new Listening(place, shutdown, cuts);
    }

    /** The port that it listens on. */
    public int port() {
        return listening.port();
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
        listening.close();
    }

    private static boolean isStrict(Place place) {
        return place.tls().map(Tls::strict).orElse(false);
    }

    private static void refuse(HttpServerExchange exchange, Problem problem) {
        Reply.problem(problem).send(exchange);
    }

    private static Optional<BooleanSupplier> stays(Place place, HandshakeRequest request) {
        return place.gate().map(gate -> gate.stays(request));
    }

    private static void refuseMethod(HttpServerExchange exchange, String allowed, Texts texts) {
        T text = texts.in(Languages.of(exchange));
        Reply.problem(Problem.of(ProblemKind.METHOD_WRONG, text, allowed))
                .with("Allow", allowed)
                .send(exchange);
    }
}
