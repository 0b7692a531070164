package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import sopwell.access.Access;
import sopwell.access.Actor;
import sopwell.access.Noting;
import sopwell.access.Outcome;
import sopwell.access.Person;
import sopwell.access.Refused;
import sopwell.access.Shown;
import sopwell.access.SignedIn;
import sopwell.audit.AuditEvent.Change;
import sopwell.audit.Who;
import sopwell.web.AccessCookies;
import sopwell.web.Gate;
import sopwell.web.RateLimit;
import sopwell.web.Reply;
import sopwell.web.T;

/** Where people say who they are, and go. Thread-safe. */
final class SignInRoutes {
    private static final String PATH = "/sign-in";
    private static final String PASSWORD_NEEDED = "password-needed";

    /** Why somebody was led here, as the gate names it. */
    private static final Set<String> WHYS = Set.of("not-allowed", PASSWORD_NEEDED);

    private final PageContext context;
    private final PageHandling handling;
    private final Access access;
    private final AccessNotes notes;
    private final RateLimit limit;

    SignInRoutes(PageContext context, PageHandling handling) {
        this.context = context;
        this.handling = handling;
        this.access = context.access();
        this.notes = new AccessNotes(context);
        this.limit = RateLimit.forSignIn(context.nanos());
    }

    void add(RoutingHandler routes) {
        routes.get(PATH, handling.visiting((e, ask) -> page(200, e, ask, "")));
        routes.post(PATH, handling.visiting(this::signIn));
        routes.post("/sign-out", handling.visiting(this::signOut));
    }

    private Reply signIn(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        long waitMillis = limit.take(RateLimit.address(exchange));
        if (waitMillis > 0) {
            String seconds = RateLimit.seconds(waitMillis);
            String sentence = DoorWords.waiting(Long.parseLong(seconds), ask.screen().t());
            return page(429, exchange, ask, sentence).with("Retry-After", seconds);
        }
        Outcome<SignedIn> outcome = PageHandling.await(tried(Gate.shown(exchange), ask));
        if (!outcome.isDone()) {
            Refused refused = outcome.refused().orElseThrow();
            String sentence = DoorWords.of(refused, ask.screen().t());
            return page(DoorWords.status(refused), exchange, ask, sentence);
        }
        SignedIn in = outcome.value().orElseThrow();
        Reply on = PageHandling.redirect(BackPath.of(ask.field("back")));
        return AccessCookies.signedIn(exchange, on, in);
    }

    private CompletableFuture<Outcome<SignedIn>> tried(Shown shown, Ask ask) {
        String password = ask.fields().getOrDefault("password", "");
        return switch (ask.field("how")) {
            case "prove" -> access.prove(shown, password);
            case "owner" -> access.byOwner(shown, password, this::letsIn);
            default ->
                    password.isEmpty()
                            ? access.byPin(shown, ask.field("person"), ask.field("pin"))
                            : access.byPassword(shown, ask.field("person"), password);
        };
    }

    /** The owner lets the device in that the password was typed at. */
    private Noting letsIn(Person owner) {
        return device ->
                notes.device(
                                new Who(owner.id(), device, "", owner.role().code()),
                                Change.DEVICE_PAIRED)
                        .note(device);
    }

    private Reply signOut(HttpServerExchange exchange, Ask ask) {
        access.signOut(Gate.shown(exchange));
        String back = BackPath.signIn(BackPath.of(ask.field("back")));
        return AccessCookies.signedOut(exchange, PageHandling.redirect(back));
    }

    private Reply page(int status, HttpServerExchange exchange, Ask ask, String sentence) {
        T t = ask.screen().t();
        String why = said(ask, "why");
        String back = BackPath.of(said(ask, "back"));
        Map<String, Object> params = new LinkedHashMap<>();
        params.put("s", ask.screen().at(PATH, rest(back, why)));
        params.put("back", back);
        params.put("why", WHYS.contains(why) ? why : "");
        params.put("how", how(exchange, why));
        params.put("people", people());
        params.put("chosen", ask.field("person"));
        params.put(
                "sentence",
                sentence.isEmpty() && WHYS.contains(why) ? t.get("api." + why) : sentence);
        return PageHandling.html(status, context.pages().render("signin/page", params));
    }

    /** What the page's address says, so that it is still known in another language. */
    private static String rest(String back, String why) {
        String named = Screens.named("back", back);
        return WHYS.contains(why) ? named + "&" + Screens.named("why", why) : named;
    }

    /** What was typed in the form, else what the address says. */
    private static String said(Ask ask, String name) {
        String typed = ask.field(name);
        return typed.isEmpty() ? ask.in(name) : typed;
    }

    /** By what somebody can be known at this browser. */
    private String how(HttpServerExchange exchange, String why) {
        if (access.isOpen()) {
            return "open";
        }
        Actor actor = Gate.actor(exchange);
        if (actor.kind() == Actor.Kind.PERSON && why.equals(PASSWORD_NEEDED)) {
            return "prove";
        }
        Shown device = new Shown("", Gate.shown(exchange).device(), "");
        return access.stillWho(device).kind() == Actor.Kind.DEVICE ? "people" : "owner";
    }

    private List<Person> people() {
        return access.state().people().stream()
                .filter(person -> !person.ended())
                .filter(person -> person.hasPin() || person.hasPassword())
                .sorted(Comparator.comparing(Person::name))
                .toList();
    }
}
