package sopwell.web;

import io.undertow.server.HttpServerExchange;
import sopwell.access.Paired;
import sopwell.access.SignedIn;

/**
 * The cookies that people and devices are known by: for no script and no other site to read, and
 * over TLS under a name that browsers give to this host alone. Stateless.
 */
public final class AccessCookies {
    private static final String SESSION = "sopwell";
    private static final String DEVICE = "sopwell-device";
    private static final String HOST = "__Host-";
    private static final String KEPT = "; Max-Age=" + 400 * 24 * 60 * 60;

    private AccessCookies() {}

    /** Has the browser keep who signed in, and the device that was paired by that. */
    public static Reply signedIn(HttpServerExchange exchange, Reply reply, SignedIn in) {
        exchange.getResponseHeaders()
                .add(
                        io.undertow.util.Headers.SET_COOKIE,
                        written(exchange, session(exchange), in.sessionToken(), ""));
        return in.deviceToken().isEmpty() ? reply : device(exchange, reply, in.deviceToken());
    }

    /** Has the browser keep that it was paired. */
    public static Reply paired(HttpServerExchange exchange, Reply reply, Paired paired) {
        return device(exchange, reply, paired.token());
    }

    /** Has the browser forget who signed in. */
    public static Reply signedOut(HttpServerExchange exchange, Reply reply) {
        exchange.getResponseHeaders()
                .add(
                        io.undertow.util.Headers.SET_COOKIE,
                        written(exchange, session(exchange), "", "; Max-Age=0"));
        return reply;
    }

    static String session(HttpServerExchange exchange) {
        return isSecure(exchange) ? HOST + SESSION : SESSION;
    }

    static String device(HttpServerExchange exchange) {
        return isSecure(exchange) ? HOST + DEVICE : DEVICE;
    }

    private static Reply device(HttpServerExchange exchange, Reply reply, String token) {
        exchange.getResponseHeaders()
                .add(
                        io.undertow.util.Headers.SET_COOKIE,
                        written(exchange, device(exchange), token, KEPT));
        return reply;
    }

    private static String written(
            HttpServerExchange exchange, String name, String value, String kept) {
        return name
                + "="
                + value
                + "; Path=/"
                + kept
                + "; HttpOnly; SameSite=Strict"
                + (isSecure(exchange) ? "; Secure" : "");
    }

    private static boolean isSecure(HttpServerExchange exchange) {
        return exchange.getRequestScheme().equals("https");
    }
}
