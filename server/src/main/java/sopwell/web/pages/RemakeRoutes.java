package sopwell.web.pages;

import io.undertow.server.RoutingHandler;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.KitchenRules;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.RemakeReason;
import sopwell.kitchen.RemakeRules;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Reply;

/** What is made again, from a station's board. Thread-safe. */
final class RemakeRoutes {
    private final PageContext context;
    private final PageHandling handling;

    RemakeRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
    }

    void add(RoutingHandler routes) {
        routes.get("/boards/{station}/parts/{part}/remake", handling.handler(this::row));
        routes.get("/boards/{station}/remake-last", handling.handler(this::last));
        routes.post("/boards/{station}/parts/{part}/remakes", handling.handler(this::remake));
        routes.get("/pass/orders/{order}/remake", handling.handler(this::order));
    }

    private Reply row(Ask ask) throws PageHandling.Interrupted {
        Optional<List<PartId>> parts = RowParts.of(ask);
        if (parts.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.in("part")), ask);
        }
        Optional<Remakable> found =
                PageHandling.await(context.follower().ask(stand -> of(stand, parts.get())));
        return found.isEmpty()
                ? handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.in("part")), ask)
                : panel(ask, found.get());
    }

    private Reply last(Ask ask) throws PageHandling.Interrupted {
        String station = ask.in("station");
        Optional<Remakable> found =
                PageHandling.await(
                        context.follower()
                                .ask(
                                        stand ->
                                                of(
                                                        stand,
                                                        KitchenRules.lastUp(
                                                                stand.kitchen(),
                                                                stand.orders(),
                                                                station))));
        return found.isEmpty()
                ? handling.refused(Refusal.of(Reason.NOTHING_TO_BRING_BACK), ask)
                : panel(ask, found.get());
    }

    /** What of an order on the pass can be made again, by its lines. */
    private Reply order(Ask ask) throws PageHandling.Interrupted {
        String id = ask.in("order");
        List<Remakable> lines =
                PageHandling.await(context.follower().ask(stand -> lines(stand, id)));
        if (lines.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_ORDER, id), ask);
        }
        List<Remakable> made = lines.stream().filter(line -> line.pieces() > 0).toList();
        if (made.isEmpty()) {
            return handling.refused(Refusal.of(Reason.NOT_BEGUN, lines.get(0).number()), ask);
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("t", ask.screen().t());
        params.put("lines", made);
        return PageHandling.html(200, context.pages().render("pass/remake", params));
    }

    /** A line's last part stands for it: what goes into that is made again with it. */
    private static List<Remakable> lines(Stand stand, String order) {
        List<Remakable> lines = new ArrayList<>();
        for (Part part : stand.kitchen().parts(order)) {
            if (!part.cancelled() && !stand.kitchen().feedsAnother(part)) {
                of(stand, List.of(part.id())).ifPresent(lines::add);
            }
        }
        return lines;
    }

    private Reply panel(Ask ask, Remakable what) {
        if (what.pieces() == 0) {
            return handling.refused(Refusal.of(Reason.NOT_BEGUN, what.number()), ask);
        }
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("t", ask.screen().t());
        params.put("what", what);
        return PageHandling.html(200, context.pages().render("boards/remake", params));
    }

    private Reply remake(Ask ask) throws PageHandling.Interrupted {
        Optional<List<PartId>> parts = RowParts.of(ask);
        if (parts.isEmpty()) {
            return handling.refused(Refusal.of(Reason.UNKNOWN_PART, ask.in("part")), ask);
        }
        Optional<RemakeReason> reason = reason(ask.field("reason"));
        if (reason.isEmpty()) {
            return handling.refused(Refusal.of(Reason.REASON_MISSING), ask);
        }
        KitchenCommand command =
                new KitchenCommand.Remake(
                        parts.get(), quantity(ask.field("quantity")), reason.get(), "");
        return handling.press(ask, new ForKitchen(command), e -> PageHandling.html(200, ""));
    }

    static Optional<RemakeReason> reason(String written) {
        for (RemakeReason reason : RemakeReason.values()) {
            if (reason.name().toLowerCase(Locale.ROOT).equals(written)) {
                return Optional.of(reason);
            }
        }
        return Optional.empty();
    }

    /** One piece unless said; what is no number is refused by the rules as none. */
    static int quantity(String written) {
        if (written.isEmpty()) {
            return 1;
        }
        return written.matches("[0-9]{1,3}") ? Integer.parseInt(written) : 0;
    }

    private static Optional<Remakable> of(Stand stand, List<PartId> ids) {
        List<Part> parts = new ArrayList<>();
        ids.forEach(id -> stand.kitchen().find(id).ifPresent(parts::add));
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        Part lead = parts.get(0);
        return Optional.of(
                new Remakable(
                        parts.stream().map(Part::id).toList(),
                        lead.number(),
                        stand.menuOf(lead.making().menuRevision())
                                .item(lead.making().selection().item())
                                .name(),
                        RemakeRules.pieces(parts)));
    }
}
