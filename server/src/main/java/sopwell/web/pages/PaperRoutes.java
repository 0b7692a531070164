package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForPaper;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.PaperCommand;
import sopwell.orders.PaperEvent.PaperPrinted;
import sopwell.orders.Papers;
import sopwell.web.Reply;
import sopwell.web.T;

/** Slips and station tickets for rolls of paper, printed by the browser. Thread-safe. */
final class PaperRoutes {
    private final PageContext context;
    private final PageHandling handling;

    PaperRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.post("/orders/{order}/papers", handling.handler(this::print));
    }

    /** Every printing is kept, so that the next one says that it is a copy. */
    private Reply print(Ask ask) throws PageHandling.Interrupted {
        PaperCommand command = new PaperCommand(ask.in("order"), ask.field("paper"));
        return handling.press(
                ask,
                new ForPaper(command),
                events -> paper((PaperPrinted) events.get(0).event(), ask));
    }

    private Reply paper(PaperPrinted printed, Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        Optional<PaperView> view =
                PageHandling.await(context.follower().ask(stand -> view(stand, printed, t)));
        if (view.isEmpty()) {
            return handling.sentence(404, t.get("paper.gone"), ask);
        }
        Map<String, Object> params = new HashMap<>();
        params.put("s", ask.screen());
        params.put("v", view.get());
        String template = "paper/slip";
        if (!printed.paper().equals(Papers.SLIP)) {
            Menu menu = context.follower().menu();
            params.put("station", t.local(menu.station(printed.paper()).name()));
            template = "paper/ticket";
        }
        return PageHandling.html(200, context.pages().render(template, params));
    }

    /** Empty when the order's day is over by now. */
    private static Optional<PaperView> view(Stand stand, PaperPrinted printed, T t) {
        Optional<Order> order = stand.orders().find(printed.order());
        return order.map(found -> new PaperView.Writer(stand, found, printed.copy(), t))
                .map(
                        writer ->
                                printed.paper().equals(Papers.SLIP)
                                        ? writer.slip()
                                        : writer.ticket(printed.paper()));
    }
}
