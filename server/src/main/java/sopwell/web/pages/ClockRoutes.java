package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.stock.larder.LarderCommand;
import sopwell.web.Reply;

/** Every clock that runs, and the clocks of food that is held by time alone. Thread-safe. */
final class ClockRoutes {
    private static final String CLOCKS = "/prep/clocks";

    private final PageContext context;
    private final PageHandling handling;

    ClockRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(CLOCKS, handling.handler(ask -> page(200, ask, "")));
        routes.post(CLOCKS, handling.handler(this::start));
        routes.post(CLOCKS + "/{clock}", handling.handler(this::press));
    }

    private Reply start(Ask ask) throws PageHandling.Interrupted {
        return send(
                ask,
                new LarderCommand.StartClock(
                        ask.field("what"),
                        ask.field("long").equals("1"),
                        ask.field("degrees"),
                        context.settings().safety().food().celsius()));
    }

    /** A temperature goes to the clock that was chosen, a stop to the one it stands beside. */
    private Reply press(Ask ask) throws PageHandling.Interrupted {
        String clock = ask.in("clock").equals("chosen") ? ask.field("clock") : ask.in("clock");
        LarderCommand command =
                switch (ask.field("do")) {
                    case "used" -> new LarderCommand.StopClock(clock, false);
                    case "discarded" -> new LarderCommand.StopClock(clock, true);
                    default ->
                            new LarderCommand.MeasureClock(
                                    clock,
                                    ask.field("degrees"),
                                    context.settings().safety().food().celsius());
                };
        return send(ask, command);
    }

    private Reply send(Ask ask, LarderCommand command) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForLarder(command),
                events -> PageHandling.redirect(CLOCKS),
                (status, why) -> page(status, ask, why));
    }

    private Reply page(int status, Ask ask, String sentence) throws PageHandling.Interrupted {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put(
                "v",
                new ClocksView(
                        new BatchesView(
                                ShelfRoutes.words(context, ask),
                                ShelfRoutes.now(context),
                                context.clock().millis()),
                        context.follower().menu()));
        params.put("keys", context.keys());
        if (!ask.partial()) {
            params.put("s", ask.screen());
            params.put("sentence", sentence);
            params.put("typed", sentence.isEmpty() ? Map.of() : ask.shown());
        }
        String template = ask.partial() ? "prep/clocks/list" : "prep/clocks/page";
        return PageHandling.html(status, context.pages().render(template, params));
    }
}
