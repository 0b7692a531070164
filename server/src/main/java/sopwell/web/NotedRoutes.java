package sopwell.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import io.undertow.util.HttpString;
import io.undertow.util.PathTemplateMatcher;
import java.util.Set;
import java.util.TreeSet;

/**
 * Routes that can say which methods a path takes, as an answer to a wrong method must. Filled
 * before the server listens, only read afterwards.
 */
final class NotedRoutes extends RoutingHandler {
    private final PathTemplateMatcher<Set<String>> methods = new PathTemplateMatcher<>();

    @Override
    public synchronized RoutingHandler add(
            HttpString method, String template, HttpHandler handler) {
        Set<String> known = methods.get(template);
        if (known == null) {
            known = new TreeSet<>();
            methods.add(template, known);
        }
        known.add(method.toString());
        return super.add(method, template, handler);
    }

    /** The methods of the path that is asked for, in a row; empty when it has none. */
    String methods(HttpServerExchange exchange) {
        PathTemplateMatcher.PathMatchResult<Set<String>> match =
                methods.match(exchange.getRelativePath());
        return match == null ? "" : String.join(", ", match.getValue());
    }
}
