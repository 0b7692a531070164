package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.call.CallPrinter;
import sopwell.call.Counted;
import sopwell.call.Reading;
import sopwell.counter.CallView;
import sopwell.counter.CallViews;
import sopwell.desk.Answer;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.log.Recorded;
import sopwell.menu.Menu;
import sopwell.orders.Order;
import sopwell.orders.OrderCommand;
import sopwell.orders.OrderEvent.OrderPlaced;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;
import sopwell.web.T;

/** The counter: read a call, place it, change or void what was placed. Thread-safe. */
final class CounterRoutes {
    private static final String TO_GO = "to-go";

    private final PageContext context;
    private final PageHandling handling;
    private final CounterReading readings;
    private final CounterPages pages;

    CounterRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
        this.readings = new CounterReading(context);
        this.pages = new CounterPages(context, handling, readings);
    }

    /** What an editor needs of an order. */
    private record Edited(Order order, Menu menu) {
        static Optional<Edited> find(Stand stand, String id) {
            return stand.orders()
                    .find(id)
                    .map(order -> new Edited(order, stand.menuOf(order.menuRevision())));
        }
    }

    void add(RoutingHandler routes) {
        routes.get("/counter", handling.handler(this::counter));
        routes.post("/counter/reading", handling.mindful(this::reading));
        routes.post("/counter/orders", handling.handler(this::place));
        routes.get("/counter/orders/{order}/edit", handling.handler(this::edit));
        routes.post("/counter/orders/{order}/changes", handling.handler(this::change));
        routes.post("/counter/orders/{order}/voids", handling.handler(this::voidOrder));
    }

    private Reply counter(Ask ask) throws PageHandling.Interrupted {
        CounterResult result = CounterResult.NONE;
        for (String kind : List.of("changed", "voided")) {
            if (number(ask.in(kind)) > 0) {
                result = new CounterResult(kind, null, number(ask.in(kind)), "");
            }
        }
        return pages.page(200, ask, CounterForm.fresh(context.keys().get()), result);
    }

    private Reply reading(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        if (context.parser().get() == null) {
            return handling.sentence(503, t.get("page.no-menu"), ask);
        }
        CallView view =
                readings.view(ask.fields().getOrDefault("call", ""), ask.field("order"), false, t);
        return PageHandling.html(
                200, context.pages().render("counter/read", Map.of("t", t, "r", view)));
    }

    private Reply place(Ask ask) throws PageHandling.Interrupted {
        return send(ask, form(ask, "", 0, 0));
    }

    private Reply change(Ask ask) throws PageHandling.Interrupted {
        return send(ask, form(ask, ask.in("order"), number(ask.field("number")), over(ask)));
    }

    /** The version that an edit names: the one that was seen, or the one that it is to replace. */
    private static int over(Ask ask) {
        return Math.max(number(ask.field("over")), number(ask.field("version")));
    }

    private Reply edit(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        String id = ask.in("order");
        Optional<Edited> found =
                PageHandling.await(context.follower().ask(stand -> Edited.find(stand, id)));
        if (found.isEmpty()) {
            String sentence = t.sentence(Refusal.of(Reason.UNKNOWN_ORDER, id));
            return handling.sentence(404, sentence, ask);
        }
        Order order = found.get().order();
        List<Counted> lines =
                order.lines().stream()
                        .map(line -> new Counted(line.quantity(), line.selection()))
                        .toList();
        CounterForm form =
                new CounterForm(
                        context.keys().get(),
                        CallPrinter.print(found.get().menu(), lines),
                        order.name(),
                        order.toGo(),
                        id,
                        order.number(),
                        order.version());
        return pages.page(200, ask, form, CounterResult.NONE);
    }

    private Reply send(Ask ask, CounterForm form) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        if (context.parser().get() == null) {
            return handling.sentence(503, t.get("page.no-menu"), ask);
        }
        if (ask.field("key").isEmpty()) {
            return pages.answer(400, ask, form, CounterResult.refused(t.get("api.key-missing")));
        }
        ToldForm told = ToldForm.of(ask, context);
        if (told.parser() == null) {
            String sentence = t.get("api.told-unknown");
            return pages.answer(422, ask, form, CounterResult.refused(sentence));
        }
        Reading reading = told.parser().read(form.call());
        if (reading.refusal().isPresent()) {
            Menu menu = told.parser().menu();
            String sentence = t.sentence(reading.refusal().get(), menu);
            return pages.answer(422, ask, form, CounterResult.refused(sentence));
        }
        OrderCommand command =
                form.isEdit()
                        ? new OrderCommand.Change(
                                form.order(),
                                form.version(),
                                form.name(),
                                form.toGo(),
                                CallViews.asked(reading),
                                "")
                        : new OrderCommand.Place(
                                form.name(), form.toGo(), CallViews.asked(reading), told.told());
        Answer answer =
                PageHandling.await(
                        context.desk()
                                .submit(
                                        form.key(),
                                        ask.fingerprint(),
                                        ask.by(new ForOrders(command))));
        return switch (answer.outcome()) {
            case DONE, REPEATED -> done(ask, form, answer.events());
            case REFUSED -> {
                Refusal refusal = answer.refusal().orElseThrow();
                String sentence = t.sentence(refusal, context.follower().menu());
                Optional<MeanwhileView> meanwhile =
                        meanwhile(refusal, form.order(), form.version(), t);
                yield pages.answer(
                        PageRoutes.status(refusal.reason()),
                        ask,
                        form,
                        meanwhile
                                .map(CounterResult::stale)
                                .orElseGet(() -> CounterResult.refused(sentence)));
            }
            case KEY_REUSED ->
                    pages.answer(422, ask, form, CounterResult.refused(t.get("send.key")));
        };
    }

    /** What somebody else changed since this version was seen, if that is why it was refused. */
    private Optional<MeanwhileView> meanwhile(Refusal refusal, String order, int version, T t)
            throws PageHandling.Interrupted {
        if (refusal.reason() != Reason.STALE_VERSION) {
            return Optional.empty();
        }
        return PageHandling.await(
                context.follower()
                        .ask(
                                stand ->
                                        stand.orders()
                                                .since(order, version)
                                                .map(m -> MeanwhileView.of(m, stand::menuOf, t))));
    }

    private Reply done(Ask ask, CounterForm form, List<Recorded> events)
            throws PageHandling.Interrupted {
        if (form.isEdit()) {
            return leave(ask, "changed", form.number());
        }
        OrderPlaced placed =
                events.stream()
                        .map(Recorded::event)
                        .filter(OrderPlaced.class::isInstance)
                        .map(OrderPlaced.class::cast)
                        .findFirst()
                        .orElseThrow();
        CounterResult result = new CounterResult("placed", placed, placed.number(), "");
        Reply reply = pages.answer(200, ask, CounterForm.fresh(context.keys().get()), result);
        return reply.with("HX-Trigger", "placed")
                .with(CounterResult.ORDER, placed.order())
                .with(CounterResult.NUMBER, Integer.toString(placed.number()));
    }

    private Reply voidOrder(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        if (!ask.hasKey()) {
            return handling.sentence(400, t.get("api.key-missing"), ask);
        }
        OrderCommand command =
                new OrderCommand.VoidOrder(
                        ask.in("order"), number(ask.field("version")), ask.reason());
        Answer answer =
                PageHandling.await(
                        context.desk()
                                .submit(
                                        ask.key(),
                                        ask.fingerprint(),
                                        ask.by(new ForOrders(command))));
        return switch (answer.outcome()) {
            case DONE, REPEATED -> leaveVoid(ask);
            case REFUSED -> {
                Refusal refusal = answer.refusal().orElseThrow();
                Optional<MeanwhileView> meanwhile =
                        meanwhile(refusal, ask.in("order"), number(ask.field("version")), t);
                if (meanwhile.isPresent() && ask.partial()) {
                    yield PageHandling.html(
                            PageRoutes.status(refusal.reason()),
                            context.pages()
                                    .render(
                                            "counter/void-stale",
                                            Map.of("t", t, "m", meanwhile.get())));
                }
                String sentence = t.sentence(refusal, context.follower().menu());
                yield handling.sentence(PageRoutes.status(refusal.reason()), sentence, ask);
            }
            case KEY_REUSED -> handling.sentence(422, t.get("send.key"), ask);
        };
    }

    /** A void order that was paid leads to where its money is given back. */
    private Reply leaveVoid(Ask ask) throws PageHandling.Interrupted {
        String id = ask.in("order");
        boolean owes =
                PageHandling.await(
                        context.follower()
                                .ask(
                                        stand ->
                                                stand.orders()
                                                        .find(id)
                                                        .filter(o -> stand.till().dueCents(o) < 0)
                                                        .isPresent()));
        int number = number(ask.field("number"));
        return owes
                ? go(ask, "/counter/orders/" + id + "/money", number)
                : leave(ask, "voided", number);
    }

    /** Back to the counter, which says what was done. */
    private static Reply leave(Ask ask, String what, int number) {
        return go(ask, "/counter?" + what + "=" + number, number);
    }

    private static Reply go(Ask ask, String path, int number) {
        return ask.partial()
                ? PageHandling.html(200, "")
                        .with("HX-Redirect", path)
                        .with(CounterResult.ORDER, ask.in("order"))
                        .with(CounterResult.NUMBER, Integer.toString(number))
                : PageHandling.redirect(path);
    }

    private CounterForm form(Ask ask, String order, int number, int version) {
        return new CounterForm(
                ask.field("key"),
                ask.fields().getOrDefault("call", ""),
                ask.field("name"),
                ask.field("service").equals(TO_GO),
                order,
                number,
                version);
    }

    private static int number(String written) {
        return written.matches("[0-9]{1,7}") ? Integer.parseInt(written) : 0;
    }
}
