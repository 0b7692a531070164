package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForQueries;
import sopwell.kitchen.Cells;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.QueryCommand;
import sopwell.kitchen.QueryId;
import sopwell.kitchen.Question;
import sopwell.log.Recorded;
import sopwell.menu.Group;
import sopwell.orders.OrderEvent.OrderChanged;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;
import sopwell.web.T;

/** What a station asks from its board, and what the counter answers. Thread-safe. */
final class QueryRoutes {
    private final PageContext context;
    private final PageHandling handling;

    QueryRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    /** What can be asked about a part. */
    private record Askable(Part part, List<Group> groups) {
        static Optional<Askable> find(Stand stand, PartId id) {
            return stand.kitchen().find(id).map(part -> of(stand, part));
        }

        private static Askable of(Stand stand, Part part) {
            return new Askable(
                    part,
                    Cells.groups(
                            stand.menuOf(part.making().menuRevision()),
                            part.making(),
                            part.id().station()));
        }
    }

    void add(RoutingHandler routes) {
        String part = "/boards/{station}/parts/{part}/";
        routes.get(part + "question", handling.handler(this::question));
        routes.post(part + "queries", handling.handler(this::ask));
        routes.post("/counter/answers", handling.handler(this::answer));
    }

    private Reply question(Ask ask) throws PageHandling.Interrupted {
        Optional<PartId> id = part(ask);
        if (id.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.in("part")), ask);
        }
        Optional<Askable> found =
                PageHandling.await(context.follower().ask(stand -> Askable.find(stand, id.get())));
        if (found.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, id.get()), ask);
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("t", ask.screen().t());
        params.put("part", found.get().part());
        params.put("groups", found.get().groups());
        return PageHandling.html(200, context.pages().render("boards/question", params));
    }

    private Reply ask(Ask ask) throws PageHandling.Interrupted {
        Optional<PartId> id = part(ask);
        if (id.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.in("part")), ask);
        }
        Question question = new Question(list(ask.field("options")), ask.field("text"));
        return send(ask, new QueryCommand.Ask(id.get(), question));
    }

    private Reply answer(Ask ask) throws PageHandling.Interrupted {
        Optional<QueryId> query = QueryId.read(ask.field("query"));
        if (query.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_QUERY, ask.field("query")), ask);
        }
        Optional<List<String>> options =
                ask.fields().containsKey("options")
                        ? Optional.of(list(ask.field("options")))
                        : Optional.empty();
        return send(ask, new QueryCommand.Answer(query.get(), options, ask.field("text")));
    }

    private Reply send(Ask ask, QueryCommand command) throws PageHandling.Interrupted {
        return handling.press(ask, new ForQueries(command), events -> done(ask, command, events));
    }

    /** A question shows in its row; an answer that changes what the guest pays must be said. */
    private Reply done(Ask ask, QueryCommand command, List<Recorded> events)
            throws PageHandling.Interrupted {
        if (command.kind() == QueryCommand.Kind.ASK) {
            return PageHandling.html(200, "");
        }
        T t = ask.screen().t();
        String order = ((QueryCommand.Answer) command).query().part().order();
        int number =
                PageHandling.await(
                        context.follower()
                                .ask(stand -> stand.orders().find(order).orElseThrow().number()));
        String sentence =
                events.get(0).event() instanceof OrderChanged changed
                        ? t.of("query.done.changed", number, t.money(changed.totals().totalCents()))
                        : t.of("query.done.as-ordered", number);
        return handling.sentence(200, sentence, ask);
    }

    private static Optional<PartId> part(Ask ask) {
        return PartId.read(ask.in("part")).filter(part -> part.station().equals(ask.in("station")));
    }

    private static List<String> list(String written) {
        return written.isEmpty() ? List.of() : List.of(written.split(",", -1));
    }
}
