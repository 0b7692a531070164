package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import sopwell.desk.Answer;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.desk.StandCommand.ForTill;
import sopwell.log.Event;
import sopwell.money.Discount;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.till.Means;
import sopwell.till.TillCommand;
import sopwell.till.TillEvent.OrderPaid;
import sopwell.till.TillEvent.OrderRefunded;
import sopwell.web.Reply;
import sopwell.web.T;

/** The counter's money: pay, give back, take off. Thread-safe. */
final class PayRoutes {
    private static final String CARD = "card";

    private final PageContext context;
    private final PageHandling handling;

    PayRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/counter/orders/{order}/pay", handling.handler(this::look));
        routes.get("/counter/orders/{order}/money", handling.handler(this::look));
        routes.post("/counter/orders/{order}/payments", handling.mindful(minding(this::pay)));
        routes.post("/counter/orders/{order}/refunds", handling.mindful(minding(this::refund)));
        routes.post("/counter/orders/{order}/discounts", handling.mindful(minding(this::discount)));
    }

    /** A text with a card's number in it is refused here, and the other texts stay typed. */
    private PageHandling.Page minding(PageHandling.Page page) {
        return ask ->
                ask.holdsCard()
                        ? show(
                                422,
                                ask,
                                PayView.Said.no(PageHandling.cardSentence(ask.screen().t())))
                        : page.answer(ask);
    }

    /** A panel over the counter for a press, a page of its own for somebody who went there. */
    private Reply look(Ask ask) throws PageHandling.Interrupted {
        return show(200, ask, PayView.Said.NOTHING);
    }

    private Reply pay(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        Optional<PayView.State> found = state(ask);
        if (found.isEmpty()) {
            return gone(ask);
        }
        OptionalLong tip = amountOr(ask.field("tip"), 0);
        String note = ask.field("note");
        OptionalLong given =
                note.isEmpty()
                        ? amountOr(ask.field("tendered"), 0)
                        : OptionalLong.of(note.matches("[0-9]{1,9}") ? Long.parseLong(note) : -1);
        if (tip.isEmpty() || given.isEmpty()) {
            String wrong = tip.isEmpty() ? ask.field("tip") : ask.field("tendered");
            return show(422, ask, PayView.Said.no(t.of("pay.no-amount", wrong)));
        }
        boolean card = ask.field("way").equals(CARD);
        PayView.State state = found.get();
        TillCommand.Pay command =
                card
                        ? new TillCommand.Pay(
                                ask.in("order"),
                                state.cashier(),
                                Means.CARD,
                                given.getAsLong(),
                                0,
                                tip.getAsLong())
                        : cash(ask, state, given.getAsLong(), tip.getAsLong());
        return send(ask, new ForTill(command), OrderPaid.class);
    }

    /** What is handed over may be less than what is due: then it pays a part. */
    private static TillCommand.Pay cash(
            Ask ask, PayView.State state, long givenCents, long tipCents) {
        long dueCents = Math.max(0, state.dueCents());
        boolean part =
                givenCents > tipCents
                        && givenCents - tipCents < state.cash().rounding().roundCents(dueCents);
        return new TillCommand.Pay(
                ask.in("order"),
                state.cashier(),
                Means.CASH,
                part ? Math.min(givenCents - tipCents, dueCents) : 0,
                givenCents,
                tipCents);
    }

    private Reply refund(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        Optional<PayView.State> found = state(ask);
        if (found.isEmpty()) {
            return gone(ask);
        }
        OptionalLong cents = amountOr(ask.field("back"), 0);
        if (cents.isEmpty()) {
            return show(422, ask, PayView.Said.no(t.of("pay.no-amount", ask.field("back"))));
        }
        TillCommand.Refund command =
                new TillCommand.Refund(
                        ask.in("order"),
                        found.get().cashier(),
                        ask.field("means").equals(CARD) ? Means.CARD : Means.CASH,
                        cents.getAsLong(),
                        ask.field("due-again").equals("yes"),
                        ask.reason());
        return send(ask, new ForTill(command), OrderRefunded.class);
    }

    private Reply discount(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String typed = ask.field("off");
        OptionalInt share = Amounts.milliPercent(typed);
        OptionalLong cents = share.isPresent() ? OptionalLong.of(0) : amountOr(typed, 0);
        if (cents.isEmpty()) {
            return show(422, ask, PayView.Said.no(t.of("pay.no-discount", typed)));
        }
        Discount.Kind kind =
                ask.field("for").equals("staff") ? Discount.Kind.STAFF_MEAL : Discount.Kind.GUEST;
        Discount discount = new Discount(kind, cents.getAsLong(), share.orElse(0), ask.reason());
        OrderCommand command = new OrderCommand.SetDiscount(ask.in("order"), 0, discount);
        return send(ask, new ForOrders(command), Event.class);
    }

    private Reply send(Ask ask, StandCommand command, Class<? extends Event> type)
            throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String key = ask.field("key");
        if (key.isEmpty()) {
            return show(400, ask, PayView.Said.no(t.get("api.key-missing")));
        }
        Answer answer =
                PageHandling.await(context.desk().submit(key, ask.fingerprint(), ask.by(command)));
        return switch (answer.outcome()) {
            case DONE, REPEATED ->
                    show(200, ask, said(answer, type, t))
                            .with(CounterResult.ORDER, ask.in("order"));
            case REFUSED -> {
                Refusal refusal = answer.refusal().orElseThrow();
                String sentence = t.sentence(refusal, context.follower().menu());
                yield show(PageRoutes.status(refusal.reason()), ask, PayView.Said.no(sentence));
            }
            case KEY_REUSED -> show(422, ask, PayView.Said.no(t.get("pay.key")));
        };
    }

    private static PayView.Said said(Answer answer, Class<? extends Event> type, T t) {
        Event event =
                answer.events().stream()
                        .map(recorded -> recorded.event())
                        .filter(type::isInstance)
                        .findFirst()
                        .orElseThrow();
        if (event instanceof OrderPaid paid) {
            return new PayView.Said(paid, null, "", false);
        }
        if (event instanceof OrderRefunded refunded) {
            return new PayView.Said(null, refunded, "", false);
        }
        return PayView.Said.done(t.get("pay.discounted"));
    }

    private Optional<PayView.State> state(Ask ask) throws PageHandling.Interrupted {
        String id = ask.in("order");
        return PageHandling.await(
                context.follower()
                        .ask(
                                stand ->
                                        stand.orders()
                                                .find(id)
                                                .map(
                                                        order ->
                                                                PayView.State.of(
                                                                        stand,
                                                                        order,
                                                                        ask.cashier()))));
    }

    private Reply gone(Ask ask) {
        Refusal refusal = Refusal.of(Reason.UNKNOWN_ORDER, ask.in("order"));
        return handling.sentence(404, ask.screen().t().sentence(refusal), ask);
    }

    private Reply show(int status, Ask ask, PayView.Said said) throws PageHandling.Interrupted {
        Optional<PayView.State> state = state(ask);
        if (state.isEmpty()) {
            return gone(ask);
        }
        T t = ask.screen().t();
        Map<String, String> typed = status == 200 ? Map.of() : ask.shown();
        PayView view = new PayView(t, state.get(), context.keys().get(), said, typed);
        if (ask.partial()) {
            return PageHandling.html(
                    status, context.pages().render("pay/panel", Map.of("v", view)));
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("v", view);
        params.put(
                "reasons",
                view.order().isVoid() ? List.of("void") : List.of("cold", "late", "wrong"));
        return PageHandling.html(status, context.pages().render("pay/page", params));
    }

    /** What an empty field means, or the amount typed; empty when it is no amount. */
    private static OptionalLong amountOr(String typed, long usual) {
        return typed.isEmpty() ? OptionalLong.of(usual) : Amounts.cents(typed);
    }
}
