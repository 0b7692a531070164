package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.boards.CounterBoard;
import sopwell.boards.ReadyBoard;
import sopwell.boards.StationBoard;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForPass;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PassCommand;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;
import sopwell.web.T;
import sopwell.web.live.Frame;

/** The boards' pages, and what is pressed on them. Thread-safe. */
final class BoardRoutes {
    private final PageContext context;
    private final PageHandling handling;

    BoardRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/boards/{station}", handling.handler(ask -> page(ask, ask.in("station"))));
        routes.get("/pass", handling.handler(ask -> page(ask, "pass")));
        routes.get("/ready", handling.handler(ask -> page(ask, "ready")));
        part(routes, "started", KitchenCommand.Move.START);
        part(routes, "up", KitchenCommand.Move.UP);
        part(routes, "seen", KitchenCommand.Move.SEEN);
        part(routes, "have", KitchenCommand.Move.HAVE);
        routes.post(
                "/boards/{station}/parts/{part}/brought-back",
                handling.handler(ask -> pressPart(ask, p -> bringBack(p.get(0)))));
        routes.post(
                "/boards/{station}/brought-back-last",
                handling.handler(
                        ask ->
                                press(
                                        ask,
                                        new ForKitchen(
                                                new KitchenCommand.BringBackLast(
                                                        ask.in("station"))))));
        order(routes, "handed", OrderCommand.Hand::new);
        order(routes, "brought-back", OrderCommand.BringBack::new);
        routes.post("/pass/orders/{order}/called", handling.handler(this::call));
        routes.post("/pass/orders/{order}/bags", handling.handler(this::bags));
    }

    private void part(RoutingHandler routes, String what, KitchenCommand.Move move) {
        routes.post(
                "/boards/{station}/parts/{part}/" + what,
                handling.handler(
                        ask -> pressPart(ask, parts -> new KitchenCommand.Together(move, parts))));
    }

    private static KitchenCommand bringBack(PartId part) {
        return new KitchenCommand.BringBack(part);
    }

    private void order(RoutingHandler routes, String what, Function<String, OrderCommand> command) {
        routes.post(
                "/pass/orders/{order}/" + what,
                handling.handler(ask -> press(ask, new ForOrders(command.apply(ask.in("order"))))));
    }

    private Reply call(Ask ask) throws PageHandling.Interrupted {
        return press(ask, new ForPass(new PassCommand.CallNumber(ask.in("order"))));
    }

    private Reply bags(Ask ask) throws PageHandling.Interrupted {
        String bags = ask.field("bags");
        return bags.matches("[0-9]{1,4}")
                ? press(
                        ask,
                        new ForPass(
                                new PassCommand.CountBags(ask.in("order"), Integer.parseInt(bags))))
                : handling.refused(Refusal.of(Reason.BAGS_RANGE, bags, Limits.BAGS_MAX), ask);
    }

    private Reply page(Ask ask, String name) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        if (context.follower().menu() == null) {
            return handling.sentence(503, t.get("page.no-menu"), ask);
        }
        Optional<Frame> frame = PageHandling.await(context.boards().apply(name));
        if (frame.isEmpty() || frame.get().board() instanceof CounterBoard) {
            return handling.sentence(404, t.of("page.no-station", name), ask);
        }
        if (frame.get().board() instanceof ReadyBoard) {
            return PageHandling.html(
                    200, context.pages().ready(frame.get(), ask.screen(), context.texts()));
        }
        int target = context.settings().targetSeconds();
        Map<String, Object> more = Map.of();
        if (frame.get().board() instanceof StationBoard board) {
            more =
                    Map.of(
                            "cautions",
                            CautionView.of(
                                    t,
                                    context.settings().safety(),
                                    context.follower().menu(),
                                    board.station()));
        }
        return PageHandling.html(
                200, context.pages().board(frame.get(), ask.screen(), target, more));
    }

    private Reply pressPart(Ask ask, Function<List<PartId>, KitchenCommand> command)
            throws PageHandling.Interrupted {
        Optional<List<PartId>> parts = RowParts.of(ask);
        if (parts.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.in("part")), ask);
        }
        return press(ask, new ForKitchen(command.apply(parts.get())));
    }

    /** Done is said by the board itself: the row changes. Only what is refused needs words. */
    private Reply press(Ask ask, StandCommand command) throws PageHandling.Interrupted {
        return handling.press(ask, command, events -> PageHandling.html(200, ""));
    }
}
