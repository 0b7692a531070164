package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Answer;
import sopwell.desk.StandCommand.ForOuts;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.orders.OutCommand;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;
import sopwell.web.T;

/** What is out: marked and brought back from any screen. Thread-safe. */
final class OutRoutes {
    private static final int WHILE_MINUTES = 20;

    private final PageContext context;
    private final PageHandling handling;

    OutRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/outs", handling.handler(ask -> page(200, ask, "")));
        routes.post("/outs", handling.handler(this::press));
    }

    private Reply press(Ask ask) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        if (!ask.hasKey()) {
            return handling.sentence(400, t.get("api.key-missing"), ask);
        }
        Optional<Out> out = Out.read(ask.field("out"));
        if (out.isEmpty()) {
            return refused(Refusal.of(Reason.NOT_ON_MENU, ask.field("out")), ask);
        }
        Optional<OutCommand> command = command(ask, out.get());
        if (command.isEmpty()) {
            return page(422, ask, t.of("out.how-many", ask.field("left")));
        }
        Answer answer =
                PageHandling.await(
                        context.desk()
                                .submit(
                                        ask.key(),
                                        ask.fingerprint(),
                                        ask.by(new ForOuts(command.get()))));
        return switch (answer.outcome()) {
            case DONE, REPEATED ->
                    ask.partial() ? page(200, ask, "") : PageHandling.redirect("/outs");
            case REFUSED -> refused(answer.refusal().orElseThrow(), ask);
            case KEY_REUSED -> page(422, ask, t.get("send.key"));
        };
    }

    /** What was pressed; empty when it says how many are left in a way that can't be read. */
    private static Optional<OutCommand> command(Ask ask, Out out) {
        return switch (ask.field("do")) {
            case "back" -> Optional.of(new OutCommand.Lift(out));
            case "while" -> Optional.of(new OutCommand.Mark(out, 0, WHILE_MINUTES));
            case "left" ->
                    ask.field("left").matches("[0-9]{1,4}")
                            ? Optional.of(
                                    new OutCommand.Mark(
                                            out, Integer.parseInt(ask.field("left")), 0))
                            : Optional.empty();
            default -> Optional.of(new OutCommand.Mark(out, 0, 0));
        };
    }

    private Reply refused(Refusal refusal, Ask ask) throws PageHandling.Interrupted {
        String sentence = ask.screen().t().sentence(refusal, context.follower().menu());
        return page(PageRoutes.status(refusal.reason()), ask, sentence);
    }

    private Reply page(int status, Ask ask, String sentence) throws PageHandling.Interrupted {
        T t = ask.screen().t();
        Menu menu = context.follower().menu();
        if (menu == null) {
            return handling.sentence(503, t.get("page.no-menu"), ask);
        }
        Map<Out, Shortage> shortages =
                PageHandling.await(
                        context.follower()
                                .ask(
                                        stand -> {
                                            Map<Out, Shortage> all = new LinkedHashMap<>();
                                            stand.outs().all().forEach(s -> all.put(s.out(), s));
                                            return all;
                                        }));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("t", t);
        String station = ask.field("station").isEmpty() ? ask.in("station") : ask.field("station");
        params.put("v", OutView.of(menu, station, shortages, context.settings().zone(), t));
        params.put("station", station);
        params.put("minutes", WHILE_MINUTES);
        params.put("sentence", sentence);
        if (!ask.partial()) {
            params.remove("t");
            params.put("s", ask.screen());
        }
        String template = ask.partial() ? "outs/list" : "outs/page";
        return PageHandling.html(status, context.pages().render(template, params));
    }
}
