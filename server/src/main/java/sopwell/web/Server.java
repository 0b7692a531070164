package sopwell.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import io.undertow.server.handlers.GracefulShutdownHandler;
import io.undertow.server.handlers.PathHandler;
import jakarta.servlet.ServletException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private volatile Listening listening;

    /**
     * Where to listen.
     *
     * @param host an address or name of this machine
     * @param port 0 for any free one
     * @param names the names and addresses by which the stand is called, lower case
     * @param connectionsPerAddressMax connections that one address has at once
     * @param tls how to speak https; empty for http
     */
    public record Place(
            String host,
            int port,
            Set<String> names,
            int connectionsPerAddressMax,
            Optional<Tls> tls) {
        public Place {
            names = Set.copyOf(names);
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
        HttpHandler doors = new Doors(paths, place.names(), isStrict(place), texts);
        this.shutdown = new GracefulShutdownHandler(new SlowPeers(doors));
    }

    /**
     * Listens from now on.
     *
     * @throws java.io.UncheckedIOException when the address can't be had
     */
    public void start() {
        listening = new Listening(place, shutdown);
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

    private static void refuseMethod(HttpServerExchange exchange, String allowed, Texts texts) {
        T text = texts.in(Languages.of(exchange));
        Reply.problem(Problem.of(ProblemKind.METHOD_WRONG, text, allowed))
                .with("Allow", allowed)
                .send(exchange);
    }
}
