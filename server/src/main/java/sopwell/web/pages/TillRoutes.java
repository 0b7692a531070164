package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import sopwell.desk.StandCommand.ForTill;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.till.DayReport;
import sopwell.till.TillCommand;
import sopwell.web.Reply;
import sopwell.web.T;

/** The tills: open, pay in and out, count, close; and the day's report. Thread-safe. */
final class TillRoutes {
    /** A screen remembers its cashier for a day: 24 hours, in seconds. */
    private static final int KEPT_SECONDS = 24 * 60 * 60;

    private final PageContext context;
    private final PageHandling handling;

    TillRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/till", handling.handler(ask -> page(200, ask, "")));
        routes.post("/till/opened", handling.mindful(minding(this::open)));
        routes.post("/till/chosen", handling.mindful(minding(this::choose)));
        routes.post("/till/paid-in", handling.mindful(minding(this::payIn)));
        routes.post("/till/paid-out", handling.mindful(minding(this::payOut)));
        routes.post("/till/closed", handling.mindful(minding(this::close)));
        routes.get("/till/{date}", handling.handler(this::report));
    }

    /** A text with a card's number in it is refused here, and the other texts stay typed. */
    private PageHandling.Page minding(PageHandling.Page page) {
        return ask ->
                ask.holdsCard()
                        ? page(422, ask, PageHandling.cardSentence(ask.screen().t()))
                        : page.answer(ask);
    }

    private Reply open(Ask ask) throws PageHandling.Interrupted {
        OptionalLong cents = amount(ask.field("float"));
        if (cents.isEmpty()) {
            return noAmount(ask, ask.field("float"));
        }
        String cashier = ask.field("cashier");
        Reply reply = send(ask, new TillCommand.OpenTill(cashier, cents.getAsLong()));
        return reply.status() == 303 ? remembering(reply, cashier) : reply;
    }

    private Reply choose(Ask ask) {
        return remembering(PageHandling.redirect("/till"), ask.field("cashier"));
    }

    private Reply payIn(Ask ask) throws PageHandling.Interrupted {
        OptionalLong cents = amount(ask.field("cents"));
        return cents.isEmpty()
                ? noAmount(ask, ask.field("cents"))
                : send(
                        ask,
                        new TillCommand.PayIn(
                                ask.field("cashier"), cents.getAsLong(), ask.field("reason")));
    }

    private Reply payOut(Ask ask) throws PageHandling.Interrupted {
        OptionalLong cents = amount(ask.field("cents"));
        return cents.isEmpty()
                ? noAmount(ask, ask.field("cents"))
                : send(
                        ask,
                        new TillCommand.PayOut(
                                ask.field("cashier"), cents.getAsLong(), ask.field("reason")));
    }

    private Reply close(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        CashUnits units = context.settings().cash().units();
        List<TillCommand.Pieces> counts = new ArrayList<>();
        for (CashUnit unit : units.units()) {
            String typed = ask.field("n" + unit.cents());
            if (!typed.matches("[0-9]{0,9}")) {
                return page(422, ask, t.of("till.no-count", typed));
            }
            long pieces = typed.isEmpty() ? 0 : Long.parseLong(typed);
            counts.add(new TillCommand.Pieces(unit.cents(), pieces));
        }
        return send(ask, new TillCommand.CloseTill(ask.field("cashier"), counts));
    }

    private Reply send(Ask ask, TillCommand command) throws PageHandling.Interrupted {
        return handling.press(
                ask,
                new ForTill(command),
                events -> PageHandling.redirect("/till"),
                (status, why) -> page(status, ask, why));
    }

    private Reply noAmount(Ask ask, String typed) throws PageHandling.Interrupted {
        return page(422, ask, ask.screen().t().of("pay.no-amount", typed));
    }

    private Reply page(int status, Ask ask, String sentence) throws PageHandling.Interrupted {
        TillView.State state =
                PageHandling.await(
                        context.follower().ask(stand -> TillView.State.of(stand, ask.cashier())));
        Map<String, String> typed = status == 200 ? Map.of() : ask.shown();
        TillView view = new TillView(ask.screen().t(), state, context.keys(), sentence, typed);
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", view);
        return PageHandling.html(status, context.pages().render("till/page", params));
    }

    private Reply report(Ask ask) throws PageHandling.Interrupted {
        AskedDay<DayReport> day =
                AskedDay.of(
                        ask,
                        context,
                        stand -> DayReport.of(stand.orders(), stand.till()),
                        context.reports());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("date", day.date());
        params.put(
                "v",
                day.found()
                        .map(
                                r ->
                                        new ReportView(
                                                ask.screen().t(),
                                                r,
                                                context.settings().zone(),
                                                new WhoWords(context.access()::state)))
                        .orElse(null));
        params.put("sentence", day.sentence());
        params.put("live", AskedDay.isToday(ask));
        return PageHandling.html(day.status(), context.pages().render("till/report", params));
    }

    private static OptionalLong amount(String typed) {
        return typed.isEmpty() ? OptionalLong.of(0) : Amounts.cents(typed);
    }

    /** The screen takes money for this cashier from now on. */
    private static Reply remembering(Reply reply, String cashier) {
        String value = URLEncoder.encode(cashier, StandardCharsets.UTF_8);
        return reply.with(
                "Set-Cookie",
                Ask.CASHIER
                        + "="
                        + value
                        + "; Path=/; Max-Age="
                        + KEPT_SECONDS
                        + "; HttpOnly; SameSite=Lax");
    }
}
