package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.call.Again;
import sopwell.call.CallParser;
import sopwell.call.Counted;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.menu.Wishes;
import sopwell.orders.Order;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;
import sopwell.web.T;

/** Looks an order of the day up, and has it again. Thread-safe. */
final class DayOrderRoutes {
    private final PageContext context;
    private final PageHandling handling;

    DayOrderRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/orders", handling.handler(this::list));
        routes.post("/counter/again", handling.handler(this::again));
    }

    private Reply list(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String find = ask.in("find");
        DayOrders orders =
                PageHandling.await(context.follower().ask(stand -> DayOrders.of(stand, find, t)));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("orders", orders);
        if (ask.partial()) {
            params.put("t", t);
            return PageHandling.html(200, context.pages().render("orders/list", params));
        }
        params.put("s", ask.screen());
        params.put("find", find);
        return PageHandling.html(200, context.pages().render("orders/page", params));
    }

    /** The call that says an earlier order again; nothing is placed. */
    private Reply again(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        CallParser parser = context.parser().get();
        Optional<Again.Wanted> wanted = Again.read(ask.field("call"));
        if (parser == null || wanted.isEmpty()) {
            return PageHandling.html(204, "");
        }
        int number = wanted.get().number();
        Optional<Order> order =
                PageHandling.await(context.follower().ask(stand -> find(stand, number)));
        if (order.isEmpty()) {
            String which = number == 0 ? t.get("again.none") : t.of("again.unknown", number);
            return PageHandling.html(404, context.pages().render("message", Map.of("text", which)));
        }
        Menu menu = parser.menu();
        List<Counted> lines =
                order.get().lines().stream()
                        .map(line -> new Counted(line.quantity(), line.selection()))
                        .toList();
        Optional<Counted> gone = lines.stream().filter(line -> !isOn(menu, line)).findFirst();
        if (gone.isPresent()) {
            return sentence(
                    Refusal.of(Reason.MENU_CHANGED, gone.get().selection().item()), menu, t);
        }
        Again.Outcome outcome = Again.with(parser, lines, wanted.get().but());
        if (outcome.refusal().isPresent()) {
            String text = t.sentence(outcome.refusal().get(), menu);
            return PageHandling.html(422, context.pages().render("message", Map.of("text", text)));
        }
        return PageHandling.html(
                200, context.pages().render("counter/again", Map.of("call", outcome.call())));
    }

    private Reply sentence(Refusal refusal, Menu menu, T t) {
        return PageHandling.html(
                PageRoutes.status(refusal.reason()),
                context.pages().render("message", Map.of("text", t.sentence(refusal, menu))));
    }

    private static boolean isOn(Menu menu, Counted line) {
        return Wishes.fault(menu, Wishes.asked(menu, line.selection())).isEmpty();
    }

    /** The newest order of the day with a number; the newest of all for 0. */
    private static Optional<Order> find(Stand stand, int number) {
        return stand.orders().all().stream()
                .filter(order -> number == 0 || order.number() == number)
                .reduce((first, second) -> second);
    }
}
