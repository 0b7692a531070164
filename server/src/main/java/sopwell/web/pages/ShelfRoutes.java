package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.stock.larder.LarderCommand;
import sopwell.stock.larder.LarderLeft;
import sopwell.stock.larder.StockNow;
import sopwell.stock.larder.TypedAmount;
import sopwell.web.Reply;

/** What is kept: walked past and counted, brought in, thrown away. Thread-safe. */
final class ShelfRoutes {
    private static final String COUNTS = "/prep/counts";

    private final PageContext context;
    private final PageHandling handling;

    ShelfRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/prep/stock", handling.handler(this::stock));
        routes.get(COUNTS, handling.handler(ask -> counts(200, ask, ask.in("at"), "")));
        routes.post(COUNTS, handling.handler(this::press));
    }

    /** What is kept and made now. */
    static StockNow now(PageContext context) throws PageHandling.Interrupted {
        long nowMs = context.clock().millis();
        return PageHandling.await(
                context.follower()
                        .ask(
                                stand ->
                                        StockNow.of(
                                                stand.recipes(),
                                                stand.larder(),
                                                context.settings().safety(),
                                                nowMs)));
    }

    /** Amounts and times in the language of a screen. */
    static StockWords words(PageContext context, Ask ask) {
        return new StockWords(
                ask.screen().t(), context.settings().zone(), context.settings().safety());
    }

    private ShelvesView view(Ask ask) throws PageHandling.Interrupted {
        return new ShelvesView(words(context, ask), now(context), context.clock().millis());
    }

    private Reply stock(Ask ask) throws PageHandling.Interrupted {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("v", view(ask));
        if (!ask.partial()) {
            params.put("s", ask.screen());
        }
        String template = ask.partial() ? "prep/stock/list" : "prep/stock/page";
        return PageHandling.html(200, context.pages().render(template, params));
    }

    private Reply press(Ask ask) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForLarder(command(ask)),
                events -> done(ask),
                (status, why) -> counts(status, ask, ask.field("ingredient"), why));
    }

    private static LarderCommand command(Ask ask) {
        TypedAmount asked =
                new TypedAmount(ask.field("ingredient"), ask.field("amount"), ask.field("unit"));
        return switch (ask.field("do")) {
            case "deliver" -> new LarderCommand.Deliver(asked, ask.field("note"));
            case "waste" -> new LarderCommand.Waste(asked, ask.reason());
            default -> new LarderCommand.Count(asked);
        };
    }

    /** A count goes on to the next ingredient; anything else stays, to be counted. */
    private Reply done(Ask ask) throws PageHandling.Interrupted {
        ShelvesView view = view(ask);
        Optional<LarderLeft> at = view.at(ask.field("ingredient"));
        if (at.isEmpty()) {
            return counts(200, ask, "", "");
        }
        boolean count = ask.field("do").equals("count") || ask.field("do").isEmpty();
        String next = count ? view.after(at.get()) : at.get().ingredient().id();
        if (!ask.partial()) {
            return PageHandling.redirect(next.isEmpty() ? "/prep/stock" : COUNTS + "?at=" + next);
        }
        return next.isEmpty()
                ? counts(200, ask, "-", said(view, at.get(), ask))
                : counts(200, ask, next, said(view, at.get(), ask));
    }

    /** What was done, in words. */
    private static String said(ShelvesView view, LarderLeft left, Ask ask) {
        String name = view.name(left.ingredient());
        String amount =
                ask.field("amount") + " " + view.words().unit(left.ingredient(), ask.field("unit"));
        return switch (ask.field("do")) {
            case "deliver" -> view.t().of("counts.said.deliver", name, amount);
            case "waste" -> view.t().of("counts.said.waste", name, amount);
            default -> {
                String difference = view.compared(left);
                yield difference.isEmpty()
                        ? view.t().of("counts.said", name, amount)
                        : view.t().of("counts.said.against", name, amount, difference);
            }
        };
    }

    /**
     * One ingredient to be counted.
     *
     * @param at its id; empty for the first; one that is none for the end of the walk
     */
    private Reply counts(int status, Ask ask, String at, String sentence)
            throws PageHandling.Interrupted {
        ShelvesView view = view(ask);
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("v", view);
        params.put("at", view.at(at));
        params.put("sentence", sentence);
        params.put("key", context.keys().get());
        if (!ask.partial()) {
            params.put("s", ask.screen());
        }
        String template = ask.partial() ? "prep/counts/one" : "prep/counts/page";
        return PageHandling.html(status, context.pages().render(template, params));
    }
}
