package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForPans;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.stock.PanCommand;
import sopwell.web.Reply;

/** What is pressed on a station's loads and pans. Thread-safe. */
final class LoadRoutes {
    private final PageHandling handling;

    LoadRoutes(PageHandling handling) {
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        load(routes, "started", KitchenCommand.Move.START);
        load(routes, "up", KitchenCommand.Move.UP);
        routes.post("/boards/{station}/pans/{pan}/refilled", handling.handler(this::refill));
    }

    private void load(RoutingHandler routes, String what, KitchenCommand.Move move) {
        routes.post("/boards/{station}/loads/" + what, handling.handler(ask -> pressed(ask, move)));
    }

    private Reply pressed(Ask ask, KitchenCommand.Move move) throws PageHandling.Interrupted {
        Optional<List<PartId>> parts = parts(ask);
        if (parts.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.field("part")), ask);
        }
        return handling.press(
                ask,
                new ForKitchen(new KitchenCommand.Together(move, parts.get())),
                events -> PageHandling.html(200, ""));
    }

    /** What the load showed when it was pressed; empty when one is no part of the station. */
    private static Optional<List<PartId>> parts(Ask ask) {
        List<String> written = List.of(ask.field("part").split(" ", -1));
        return written.size() > Limits.STATION_LOAD_PIECES_MAX
                ? Optional.empty()
                : RowParts.read(written, ask.in("station"));
    }

    private Reply refill(Ask ask) throws PageHandling.Interrupted {
        String percent = ask.field("percent");
        if (!percent.matches("[0-9]{1,4}")) {
            return handling.refused(Refusal.of(Reason.LEVEL_RANGE, percent), ask);
        }
        return handling.press(
                ask,
                new ForPans(new PanCommand.Refill(ask.in("pan"), Integer.parseInt(percent))),
                events -> PageHandling.html(200, ""));
    }
}
