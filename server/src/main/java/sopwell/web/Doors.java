package sopwell.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.util.HeaderMap;
import io.undertow.util.Headers;
import io.undertow.util.HttpString;
import java.util.Locale;
import java.util.Set;
import sopwell.Limits;

/**
 * Lets in what is meant for this stand: requests to its own names, and changes only from its own
 * pages or from programs. Adds the headers that every answer carries. Thread-safe.
 *
 * <p>A name that is not ours means that somebody else's page was made to point here; a page of
 * another origin that sends a change, or opens a socket, is acting behind the user's back. A body
 * that announces more than any request needs is refused here, before anyone makes room for it.
 */
final class Doors implements HttpHandler {
    private static final HttpString SEC_FETCH_SITE = new HttpString("Sec-Fetch-Site");
    private static final String POLICY =
            "default-src 'self'; object-src 'none'; base-uri 'none'; frame-ancestors 'none';"
                    + " form-action 'self'";

    private final HttpHandler next;
    private final Set<String> hosts;
    private final boolean strict;
    private final Texts texts;

    /**
     * Doors before a handler.
     *
     * @param hosts the names and addresses by which the stand is called, lower case, without port
     * @param strict whether browsers are told never to come by http again
     */
    Doors(HttpHandler next, Set<String> hosts, boolean strict, Texts texts) {
        this.next = next;
        this.strict = strict;
        this.texts = texts;
        this.hosts = Set.copyOf(hosts);
    }

    @Override
    public void handleRequest(HttpServerExchange exchange) throws Exception {
        HeaderMap answer = exchange.getResponseHeaders();
        answer.put(new HttpString("Content-Security-Policy"), POLICY);
        answer.put(new HttpString("X-Content-Type-Options"), "nosniff");
        answer.put(new HttpString("Referrer-Policy"), "same-origin");
        if (strict) {
            String life = "max-age=" + Limits.STRICT_TRANSPORT_SECONDS;
            answer.put(new HttpString("Strict-Transport-Security"), life);
        }
        String host = exchange.getRequestHeaders().getFirst(Headers.HOST);
        if (host == null || !hosts.contains(bare(host))) {
            refuse(exchange, ProblemKind.WRONG_HOST);
            return;
        }
        if (isRisky(exchange) && isForeign(exchange, host)) {
            refuse(exchange, ProblemKind.FOREIGN_ORIGIN);
            return;
        }
        if (exchange.getRequestContentLength() > Limits.BODY_BYTES_MAX) {
            refuse(exchange, ProblemKind.TOO_LARGE, Limits.BODY_BYTES_MAX);
            return;
        }
        next.handleRequest(exchange);
    }

    /** Changes, and sockets, which browsers open across sites without asking. */
    private static boolean isRisky(HttpServerExchange exchange) {
        boolean looks =
                exchange.getRequestMethod().equals(io.undertow.util.Methods.GET)
                        || exchange.getRequestMethod().equals(io.undertow.util.Methods.HEAD);
        return !looks || exchange.getRequestHeaders().contains(Headers.UPGRADE);
    }

    private static boolean isForeign(HttpServerExchange exchange, String host) {
        String site = exchange.getRequestHeaders().getFirst(SEC_FETCH_SITE);
        if (site != null && (site.equals("cross-site") || site.equals("same-site"))) {
            return true;
        }
        String origin = exchange.getRequestHeaders().getFirst(Headers.ORIGIN);
        boolean isHttps = exchange.getRequestScheme().equals("https");
        // Something in front of a plain stand may speak https for it; nothing takes https away.
        return origin != null
                && !origin.equalsIgnoreCase("https://" + host)
                && (isHttps || !origin.equalsIgnoreCase("http://" + host));
    }

    private static String bare(String host) {
        String lower = host.toLowerCase(Locale.ROOT);
        int colon = lower.lastIndexOf(':');
        return colon > lower.lastIndexOf(']') ? lower.substring(0, colon) : lower;
    }

    private void refuse(HttpServerExchange exchange, ProblemKind kind, Object... args) {
        Reply.problem(Problem.of(kind, texts.in(Languages.of(exchange)), args)).send(exchange);
    }
}
