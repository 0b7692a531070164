package sopwell.web;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import io.undertow.util.HttpString;
import io.undertow.util.PathTemplateMatcher;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;

/**
 * Routes that can say which methods a path takes, as an answer to a wrong method must. Filled
 * before the server listens, only read afterwards.
 */
final class NotedRoutes extends RoutingHandler {
    /** What a request is called that fits no route. */
    static final String NONE = "ANY none";

    private final Optional<Gate> gate;
    private final RequestWatch watch;
    private final Set<String> all = new TreeSet<>();
    private final PathTemplateMatcher<Set<String>> methods = new PathTemplateMatcher<>();

    /** Routes behind a gate, or without one for a stand that has no network. */
    NotedRoutes(Optional<Gate> gate, RequestWatch watch) {
        this.watch = watch;
        this.gate = gate;
    }

    @Override
    public synchronized RoutingHandler add(
            HttpString method, String template, HttpHandler handler) {
        Set<String> known = methods.get(template);
        if (known == null) {
            known = new TreeSet<>();
            methods.add(template, known);
        }
        known.add(method.toString());
        all.add(method + " " + template);
        HttpHandler behind =
                gate.map(found -> found.guard(method, template, handler)).orElse(handler);
        return super.add(method, template, watched(method + " " + template, behind));
    }

    /** A handler whose requests are told of. */
    HttpHandler watched(String route, HttpHandler handler) {
        return exchange -> {
            IntConsumer over = watch.begins(route);
            exchange.addExchangeCompleteListener(
                    (done, others) -> {
                        over.accept(done.getStatusCode());
                        others.proceed();
                    });
            handler.handleRequest(exchange);
        };
    }

    /** Every route, as {@code METHOD template}. */
    Set<String> all() {
        return Set.copyOf(all);
    }

    /** The methods of the path that is asked for, in a row; empty when it has none. */
    String methods(HttpServerExchange exchange) {
        PathTemplateMatcher.PathMatchResult<Set<String>> match =
                methods.match(exchange.getRelativePath());
        return match == null ? "" : String.join(", ", match.getValue());
    }
}
