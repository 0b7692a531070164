package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sopwell.access.AccessLimits;
import sopwell.access.Actor;
import sopwell.access.MadeToken;
import sopwell.access.Outcome;
import sopwell.access.PairingOffer;
import sopwell.access.Person;
import sopwell.access.Refused;
import sopwell.access.Role;
import sopwell.access.Roster;
import sopwell.access.Use;
import sopwell.audit.AuditEvent.AccessChanged;
import sopwell.audit.AuditEvent.Change;
import sopwell.money.CardNumber;
import sopwell.web.Gate;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;
import sopwell.web.T;

/** Where a lead or owner says who may do what: people, screens, programs. Thread-safe. */
final class AccessRoutes {
    private static final String PATH = "/settings/access";
    private static final String PERSON = PATH + "/people/{person}";

    private final PageContext context;
    private final PageHandling handling;
    private final PairedBy pairedBy;
    private final Roster roster;
    private final AccessNotes notes;
    private final WhoWords words;

    AccessRoutes(PageContext context, PageHandling handling, PairedBy pairedBy) {
        this.context = context;
        this.handling = handling;
        this.pairedBy = pairedBy;
        this.roster = context.access().roster();
        this.notes = new AccessNotes(context);
        this.words = new WhoWords(context.access()::state);
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.visiting((e, ask) -> page(200, ask, done(ask))));
        routes.post(PATH + "/people", handling.visiting(this::addPerson));
        routes.post(PERSON + "/pin", handling.visiting(this::setPin));
        routes.post(PERSON + "/password", handling.visiting(this::setPassword));
        routes.post(PERSON + "/unlocked", handling.visiting(this::unlock));
        routes.post(PERSON + "/left", handling.visiting(this::endPerson));
        routes.post(PATH + "/devices", handling.visiting(this::offer));
        routes.post(PATH + "/devices/{device}/revoked", handling.visiting(this::endDevice));
        routes.post(PATH + "/tokens", handling.visiting(this::makeToken));
        routes.post(PATH + "/tokens/{token}/revoked", handling.visiting(this::endToken));
    }

    private Reply addPerson(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        Optional<Role> role = Role.of(ask.field("role"));
        Optional<Reply> wrong = wrong(ask, role);
        if (wrong.isPresent()) {
            return wrong.get();
        }
        Actor by = Gate.actor(exchange);
        return person(
                ask, roster.addPerson(by, ask.field("name"), role.get()), Change.PERSON_ADDED);
    }

    private Reply setPin(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        Actor by = Gate.actor(exchange);
        return person(
                ask,
                PageHandling.await(roster.setPin(by, ask.in("person"), ask.field("pin"))),
                Change.PIN_SET);
    }

    private Reply setPassword(HttpServerExchange exchange, Ask ask)
            throws PageHandling.Interrupted {
        String password = ask.fields().getOrDefault("password", "");
        Actor by = Gate.actor(exchange);
        return person(
                ask,
                PageHandling.await(roster.setPassword(by, ask.in("person"), password)),
                Change.PASSWORD_SET);
    }

    private Reply unlock(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        Actor by = Gate.actor(exchange);
        return person(ask, roster.unlock(by, ask.in("person")), Change.UNLOCKED);
    }

    private Reply endPerson(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        Actor by = Gate.actor(exchange);
        return person(ask, roster.endPerson(by, ask.in("person")), Change.PERSON_LEFT);
    }

    private Reply person(Ask ask, Outcome<Person> outcome, Change change)
            throws PageHandling.Interrupted {
        return outcome.isDone()
                ? noted(ask, AccessChanged.ofPerson(change, outcome.value().get().id()))
                : refused(ask, outcome.refused().get());
    }

    /** Shows the code to type at the new screen; it is nowhere to be found again. */
    private Reply offer(HttpServerExchange exchange, Ask ask) {
        Optional<Use> use = Use.of(ask.field("use"));
        Optional<Reply> wrong = wrong(ask, use);
        if (wrong.isPresent()) {
            return wrong.get();
        }
        Outcome<PairingOffer> outcome = roster.offer(ask.field("name"), use.get());
        if (!outcome.isDone()) {
            return refused(ask, outcome.refused().get());
        }
        PairingOffer made = outcome.value().get();
        pairedBy.offered(made.code(), ask.who());
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("name", ask.field("name"));
        params.put("code", made.code());
        params.put("seconds", AccessLimits.PAIRING_MILLIS_MAX / 1_000);
        params.put("address", exchange.getRequestScheme() + "://" + exchange.getHostAndPort());
        return PageHandling.html(200, context.pages().render("access/code", params));
    }

    private Reply endDevice(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        String id = ask.in("device");
        Outcome<?> outcome = roster.endDevice(id);
        return outcome.isDone()
                ? noted(ask, AccessChanged.ofDevice(Change.DEVICE_REVOKED, id))
                : refused(ask, outcome.refused().get());
    }

    /** Shows the token this once: only its hash is kept. */
    private Reply makeToken(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        Optional<Role> role = Role.of(ask.field("role"));
        Optional<Reply> wrong = wrong(ask, role);
        if (wrong.isPresent()) {
            return wrong.get();
        }
        Actor by = Gate.actor(exchange);
        Outcome<MadeToken> outcome = roster.makeToken(by, ask.field("name"), role.get());
        if (!outcome.isDone()) {
            return refused(ask, outcome.refused().get());
        }
        MadeToken made = outcome.value().get();
        notes.note(ask.who(), AccessChanged.ofToken(Change.TOKEN_MADE, made.token().id()));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("name", made.token().name());
        params.put("secret", made.secret());
        return PageHandling.html(200, context.pages().render("access/token", params));
    }

    private Reply endToken(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        String id = ask.in("token");
        Outcome<?> outcome = roster.endToken(id);
        return outcome.isDone()
                ? noted(ask, AccessChanged.ofToken(Change.TOKEN_REVOKED, id))
                : refused(ask, outcome.refused().get());
    }

    /** Notes what was done, and goes back to the list, which says so. */
    private Reply noted(Ask ask, AccessChanged changed) throws PageHandling.Interrupted {
        notes.note(ask.who(), changed);
        String id = changed.person() + changed.device() + changed.token();
        String code = ProblemKind.code(changed.change());
        return PageHandling.redirect(PATH + "?done=" + code + "&whom=" + id);
    }

    /** What is wrong with a form that names something and chooses what it is for. */
    private Optional<Reply> wrong(Ask ask, Optional<?> chosen) {
        T t = ask.screen().t();
        if (chosen.isEmpty()) {
            return Optional.of(page(422, ask, t.get("access.choose")));
        }
        return CardNumber.isIn(ask.field("name"))
                ? Optional.of(page(422, ask, PageHandling.cardSentence(t)))
                : Optional.empty();
    }

    private Reply refused(Ask ask, Refused refused) {
        String sentence = DoorWords.of(refused, ask.screen().t());
        return page(DoorWords.status(refused), ask, sentence);
    }

    /** What was done just now, in the log's words. */
    private String done(Ask ask) {
        T t = ask.screen().t();
        String whom = ask.in("whom");
        return Arrays.stream(Change.values())
                .map(ProblemKind::code)
                .filter(ask.in("done")::equals)
                .findFirst()
                .map(code -> t.of("audit.access." + code, name(whom, t)))
                .orElse("");
    }

    private String name(String id, T t) {
        if (id.startsWith("s")) {
            return words.person(id, t);
        }
        return id.startsWith("d") ? words.device(id, t) : words.token(id, t);
    }

    private Reply page(int status, Ask ask, String sentence) {
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen());
        params.put("sentence", sentence);
        params.put("v", new AccessView(context.access().state()));
        params.put("whom", ask.in("person").isEmpty() ? ask.in("whom") : ask.in("person"));
        return PageHandling.html(status, context.pages().render("access/page", params));
    }
}
