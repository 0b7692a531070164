package sopwell.web.pages;

import io.undertow.server.HttpHandler;
import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import io.undertow.util.ETag;
import io.undertow.util.ETagUtils;
import io.undertow.util.Headers;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.orders.Reason;
import sopwell.web.Reply;
import sopwell.web.api.RefusalProblems;

/** The routes of the stand's screens. Stateless. */
public final class PageRoutes {
    private static final String STATIC = "/static/";

    private PageRoutes() {}

    /** Adds the screens and their static files. */
    public static void add(RoutingHandler routes, PageContext context) {
        PageHandling handling = new PageHandling(context);
        routes.get("/", handling.handler(ask -> home(context, ask)));
        routes.get("/static/*", files(context.assets()));
        new BoardRoutes(context, handling).add(routes);
        new LoadRoutes(handling).add(routes);
        new CounterRoutes(context, handling).add(routes);
        new QueryRoutes(context, handling).add(routes);
        new ScreenRoutes(context, handling).add(routes);
        new RemakeRoutes(context, handling).add(routes);
        new PayRoutes(context, handling).add(routes);
        new TillRoutes(context, handling).add(routes);
        new CloseRoutes(context, handling).add(routes);
        new OutRoutes(context, handling).add(routes);
        new ShelfRoutes(context, handling).add(routes);
        new CalendarRoutes(context, handling).add(routes);
        new TermsRoutes(context, handling).add(routes);
        new PrepRoutes(context, handling).add(routes);
        new PastPrepRoutes(context, handling).add(routes);
        new ClockRoutes(context, handling).add(routes);
        new BatchRoutes(context, handling).add(routes);
        new DayOrderRoutes(context, handling).add(routes);
        new PaperRoutes(context, handling).add(routes);
        new AwayRoutes(context, handling).add(routes);
        new MixRoutes(context, handling).add(routes);
        new RecipeRoutes(context, handling).add(routes);
        new EntryRoutes(context, handling).add(routes);
        new PlaybackRoutes(context, handling).add(routes);
        new WhatIfRoutes(context, handling).add(routes);
        new AuditRoutes(context, handling).add(routes);
        new WaitRoutes(context, handling).add(routes);
        PairedBy pairedBy = new PairedBy();
        new SignInRoutes(context, handling).add(routes);
        new PairRoutes(context, handling, pairedBy).add(routes);
        new AccessRoutes(context, handling, pairedBy).add(routes);
        new StaffRoutes(context, handling).add(routes);
        new BackupRoutes(context, handling).add(routes);
        new NamesRoutes(context, handling).add(routes);
        new TrustRoutes(context, handling).add(routes);
    }

    static int status(Reason reason) {
        return RefusalProblems.status(reason);
    }

    /** A screen that was set up goes to its board, unless somebody asks for all screens. */
    private static Reply home(PageContext context, Ask ask) {
        Setup setup = ask.screen().setup();
        if (setup.isSet() && !ask.named().containsKey("all")) {
            return PageHandling.redirect(setup.board());
        }
        List<Station> stations =
                Optional.ofNullable(context.follower().menu())
                        .map(Menu::stations)
                        .orElse(List.of());
        return PageHandling.html(
                200,
                context.pages()
                        .render(
                                "home",
                                Map.of(
                                        "s",
                                        ask.screen(),
                                        "stations",
                                        stations,
                                        "notes",
                                        BackupView.of(context, ask.screen().t()).urgent(),
                                        "trust",
                                        context.trust().get().isPresent())));
    }

    /** Files are in memory, so they are sent from the thread that asks. */
    private static HttpHandler files(Assets assets) {
        return exchange -> {
            String path = exchange.getRelativePath().substring(STATIC.length());
            int slash = path.indexOf('/');
            String version = slash < 0 ? "" : path.substring(0, slash);
            Optional<Assets.Asset> found = assets.find(path.substring(slash + 1));
            if (found.isEmpty()) {
                exchange.setStatusCode(404).endExchange();
                return;
            }
            send(exchange, found.get(), version.equals(assets.version()), assets.version());
        };
    }

    private static void send(
            HttpServerExchange exchange, Assets.Asset asset, boolean current, String version) {
        exchange.getResponseHeaders().put(Headers.CONTENT_TYPE, asset.type());
        exchange.getResponseHeaders()
                .put(
                        Headers.CACHE_CONTROL,
                        current ? "public, max-age=31536000, immutable" : "no-cache");
        ETag tag = new ETag(false, version);
        exchange.getResponseHeaders().put(Headers.ETAG, tag.toString());
        if (!ETagUtils.handleIfNoneMatch(exchange, tag, false)) {
            exchange.setStatusCode(304).endExchange();
            return;
        }
        exchange.getResponseSender().send(asset.body().duplicate());
    }
}
