package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.mix.Against;
import sopwell.mix.DayTally;
import sopwell.mix.Names;
import sopwell.orders.OrderCommand;
import sopwell.web.DayFigures;
import sopwell.web.Reply;
import sopwell.web.T;

/** The close of day: one page to walk down, then the day's summary. Thread-safe. */
final class CloseRoutes {
    private final PageContext context;
    private final PageHandling handling;

    CloseRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/close", handling.handler(ask -> page(200, ask, "")));
        routes.post("/close/closed", handling.handler(this::close));
        routes.post("/close/reopened", handling.mindful(this::reopen));
    }

    private Reply close(Ask ask) throws PageHandling.Interrupted {
        return send(ask, new OrderCommand.CloseDay());
    }

    private Reply reopen(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        if (ask.holdsCard()) {
            return page(422, ask, PageHandling.cardSentence(t));
        }
        String written = ask.field("date");
        LocalDate date;
        try {
            date = LocalDate.parse(written);
        } catch (DateTimeParseException wrong) {
            LocalDate now =
                    context.clock().instant().atZone(context.settings().zone()).toLocalDate();
            return page(422, ask, t.of("mix.not-date", written, now));
        }
        return send(
                ask, new OrderCommand.ReopenDay(Optional.of(date), ask.field("reason").strip()));
    }

    private Reply send(Ask ask, OrderCommand command) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForOrders(command),
                events -> PageHandling.redirect("/close"),
                (status, why) -> page(status, ask, why));
    }

    private Reply page(int status, Ask ask, String sentence) throws PageHandling.Interrupted {
        long nowMs = context.clock().instant().toEpochMilli();
        CloseView.State state =
                PageHandling.await(
                        context.follower().ask(stand -> CloseView.State.of(stand, nowMs)));
        List<String> moved =
                state.open() || state.figures().isEmpty()
                        ? List.of()
                        : moved(ask.screen().t(), state.figures().get());
        String reason = status == 200 ? "" : ask.shown().getOrDefault("reason", "");
        CloseStockView stock =
                new CloseStockView(ShelfRoutes.words(context, ask), state.stock(), nowMs);
        CloseView view =
                new CloseView(
                        ask.screen().t(),
                        state,
                        context.keys(),
                        sentence,
                        reason,
                        stock,
                        moved,
                        new WhoWords(context.access()::state));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", view);
        return PageHandling.html(status, context.pages().render("close/page", params));
    }

    /** What the closed day's mix says against the same weekdays before it. */
    private List<String> moved(T t, DayFigures day) throws PageHandling.Interrupted {
        Names names = context.tallies().names().get();
        LocalDate date = day.tally().date();
        List<DayTally> before =
                PageHandling.await(context.tallies().of(Against.weekdaysBefore(date)));
        MixView mix =
                new MixView(
                        t,
                        day.mix(),
                        Against.of(day.mix(), before, names),
                        List.of(),
                        0,
                        List.of());
        return mix.moved();
    }
}
