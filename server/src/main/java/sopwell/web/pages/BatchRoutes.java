package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.StandCommand.ForLarder;
import sopwell.stock.larder.BatchEvent;
import sopwell.stock.larder.BatchRow;
import sopwell.stock.larder.LarderCommand;
import sopwell.web.Reply;

/** What is being made: started, measured, moved on, counted. Thread-safe. */
final class BatchRoutes {
    private static final String BATCHES = "/prep/batches";

    private final PageContext context;
    private final PageHandling handling;

    BatchRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get(BATCHES, handling.handler(ask -> all(ask, Said.NOTHING)));
        routes.post(BATCHES, handling.handler(this::start));
        routes.post("/prep/slicer/cleaned", handling.handler(this::cleanSlicer));
        routes.get(BATCHES + "/{batch}", handling.handler(ask -> one(ask, Said.NOTHING)));
        routes.post(BATCHES + "/{batch}", handling.handler(this::press));
    }

    private BatchesView view(Ask ask) throws PageHandling.Interrupted {
        return new BatchesView(
                ShelfRoutes.words(context, ask),
                ShelfRoutes.now(context),
                context.clock().millis());
    }

    private Reply start(Ask ask) throws PageHandling.Interrupted {
        String lots = ask.field("lots");
        int many = lots.matches("[0-9]{1,4}") ? Integer.parseInt(lots) : 0;
        LarderCommand command =
                new LarderCommand.StartBatch(ask.field("makes"), many, ask.field("note"));
        return handling.press(
                ask,
                new ForLarder(command),
                events -> {
                    BatchEvent event = (BatchEvent) events.get(events.size() - 1).event();
                    return PageHandling.redirect(BATCHES + "/" + event.batch());
                },
                (status, why) -> all(ask, new Said(status, why, new BatchTyped("", ask.shown()))));
    }

    private Reply cleanSlicer(Ask ask) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForLarder(new LarderCommand.CleanSlicer()),
                events -> ask.partial() ? all(ask, Said.NOTHING) : PageHandling.redirect(BATCHES),
                (status, why) -> all(ask, new Said(status, why, BatchTyped.NOTHING)));
    }

    private Reply press(Ask ask) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForLarder(command(ask)),
                events ->
                        ask.partial()
                                ? one(ask, Said.NOTHING)
                                : PageHandling.redirect(BATCHES + "/" + ask.in("batch")),
                (status, why) ->
                        one(
                                ask,
                                new Said(
                                        status,
                                        why,
                                        new BatchTyped(ask.in("batch"), ask.shown()))));
    }

    private LarderCommand command(Ask ask) {
        String batch = ask.in("batch");
        boolean celsius = context.settings().safety().food().celsius();
        return switch (ask.field("do")) {
            case "move" -> new LarderCommand.MoveBatch(batch, ask.field("step"));
            case "yield" ->
                    new LarderCommand.YieldBatch(batch, ask.field("amount"), ask.field("unit"));
            case "discard" ->
                    new LarderCommand.DiscardBatch(
                            batch, ask.field("amount"), ask.field("unit"), ask.reason());
            case "used-up" -> new LarderCommand.UseUpBatch(batch);
            default ->
                    new LarderCommand.TakeTemperature(
                            batch, ask.field("degrees"), celsius, ask.field("by"));
        };
    }

    /** Why a press was not done, and what was typed for it; nothing when it was. */
    private record Said(int status, String sentence, BatchTyped typed) {
        static final Said NOTHING = new Said(200, "", BatchTyped.NOTHING);
    }

    private Reply all(Ask ask, Said said) throws PageHandling.Interrupted {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("v", view(ask));
        if (!ask.partial()) {
            params.put("s", ask.screen());
            params.put("sentence", said.sentence());
            params.put("key", context.keys());
            params.put("typed", said.typed());
        }
        String template = ask.partial() ? "prep/batches/list" : "prep/batches/page";
        return PageHandling.html(said.status(), context.pages().render(template, params));
    }

    /** One batch; once it is made or gone, all of them. */
    private Reply one(Ask ask, Said said) throws PageHandling.Interrupted {
        BatchesView view = view(ask);
        Optional<BatchRow> row =
                view.now().batches().stream()
                        .filter(one -> one.batch().id().equals(ask.in("batch")))
                        .findFirst();
        if (row.isEmpty()) {
            return gone(ask, view, said);
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("v", view);
        params.put("row", row.get());
        params.put("sentence", said.sentence());
        params.put("key", context.keys().get());
        params.put("typed", said.typed());
        if (!ask.partial()) {
            params.put("s", ask.screen());
        }
        String part = ask.in("part").equals("clock") ? "prep/batches/clock" : "prep/batches/one";
        String template = ask.partial() ? part : "prep/batches/batch";
        return PageHandling.html(said.status(), context.pages().render(template, params));
    }

    /** The batch is not on any more: why nothing was done is said, if there is anything to say. */
    private Reply gone(Ask ask, BatchesView view, Said said) throws PageHandling.Interrupted {
        if (!ask.partial()) {
            return said.sentence().isEmpty() ? PageHandling.redirect(BATCHES) : all(ask, said);
        }
        if (said.sentence().isEmpty()) {
            return PageHandling.html(200, "").with("HX-Redirect", BATCHES);
        }
        Map<String, Object> params = Map.of("v", view, "sentence", said.sentence());
        return PageHandling.html(
                said.status(), context.pages().render("prep/batches/gone", params));
    }
}
