package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.access.AccessLimits;
import sopwell.access.MadeToken;
import sopwell.access.Outcome;
import sopwell.access.PairingOffer;
import sopwell.access.Role;
import sopwell.access.Roster;
import sopwell.access.Use;
import sopwell.audit.AuditEvent.Change;
import sopwell.web.Gate;
import sopwell.web.Reply;

/** Where a lead or owner says which screens and programs are let in. Thread-safe. */
final class AccessRoutes {
    private static final String PATH = AccessPages.PATH;

    private final PageContext context;
    private final PageHandling handling;
    private final PairedBy pairedBy;
    private final AccessPages pages;
    private final AccessNotes notes;
    private final Roster roster;

    AccessRoutes(PageContext context, PageHandling handling, PairedBy pairedBy) {
        this.context = context;
        this.handling = handling;
        this.pairedBy = pairedBy;
        this.pages = new AccessPages(context);
        this.notes = new AccessNotes(context);
        this.roster = context.access().roster();
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.visiting((e, ask) -> pages.show(ask)));
        routes.post(PATH + "/devices", handling.visiting(this::offer));
        routes.post(PATH + "/devices/{device}/revoked", handling.visiting(this::endDevice));
        routes.post(PATH + "/tokens", handling.visiting(this::makeToken));
        routes.post(PATH + "/tokens/{token}/revoked", handling.visiting(this::endToken));
    }

    /** Shows the code to type at the new screen; it is nowhere to be found again. */
    private Reply offer(HttpServerExchange exchange, Ask ask) {
        Optional<Use> use = Use.of(ask.field("use"));
        Optional<Reply> wrong = pages.unchosen(ask, use).or(() -> pages.misnamed(ask));
        if (wrong.isPresent()) {
            return wrong.get();
        }
        Outcome<PairingOffer> outcome = roster.offer(ask.field("name"), use.get());
        if (!outcome.isDone()) {
            return pages.refused(ask, outcome.refused().get());
        }
        PairingOffer made = outcome.value().get();
        pairedBy.offered(made.code(), ask.who());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen().at(PATH, ""));
        params.put("name", ask.field("name"));
        params.put("code", made.code());
        params.put("seconds", AccessLimits.PAIRING_MILLIS_MAX / 1_000);
        params.put("address", exchange.getRequestScheme() + "://" + exchange.getHostAndPort());
        return PageHandling.html(200, context.pages().render("access/code", params));
    }

    private Reply endDevice(HttpServerExchange exchange, Ask ask) {
        String id = ask.in("device");
        Change change = Change.DEVICE_REVOKED;
        Outcome<?> outcome = roster.noted(notes.device(ask.who(), change)).endDevice(id);
        return outcome.isDone()
                ? pages.done(change, id)
                : pages.refused(ask, outcome.refused().get());
    }

    /** Shows the token this once: only its hash is kept. */
    private Reply makeToken(HttpServerExchange exchange, Ask ask) {
        Optional<Role> role = Role.of(ask.field("role"));
        Optional<Reply> wrong = pages.unchosen(ask, role).or(() -> pages.misnamed(ask));
        if (wrong.isPresent()) {
            return wrong.get();
        }
        Outcome<MadeToken> outcome =
                roster.noted(notes.token(ask.who(), Change.TOKEN_MADE))
                        .makeToken(Gate.actor(exchange), ask.field("name"), role.get());
        if (!outcome.isDone()) {
            return pages.refused(ask, outcome.refused().get());
        }
        MadeToken made = outcome.value().get();
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen().at(PATH, ""));
        params.put("name", made.token().name());
        params.put("secret", made.secret());
        return PageHandling.html(200, context.pages().render("access/token", params));
    }

    private Reply endToken(HttpServerExchange exchange, Ask ask) {
        String id = ask.in("token");
        Change change = Change.TOKEN_REVOKED;
        Outcome<?> outcome = roster.noted(notes.token(ask.who(), change)).endToken(id);
        return outcome.isDone()
                ? pages.done(change, id)
                : pages.refused(ask, outcome.refused().get());
    }
}
