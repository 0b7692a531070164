package sopwell.bench;

import io.undertow.server.HttpServerExchange;
import io.undertow.util.Headers;
import jakarta.servlet.ServletException;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sopwell.desk.Follower;
import sopwell.desk.Script;
import sopwell.menu.Lang;
import sopwell.storage.MemoryLog;
import sopwell.web.Server;
import sopwell.web.live.BoardHub;

/**
 * The stand's own HTTP server with one route that reads a body and answers it with as many bytes as
 * an order's answer has, and does nothing else: the most that an order could ever reach.
 */
public final class NoopServer {
    private static final String ANSWER = "x".repeat(480);

    private NoopServer() {}

    /** Runs until it is killed. */
    public static void main(String[] args) throws ServletException {
        Follower follower = new Follower(new MemoryLog("noop"), Script.SETTINGS);
        BoardHub hub = new BoardHub(follower, "noop", InstantSource.system(), System::nanoTime);
        Server server =
                new Server(
                        new Server.Place(
                                "127.0.0.1", 0, Set.of("127.0.0.1"), 1_000, Optional.empty()),
                        routes -> routes.post("/noop", NoopServer::answer),
                        hub,
                        frame -> "",
                        Map.of(Lang.EN, frame -> "", Lang.ES, frame -> ""));
        server.start();
        System.out.println("listening on http://127.0.0.1:" + server.port());
    }

    private static void answer(HttpServerExchange exchange) {
        exchange.getRequestReceiver()
                .receiveFullBytes(
                        (same, body) -> {
                            same.getResponseHeaders().put(Headers.CONTENT_TYPE, "text/plain");
                            same.getResponseSender().send(ANSWER);
                        });
    }
}
