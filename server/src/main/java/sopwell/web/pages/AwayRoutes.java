package sopwell.web.pages;

import io.undertow.server.HttpHandler;
import io.undertow.server.RoutingHandler;
import io.undertow.util.Headers;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import sopwell.counter.Kit;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.web.Reply;
import sopwell.web.T;

/**
 * What screens fetch while they can, for when they can't: the counter's kit, its page without what
 * only the server knows, and the service worker that keeps both. Thread-safe.
 */
final class AwayRoutes {
    private static final String SCRIPT = "text/javascript; charset=utf-8";
    private static final String PLAIN = "text/plain; charset=utf-8";

    private final PageContext context;
    private final PageHandling handling;

    AwayRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/sw.js", worker(context.assets()));
        routes.get("/counter/kits/{language}", handling.handler(this::kit));
        CounterReading readings = new CounterReading(context);
        CounterPages pages = new CounterPages(context, handling, readings);
        routes.get("/counter/away", handling.handler(pages::away));
        routes.get("/away", handling.handler(this::away));
    }

    /** Not by the parameter {@code lang}, which would change the screen's own language. */
    private Reply kit(Ask ask) {
        Menu menu = context.follower().menu();
        if (menu == null) {
            return handling.sentence(503, ask.screen().t().get("page.no-menu"), ask);
        }
        T t = context.texts().in(ask.in("language").equals("es") ? Lang.ES : Lang.EN);
        Kit kit = Kit.of(menu, context.settings().tax(), context.settings().cash(), t.phrases());
        byte[] written = kit.written().getBytes(StandardCharsets.UTF_8);
        return new Reply(200, PLAIN, ByteBuffer.wrap(written), Map.of());
    }

    /** What is shown in place of a board that can't be fetched. */
    private Reply away(Ask ask) {
        return PageHandling.html(200, context.pages().render("away", Map.of("s", ask.screen())));
    }

    /** Never kept by the browser, so that an upgrade reaches it at the next look. */
    private static HttpHandler worker(Assets assets) {
        ByteBuffer body = ByteBuffer.wrap(assets.worker().getBytes(StandardCharsets.UTF_8));
        return exchange -> {
            exchange.getResponseHeaders().put(Headers.CONTENT_TYPE, SCRIPT);
            exchange.getResponseHeaders().put(Headers.CACHE_CONTROL, "no-cache");
            exchange.getResponseSender().send(body.duplicate());
        };
    }
}
